import { existsSync } from 'node:fs';

/**
 * Path of a Chromium for the browser tests: `$CHROMIUM_PATH`, else a system one, else the
 * binary inside the npm package, so that `npm ci && npm test` needs nothing else.
 */
export async function chromiumPath(force) {
  if (force !== 'npm') {
    for (const path of [process.env.CHROMIUM_PATH, '/usr/bin/chromium']) {
      if (path && existsSync(path)) return path;
    }
  }
  if (!existsSync('/usr/lib/x86_64-linux-gnu/libnss3.so')) {
    process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs20.x';
  }
  return (await import('@sparticuz/chromium')).default.executablePath();
}

export const ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
];
