import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const options = { configFile: false, root: at('../..'), logLevel: 'error' };
const { module } = await runnerImport(at('./main.ts'), options);
process.exitCode = await module.main(process.argv.slice(2), process);
