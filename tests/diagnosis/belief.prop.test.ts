import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checksOn } from '../../machines/call/applies.ts';
import { believe, type Given } from '../../src/diagnosis/belief/believe.ts';
import { buildModel } from '../../src/diagnosis/belief/model.ts';
import { suspectWeights } from '../../src/diagnosis/belief/summary.ts';
import { rank } from '../../src/diagnosis/planner/rank.ts';
import { resolveSystem } from '../../src/diagnosis/system.ts';
import { catalogFrom } from '../../src/proof/content.ts';
import { installation } from '../../src/schema/installation.ts';

const built = catalogFrom('content');
if ('problems' in built) throw new Error(`content has ${built.problems.length} problems`);
const known = installation.parse({
  family: 'start-only',
  box: 'start-only-current-relay',
  motor: '3-wire-1hp-230v-start-only',
  drop: { conductor: 'copper-12', length: [200, 'ft'] },
  buried: { conductor: 'copper-12', length: [50, 'ft'] },
});
const system = resolveSystem(built.catalog, known);
const model = buildModel(built.catalog, system, 'ordinary');
const dead = [
  'ohms-yellow-black',
  'ohms-yellow-red',
  'ohms-black-red',
  'start-capacitance',
  'insulation-system',
];

const number = (check: string, low: number, high: number, unit: 'ohm' | 'uF' | 'Mohm') =>
  fc
    .double({ min: low, max: high, noNaN: true })
    .map((value): Given => ({ check, reading: { value: [value, unit] }, by: 'qualified' }));
const open = (check: string) => fc.constant<Given>({ check, reading: { open: true }, by: 'qualified' });
const readings = fc.tuple(
  fc
    .constantFrom('hums-or-trips', 'silent-without-pressure', 'works-now')
    .map((answer): Given => ({ check: 'what-is-seen', reading: { answer }, by: 'qualified' })),
  fc.oneof(number('ohms-yellow-black', 0, 40, 'ohm'), open('ohms-yellow-black')),
  fc.oneof(number('ohms-yellow-red', 0, 40, 'ohm'), open('ohms-yellow-red')),
  number('start-capacitance', 0, 200, 'uF'),
  number('insulation-system', 0, 200, 'Mohm'),
);

describe('belief', () => {
  test('weights sum to one and none is NaN, whatever was read', () => {
    fc.assert(
      fc.property(readings, (given) => {
        const { weights } = believe(model, { circumstances: [] }, given);
        const sum = weights.reduce((total, one) => total + one, 0);
        expect(sum).toBeCloseTo(1, 9);
        expect(weights.every((one) => one >= 0)).toBe(true);
      }),
      { seed: 11, numRuns: 60 },
    );
  });

  test('the order of the readings does not matter', () => {
    fc.assert(
      fc.property(readings, (given) => {
        const forward = suspectWeights(model, believe(model, { circumstances: [] }, given).weights);
        const backward = suspectWeights(
          model,
          believe(model, { circumstances: [] }, [...given].reverse()).weights,
        );
        for (const [suspect, weight] of forward)
          expect(Math.abs(weight - (backward.get(suspect) ?? 0))).toBeLessThan(0.05);
      }),
      { seed: 12, numRuns: 60 },
    );
  });

  test('a reading that was not taken, or would not settle, changes nothing', () => {
    const before = believe(model, { circumstances: [] }, []).weights;
    for (const check of dead) {
      expect(
        believe(model, { circumstances: [] }, [{ check, reading: { notTaken: 'no-tool' }, by: 'qualified' }])
          .weights,
      ).toEqual(before);
      expect(
        believe(model, { circumstances: [] }, [{ check, reading: { unstable: true }, by: 'qualified' }])
          .weights,
      ).toEqual(before);
    }
  });

  test('circumstances multiply priors: lightning raises what lightning kills', () => {
    const key = 'motor-grounded common';
    const plain = suspectWeights(model, believe(model, { circumstances: [] }, []).weights).get(key) ?? 0;
    const struck =
      suspectWeights(model, believe(model, { circumstances: ['lightning'] }, []).weights).get(key) ?? 0;
    expect(struck).toBeGreaterThan(2 * plain);
  });
});

describe('the planner', () => {
  test('no check is expected to take information away, and ranks are stable', () => {
    const checks = checksOn(system, Object.values(built.catalog.checks)).filter((check) =>
      dead.includes(check.id),
    );
    const proposals = checks.map((check) => ({ checks: [check.id], minutes: 3, procedure: undefined }));
    fc.assert(
      fc.property(readings, (given) => {
        const belief = believe(model, { circumstances: [] }, given.slice(0, 2));
        const first = rank(belief, proposals, 'qualified');
        expect(first.every((one) => one.gain >= 0)).toBe(true);
        expect(rank(belief, [...proposals].reverse(), 'qualified').map((one) => one.checks)).toEqual(
          first.map((one) => one.checks),
        );
      }),
      { seed: 13, numRuns: 20 },
    );
  });
});
