import { describe, expect, test } from 'vitest';
import { machineOf, soundWindings } from '../../src/plant/electrical/motor.ts';
import { leastSquares, solve } from '../../src/proof/levenberg.ts';
import { assumptions, parameterSets, refitAll, refitText, worstMiss } from '../../src/proof/refit.ts';
import { refit } from '../../src/proof/refit-fit.ts';
import { drawnAt, drawnFor } from '../../src/proof/refit-motor.ts';
import { followed, publishedRows } from '../../src/proof/refit-rows.ts';
import { catalog } from '../published/support/catalog.ts';

const rowOf = (id: string) => publishedRows(catalog).find(({ motor }) => motor.id === id)!;
const MOTOR = '3-wire-1.5hp-230v-start-and-run';

describe('least squares', () => {
  test('a line through points it cannot meet all: hand-worked', () => {
    // y = a + b x through (0, 1), (1, 2), (2, 2): b = 0.5, a = 7/6
    const fit = leastSquares(
      ([a, b]) =>
        [
          [0, 1],
          [1, 2],
          [2, 2],
        ].map(([x, y]) => a! + b! * x! - y!),
      [0, 0],
    );
    expect(fit.at[0]).toBeCloseTo(7 / 6, 6);
    expect(fit.at[1]).toBeCloseTo(0.5, 6);
    // (JᵀJ)⁻¹ = [[3, 3], [3, 5]]⁻¹: variances 5/6 and 1/2
    expect(fit.deviations[0]).toBeCloseTo(Math.sqrt(5 / 6), 4);
    expect(fit.deviations[1]).toBeCloseTo(Math.sqrt(0.5), 4);
  });

  test('a bent valley', () => {
    const fit = leastSquares(([x, y]) => [1 - x!, 10 * (y! - x! * x!)], [-1.2, 1]);
    expect(fit.at[0]).toBeCloseTo(1, 5);
    expect(fit.at[1]).toBeCloseTo(1, 5);
  });

  test('an unknown that moves nothing is an error with its cure', () => {
    expect(() =>
      solve(
        [
          [1, 0],
          [0, 0],
        ],
        [1, 1],
      ),
    ).toThrow(/give it a prior/);
  });
});

describe('a motor on a stiff line', () => {
  test('agrees with a printed vector of the model', () => {
    // Derived by an independent program: 1.5 hp, 230 V, slip 0.03, 10 µF: line 10.8309 A, red lead 1.3093 A, 1886.319 W, shaft 1367.764 W
    const { shipped } = rowOf(MOTOR);
    const feed = { volts: 230, run: 10e-6, start: 0, runShare: 0.002, startShare: 0.05 };
    const machine = machineOf(shipped, soundWindings(shipped));
    const got = drawnAt(machine, 0.03, feed);
    expect(got.yellow).toBeCloseTo(10.8309, 3);
    expect(got.black).toBeCloseTo(10.7081, 3);
    expect(got.red).toBeCloseTo(1.3093, 3);
    expect(got.watts).toBeCloseTo(1886.319, 1);
    expect(drawnFor(machine, got.shaft, feed).slip).toBeCloseTo(0.03, 6);
  });
});

describe('what is fitted', () => {
  test('models that stand for themselves, with the lines of their own row', () => {
    const rows = publishedRows(catalog);
    expect(rows.length).toBeGreaterThanOrEqual(12);
    const names = rowOf(MOTOR).points.map(({ name }) => name);
    expect(names).toEqual(['full load', 'service factor', 'auxiliary', 'locked rotor']);
    expect(rowOf('3-wire-1hp-230v-start-and-run').points.map(({ name }) => name)).not.toContain('auxiliary');
    expect(rowOf('3-wire-15hp-230v-start-and-run').points.map(({ name }) => name)).not.toContain(
      'locked rotor',
    );
  });

  test('a model that follows another row names it', () => {
    expect(followed(catalog, catalog.motorModels['2-wire-0.75hp-230v']!)).toBe(
      '3-wire-0.75hp-230v-start-only',
    );
    expect(followed(catalog, catalog.motorModels[MOTOR]!)).toBeUndefined();
  });
});

describe('refitting one motor from the centres of its priors', () => {
  const found = refit(catalog, rowOf(MOTOR));

  test('lands within the printed errors of every line', () => {
    // Printed errors of the shipped fit: 3.5 % at worst
    expect(worstMiss(found.misses)).toBeLessThan(0.036);
    expect(worstMiss(found.shippedMisses)).toBeLessThan(0.036);
    expect(found.fit.cost).toBeLessThanOrEqual(found.shippedCost * 1.001);
  });

  test('and at the shipped parameters, each within its own deviation', () => {
    const { shipped } = found.published;
    const names = Object.keys(found.parameters) as (keyof typeof found.parameters)[];
    names.forEach((name, n) => {
      const off = Math.abs(Math.log(found.parameters[name] / shipped[name]));
      expect(off, name).toBeLessThan(found.fit.deviations[n]!);
    });
    expect(found.model.fullLoad.torque / shipped.fullLoad.torque).toBeCloseTo(1, 2);
    expect(found.model.fullLoad.slip / shipped.fullLoad.slip).toBeCloseTo(1, 1);
  });

  test('a table with a wrong line is not met', () => {
    const row = rowOf(MOTOR);
    const wrong = row.points.map((point) =>
      point.name === 'service factor' ? { ...point, amps: { ...point.amps, yellow: 20 } } : point,
    );
    expect(worstMiss(refit(catalog, { ...row, points: wrong }).misses)).toBeGreaterThan(0.2);
  });

  test('other assumptions give other parameters that fit about as well', () => {
    const other = refit(catalog, rowOf(MOTOR), { slip: 0.05, priors: 2 });
    expect(Math.abs(other.parameters.rotor / found.parameters.rotor - 1)).toBeGreaterThan(0.02);
    expect(worstMiss(other.misses)).toBeLessThan(0.05);
  });
});

describe('all of them', () => {
  const all = refitAll(catalog);

  test('no shipped model can be bettered by much', () => {
    const worth = all.refits
      .filter(({ published }) => published.motor.startCapacitor !== undefined)
      .map(({ fit, shippedCost }) => shippedCost / fit.cost);
    expect(Math.max(...worth)).toBeLessThan(1.02);
  });

  test('are printed with old and new, and handed on as parameter sets', () => {
    const text = refitText(all);
    expect(text).toMatch(/turnsRatio: 1\.3551 → 1\.35/);
    expect(text).toContain('2-wire-0.75hp-230v follows 3-wire-0.75hp-230v-start-only');
    expect(Object.keys(parameterSets(all).models)).toHaveLength(all.refits.length);
  });
});

test('assumptions are read strictly', () => {
  expect(assumptions('slip=0.05')).toEqual({ assumed: { slip: 0.05 } });
  expect(assumptions('slap=0.05')).toEqual({
    mistake: expect.stringContaining('"slap=0.05" is no assumption'),
  });
  expect(assumptions('slip=-1')).toHaveProperty('mistake');
});
