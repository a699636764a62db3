import { mkdir } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import build from '../journeys/build.ts';
import { catalog } from '../journeys/content.ts';
import { serve } from '../journeys/served.ts';
import { startCall } from '../journeys/start.ts';
import { walkToVerdict } from '../journeys/technician.ts';
import { siteOf } from '../journeys/truth.ts';
import { TRUTHS } from '../journeys/truths.ts';

/**
 * Pictures of a whole call from the running app: one of each screen that the walk comes by, on a phone
 * and on a desk. `step.png` is the one in the README.
 */
const SIZES = {
  phone: { width: 390, height: 844 },
  desk: { width: 1280, height: 800 },
} as const;

export async function takeShots(folder: string): Promise<string[]> {
  await build();
  await mkdir(folder, { recursive: true });
  const served = await serve();
  const taken: string[] = [];
  try {
    for (const [name, viewport] of Object.entries(SIZES)) {
      const context = await served.browser.newContext({ viewport, deviceScaleFactor: 2 });
      const page = await context.newPage();
      const truth = TRUTHS.yellowSplice;
      const site = siteOf(catalog(), truth);
      await startCall(page, served.address, { truth, site });
      const shoot = shooter(page, `${folder}/${name}`, taken);
      await walkToVerdict({ page, site, beforeStep: shoot });
      await shoot('verdict');
      await context.close();
    }
  } finally {
    await served.close();
  }
  return taken;
}

/** One picture of each kind of screen and of each check. */
function shooter(page: Page, stem: string, taken: string[]): (screen: string) => Promise<void> {
  const seen = new Set<string>();
  return async (screen) => {
    const name = screen.split(' ').slice(0, 2).join('-');
    if (seen.has(name)) return;
    seen.add(name);
    const path = `${stem}-${String(seen.size).padStart(2, '0')}-${name}.png`;
    await page.waitForTimeout(250);
    await page.screenshot({ path });
    taken.push(path);
  };
}
