import { writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

/**
 * Fits the motor models anew and prints old and new side by side. `--assume slip=0.03,priors=2` fits
 * with other assumptions; `--json FILE` writes the parameter sets as well.
 */
const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const load = async (path) =>
  (await runnerImport(at(path), { configFile: false, root: at('../..'), logLevel: 'error' })).module;
const words = process.argv.slice(2);
const flag = (name) => {
  const place = words.indexOf(name);
  if (place < 0) return undefined;
  const value = words[place + 1];
  if (value === undefined) {
    console.error(`${name} needs a value`);
    process.exit(2);
  }
  return value;
};
const [{ assumptions, parameterSets, refitAll, refitText }, { catalogFrom }] = await Promise.all([
  load('./refit.ts'),
  load('../proof/content.ts'),
]);
const { catalog, problems } = catalogFrom(at('../../content'));
if (catalog === undefined) {
  console.error(`the content has ${problems.length} problems: npm run check:content`);
  process.exit(1);
}
const assume = flag('--assume');
const file = flag('--json');
const { assumed, mistake } = assume === undefined ? { assumed: {} } : assumptions(assume);
if (mistake !== undefined) {
  console.error(`--assume: ${mistake}`);
  process.exit(2);
}
const all = refitAll(catalog, assumed);
console.log(refitText(all));
if (file !== undefined)
  await writeFile(
    resolve(process.env.INIT_CWD ?? '', file),
    `${JSON.stringify(parameterSets(all), null, 2)}\n`,
  );
