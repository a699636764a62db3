import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

/** Reads all of content/ and prints what is wrong with it, one problem a line; exit code 1 if anything is. */
const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const options = { configFile: false, root: at('../..'), logLevel: 'error' };
const { module } = await runnerImport(at('./load.ts'), options);

const built = module.loadCatalog();
if ('problems' in built) {
  for (const { at, message, hint } of built.problems) console.error(`${at}: ${message} (${hint})`);
  console.error(`${built.problems.length} problems`);
  process.exitCode = 1;
} else {
  const records = Object.values(built.catalog).filter((table) => typeof table === 'object');
  const count = records.reduce((sum, table) => sum + Object.keys(table).length, 0);
  console.log(`content ${built.catalog.version}: ${count} records, no problems`);
}
