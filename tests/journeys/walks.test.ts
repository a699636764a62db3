import { afterAll, beforeAll, expect, test } from 'vitest';
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

test('one open pole of the pressure switch is found', async () => {
  const { page } = await served.phone();
  const truth = TRUTHS.oneSwitchPole;
  const site = siteOf(catalog(), truth);
  await startCall(page, served.address, { truth, site });
  const walk = await walkToVerdict({ page, site });
  console.log(walk);
  expect(walk.verdict).toContain('pole');
});
