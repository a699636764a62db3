import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { catalog } from './content.ts';
import { type Served, serve } from './served.ts';
import { startCall } from './start.ts';
import { press, screenNow, walkToVerdict } from './technician.ts';
import { siteOf } from './truth.ts';
import { TRUTHS } from './truths.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

interface Found {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

/** Every rule of the checker, on the page as it stands. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const found = await page.evaluate<Found>('axe.run()');
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
}

test('the checker sees a key without a name', async () => {
  const { context, page } = await served.phone();
  await page.goto(served.address);
  await page.getByRole('button', { name: 'Start a call' }).waitFor();
  await page.evaluate(() => document.querySelector('main')?.append(document.createElement('button')));
  expect(await violations(page)).toEqual([expect.stringContaining('button-name')]);
  await context.close();
});

test('no screen of a call breaks a rule of accessibility', async () => {
  const { page } = await served.phone();
  const truth = TRUTHS.yellowSplice;
  const site = siteOf(catalog(), truth);
  await page.goto(served.address);
  await page.getByRole('button', { name: 'Start a call' }).waitFor();
  const broken: Record<string, string[]> = { cases: await violations(page) };
  await startCall(page, served.address, {
    truth,
    site,
    look: async (screen) => {
      broken[screen] = await violations(page);
    },
  });
  const seen = new Set<string>();
  await walkToVerdict({
    page,
    site,
    beforeStep: async (screen) => {
      const kind = screen.split(' ').slice(0, 2).join(' ');
      if (!seen.has(kind)) broken[screen] = await violations(page);
      seen.add(kind);
      return false;
    },
  });
  for (const [key, screen] of [
    ['Suspects', 'suspects'],
    ['Back to the step', ''],
    ['All readings', 'trail'],
    ['Back to the step', ''],
    ['Report', 'report'],
    ['Back to the step', ''],
  ] as const) {
    await press(page, key);
    await screenNow(page);
    if (screen !== '') broken[screen] = await violations(page);
  }
  expect(Object.fromEntries(Object.entries(broken).filter(([, found]) => found.length > 0))).toEqual({});
});
