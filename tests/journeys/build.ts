import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

/** A place of its own, so that a build under way for other reasons is never walked. */
export const BUILT = fileURLToPath(new URL('../../.cache/journeys', import.meta.url));

/**
 * Builds the app once for all journeys, as a person would get it. In a process of its own, because
 * the test runner's environment would otherwise leak into the bundle.
 */
export default async function build(): Promise<void> {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const { NODE_ENV: _mode, VITEST: _runner, ...env } = process.env;
  const vite = fileURLToPath(new URL('../../node_modules/vite/bin/vite.js', import.meta.url));
  await promisify(execFile)(
    process.execPath,
    [vite, 'build', '--outDir', BUILT, '--emptyOutDir', '--logLevel', 'error'],
    { cwd: root, env },
  );
}
