import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

/**
 * Reads all of content/, or of a folder that is named, and prints what is wrong with it, one problem a
 * line; exit code 1 if anything is. What is not even JSON is told first: nothing else can be judged
 * before it is mended.
 */
const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const [folder = here('../../content')] = process.argv.slice(2);
const read = await Promise.all((await namesIn(folder)).map((name) => readOne(folder, name)));
const unreadable = read.filter((file) => 'problem' in file).map((file) => file.problem);
const problems = unreadable.length > 0 ? unreadable : await contentProblems(read);
for (const { at, message, hint } of problems) console.error(`${at}: ${message} (${hint})`);
if (problems.length > 0) {
  console.error(`${problems.length} ${problems.length === 1 ? 'problem' : 'problems'}`);
  process.exitCode = 1;
}

async function namesIn(folder) {
  const names = await readdir(folder, { recursive: true });
  return names.filter((name) => name.endsWith('.json')).sort();
}

async function readOne(folder, name) {
  const path = name.replaceAll('\\', '/').slice(0, -'.json'.length);
  const text = await readFile(`${folder}/${name}`, 'utf8');
  try {
    return { path, data: JSON.parse(text) };
  } catch (error) {
    const hint = 'mend the JSON: a comma, a quote or a bracket';
    return { problem: { at: path, message: error.message, hint } };
  }
}

async function contentProblems(files) {
  const options = { configFile: false, root: here('../..'), logLevel: 'error' };
  const { module } = await runnerImport(here('./build.ts'), options);
  const built = module.buildCatalog(files);
  if ('problems' in built) return built.problems;
  console.log(`content ${built.catalog.version}: ${files.length} records, no problems`);
  return [];
}
