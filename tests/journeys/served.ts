import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { preview } from 'vite';
import { ARGS, chromiumPath } from '../browser.mjs';
import { BUILT } from './build.ts';

/** The built app behind a local address, and a browser to walk it with. */
export interface Served {
  readonly address: string;
  readonly browser: Browser;
  /** A phone: 390 × 844, touch; storage of its own. */
  phone(): Promise<{ context: BrowserContext; page: Page }>;
  /** Shuts the server and leaves the browser: from here on there is no network. */
  unplug(): Promise<void>;
  close(): Promise<void>;
}

export async function serve(): Promise<Served> {
  const configFile = fileURLToPath(new URL('../../vite.config.ts', import.meta.url));
  const server = await preview({
    configFile,
    build: { outDir: BUILT },
    preview: { host: '127.0.0.1', port: 0 },
    logLevel: 'error',
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined)
    throw new Error('journeys: the preview server has no address; run npm run build first');
  const executablePath = await chromiumPath(process.env.BROWSER_FROM);
  const browser = await chromium.launch({ executablePath, args: ARGS });
  const unplug = (): Promise<void> => new Promise((resolve) => void server.httpServer.close(() => resolve()));
  return {
    address,
    browser,
    phone: async () => {
      const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
      context.setDefaultTimeout(60_000);
      return { context, page: await context.newPage() };
    },
    unplug,
    close: async () => {
      await browser.close();
      if (server.httpServer.listening) await unplug();
    },
  };
}
