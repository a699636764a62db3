import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

/**
 * Writes the JSON Schemas of content/ into .cache/schema, one a folder, and `associations.json`: the
 * list of file patterns that an editor's JSON settings want (`json.schemas`).
 */
const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const options = { configFile: false, root: at('../..'), logLevel: 'error' };
const { module } = await runnerImport(at('./schema-files.ts'), options);

const folder = at('../../.cache/schema');
await mkdir(folder, { recursive: true });
const files = module.schemaFiles();
for (const { name, schema } of files) {
  await writeFile(`${folder}/${name}.schema.json`, `${JSON.stringify(schema, null, 2)}\n`);
}
const associations = files.map(({ name, pattern }) => ({
  fileMatch: [pattern],
  url: `./.cache/schema/${name}.schema.json`,
}));
await writeFile(`${folder}/associations.json`, `${JSON.stringify(associations, null, 2)}\n`);
console.log(`${files.length} schemas in .cache/schema`);
