import { afterAll, beforeAll, expect, test } from 'vitest';
import { walkToClose } from './close.ts';
import { catalog } from './content.ts';
import { type Served, serve } from './served.ts';
import { startCall } from './start.ts';
import { walkToVerdict } from './technician.ts';
import { siteOf } from './truth.ts';
import { TRUTHS } from './truths.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

test('after the repair every proof reading is taken as left, the call is closed, and the report prints on letter paper', async () => {
  const { page } = await served.phone();
  const truth = TRUTHS.mainOverload;
  const site = siteOf(catalog(), truth);
  await startCall(page, served.address, { truth, site });
  await walkToVerdict({ page, site });
  const proof = await walkToClose({ page, site }, truth);
  const wanted = catalog().actions['reset-overload']?.proof ?? [];
  expect(proof.checks.length).toBeGreaterThan(0);
  expect(wanted).toEqual(expect.arrayContaining(proof.checks));
  expect(proof.text).not.toContain('not proved');
  const sheet = (await page.locator('.sheet').textContent()) ?? '';
  expect(sheet).toContain('As left: baseline of the next visit');
  expect(sheet).not.toMatch(/in 100|%/);
  await page.emulateMedia({ media: 'print' });
  expect(await page.getByRole('button', { name: 'Print or save as PDF' }).isVisible()).toBe(false);
  const pdf = await page.pdf({ preferCSSPageSize: true });
  expect(pdf.toString('latin1')).toMatch(/\/MediaBox \[0 0 612 792\]/);
});
