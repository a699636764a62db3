import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

/**
 * Builds the app once for all journeys, as a person would get it. In a process of its own, because
 * the test runner's environment would otherwise leak into the bundle.
 */
export default async function build(): Promise<void> {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const { NODE_ENV: _mode, VITEST: _runner, ...env } = process.env;
  const vite = fileURLToPath(new URL('../../node_modules/vite/bin/vite.js', import.meta.url));
  await promisify(execFile)(process.execPath, [vite, 'build', '--logLevel', 'error'], { cwd: root, env });
}
