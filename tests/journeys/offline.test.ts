import { afterAll, beforeAll, expect, test } from 'vitest';
import { catalog } from './content.ts';
import { type Served, serve } from './served.ts';
import { startCall } from './start.ts';
import { answerChecks, press, screenNow } from './technician.ts';
import { siteOf } from './truth.ts';
import { TRUTHS } from './truths.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

test('after one visit the app opens with no network, with the case as it was, and the call goes on', async () => {
  const { context, page } = await served.phone();
  const truth = TRUTHS.mainOverload;
  const site = siteOf(catalog(), truth);
  await startCall(page, served.address, { truth, site });
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const screen = await screenNow(page);
  await served.unplug();
  await expect(fetch(served.address)).rejects.toThrow();

  const address = page.url();
  await page.close();
  const fresh = await context.newPage();
  await fresh.goto(address);
  expect(await screenNow(fresh)).toBe(screen);
  if (screen.startsWith('check')) await answerChecks({ page: fresh, site }, screen);
  else await press(fresh, 'Done');
  await fresh.waitForFunction(
    (name) => document.querySelector('.frame')?.getAttribute('data-screen') !== name,
    screen,
  );
  expect(await screenNow(fresh)).not.toBe('no-advice');

  const list = await context.newPage();
  await list.goto(served.address);
  await list.getByRole('button', { name: /Larch Hollow/ }).waitFor();
});
