import { afterAll, beforeAll, expect, test } from 'vitest';
import { catalog } from './content.ts';
import { type Served, serve } from './served.ts';
import { startCall } from './start.ts';
import { type Walk, walkToVerdict } from './technician.ts';
import { siteOf, type Truth } from './truth.ts';
import { TRUTHS } from './truths.ts';

/**
 * Whole calls, walked by tapping on simulated readings: from an empty device to the verdict, in the
 * app as it is built. The engine under the screen knows nothing of the fault that was put in.
 */
let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

async function walk(truth: Truth): Promise<Walk> {
  const { context, page } = await served.phone();
  const site = siteOf(catalog(), truth);
  await startCall(page, served.address, { truth, site });
  const walked = await walkToVerdict({ page, site });
  await context.close();
  return walked;
}

/** Checks that are taken with the supply on and a cover off. */
function energised(walked: Walk): string[] {
  return walked.checks.filter((id) => {
    const site = catalog().checks[id]?.site;
    return site?.supply === 'live' && site.cover === 'open';
  });
}

test('one open pole of the pressure switch', async () => {
  const walked = await walk(TRUTHS.oneSwitchPole);
  expect(walked.verdict).toMatch(/Pressure switch: one pole|Renew the pressure switch/);
  expect(walked.checks).toContain('volts-switch-load-pair');
});

test('a failed start capacitor in a start-only box, without one energised check', async () => {
  const walked = await walk(TRUTHS.startCapacitor);
  expect(walked.verdict).toMatch(/Start capacitor is open/);
  expect(walked.text).toContain('matched lid');
  expect(energised(walked)).toEqual([]);
});

test('an open contactor coil', async () => {
  const walked = await walk(TRUTHS.contactorCoil);
  expect(walked.verdict).toMatch(/Contactor coil is open/);
});

test('an open wire in the control loop', async () => {
  const walked = await walk(TRUTHS.loopWire);
  expect(walked.verdict).toMatch(/Control loop: wire open/);
});

test('a tripped main overload is read before its button is touched', async () => {
  const walked = await walk(TRUTHS.mainOverload);
  expect(walked.verdict).toMatch(/Main overload has tripped/);
  expect(walked.checks).toContain('ohms-main-overload');
});

test('an open yellow at the well-head splice is no reason to pull', async () => {
  const walked = await walk(TRUTHS.yellowSplice);
  expect(walked.verdict).toMatch(/Splice open at the well head, yellow/);
  expect(walked.text).toContain('Do not pull.');
  expect(walked.checks).toContain('ohms-well-yellow-black');
});

test('an open start winding is a pull, with the well head read first', async () => {
  const walked = await walk(TRUTHS.startWinding);
  expect(walked.verdict).toMatch(/Pull the pump|Start winding is open/);
  expect(walked.checks).toEqual(
    expect.arrayContaining(['ohms-yellow-red', 'insulation-system', 'ohms-well-yellow-red']),
  );
});

test('a torn bladder, found at the tank without a cover off', async () => {
  const walked = await walk(TRUTHS.tornTank);
  expect(walked.verdict).toMatch(/tank/i);
  expect(energised(walked)).toEqual([]);
  expect(walked.siteSteps).toEqual([]);
});

test('a hole in the drop pipe is told from a worn pump by leak-down or ear', async () => {
  const walked = await walk(TRUTHS.holeInThePipe);
  expect(walked.checks.some((id) => /^(leak-down|listen)/.test(id))).toBe(true);
  expect(walked.text).toMatch(/pull/i);
});

test('a weak well is no reason to pull the pump', async () => {
  const walked = await walk(TRUTHS.weakWell);
  expect(walked.verdict).toMatch(/well/i);
});

test('a shut house valve ends at the house side', async () => {
  const walked = await walk(TRUTHS.shutValve);
  expect(walked.verdict).toMatch(/valve/i);
});
