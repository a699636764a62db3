import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

/**
 * Reads all of content/ and prints what is wrong with it, one problem a line; exit code 1 if anything
 * is. What is not even JSON is found first, since nothing else can be read then.
 */
const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const problems = await syntaxProblems(at('../../content'));
if (problems.length === 0) {
  const options = { configFile: false, root: at('../..'), logLevel: 'error' };
  const { module } = await runnerImport(at('./load.ts'), options);
  const built = module.loadCatalog();
  if ('problems' in built) problems.push(...built.problems);
  else console.log(`content ${built.catalog.version}: ${countOf(built.catalog)} records, no problems`);
}
for (const { at, message, hint } of problems) console.error(`${at}: ${message} (${hint})`);
if (problems.length > 0) {
  console.error(`${problems.length} ${problems.length === 1 ? 'problem' : 'problems'}`);
  process.exitCode = 1;
}

async function syntaxProblems(folder) {
  const files = (await readdir(folder, { recursive: true })).filter((file) => file.endsWith('.json'));
  const texts = await Promise.all(
    files.sort().map(async (file) => ({ file, text: await readFile(`${folder}/${file}`, 'utf8') })),
  );
  return texts.flatMap(({ file, text }) => {
    try {
      JSON.parse(text);
      return [];
    } catch (error) {
      return [{ at: file, message: error.message, hint: 'mend the JSON: a comma, a quote or a bracket' }];
    }
  });
}

function countOf({ words, ...tables }) {
  const ofTable = (table) => (typeof table === 'object' ? Object.keys(table).length : 0);
  const ofWords = Object.values(words).flatMap((language) => Object.values(language));
  return [...Object.values(tables), ...ofWords].reduce((sum, table) => sum + ofTable(table), 0);
}
