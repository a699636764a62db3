import { mkdir } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import build from '../journeys/build.ts';
import { walkToClose } from '../journeys/close.ts';
import { catalog } from '../journeys/content.ts';
import { serve } from '../journeys/served.ts';
import { startCall } from '../journeys/start.ts';
import { walkToVerdict } from '../journeys/technician.ts';
import { siteOf, type Truth } from '../journeys/truth.ts';
import { TRUTHS } from '../journeys/truths.ts';

/**
 * Pictures of whole calls from the running app: one of each screen that the walk comes by, on a phone
 * and on a desk. `step.png` is the one in the README.
 */
const SIZES = {
  phone: { width: 390, height: 844 },
  desk: { width: 1280, height: 800 },
} as const;

/** One call on the wires, one on the water. */
const CALLS: Readonly<Record<string, Truth>> = { splice: TRUTHS.yellowSplice, tank: TRUTHS.tornTank };

export async function takeShots(folder: string): Promise<string[]> {
  await build();
  await mkdir(folder, { recursive: true });
  const served = await serve();
  const taken: string[] = [];
  try {
    for (const [name, viewport] of Object.entries(SIZES)) {
      for (const [call, truth] of Object.entries(CALLS)) {
        const context = await served.browser.newContext({ viewport, deviceScaleFactor: 2 });
        const page = await context.newPage();
        const site = siteOf(catalog(), truth);
        await startCall(page, served.address, { truth, site });
        const shoot = shooter(page, `${folder}/${name}-${call}`, taken);
        await walkToVerdict({ page, site, beforeStep: shoot });
        await shoot('verdict');
        await walkToClose({ page, site, beforeStep: shoot }, truth);
        await context.close();
      }
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
