import { describe, expect, test } from 'vitest';
import { barIn, placeIn, stands, stretchIn } from '../../../src/app/parts/plumb.ts';
import { chainOf, scaleOf, ticksOf } from '../../../src/app/parts/scale.ts';
import type { ExpectedWindow } from '../../../src/diagnosis/types.ts';
import { windowOf } from './support/windows.ts';

const scale = (window: ExpectedWindow) => {
  const found = scaleOf(window);
  if (found === undefined) throw new Error('scale: none');
  return found;
};

describe('the scale', () => {
  test('begins at zero where the window can be seen so', () => {
    const one = scale(windowOf({ low: 2.4, high: 3.1 }));
    expect(one).toMatchObject({ start: 0, cut: false, hasLow: true, hasHigh: true });
    // end = 3.1 × 1.22 = 3.782; 2.4 / 3.782 = 63.5 %
    expect(one.from).toBeCloseTo(63.46, 1);
    expect(one.to).toBeCloseTo(81.97, 1);
  });
  test('is cut where the window would be a hair', () => {
    const one = scale(windowOf({ low: 236, high: 244, unit: 'V' }));
    expect(one.cut).toBe(true);
    expect(one.to - one.from).toBeGreaterThan(10);
  });
  test('runs to the edge at an open end', () => {
    expect(scale(windowOf({ low: 2e6 }))).toMatchObject({ to: 100, hasHigh: false });
    expect(scale(windowOf({ high: 0.1, unit: 'V' }))).toMatchObject({ from: 0, hasLow: false });
  });
  test('there is none for a window that is no range', () => {
    expect(scaleOf(windowOf({ kind: 'open' }))).toBeUndefined();
    expect(scaleOf(windowOf({}))).toBeUndefined();
  });
  test('ticks are round amounts on the sheet', () => {
    const ticks = ticksOf(scale(windowOf({ low: 2.4, high: 3.1 })));
    expect(ticks.length).toBeGreaterThan(8);
    expect(ticks.length).toBeLessThan(40);
    expect(ticks.every(({ at }) => at >= 0 && at <= 100)).toBe(true);
  });
});

describe('the chain', () => {
  const window = windowOf({
    low: 2.4,
    high: 3.1,
    parts: [
      { name: 'table', low: 1.73, high: 2.07, from: [{ source: 'a', where: 'b', mark: 'memory' }] },
      { name: 'cable', low: 0.75, high: 0.95, from: [] },
      { name: 'meter', low: -0.08, high: 0.08, from: [] },
    ],
  });
  test('lays what adds end to end and leaves out what only spreads', () => {
    const [table, cable, meter] = chainOf(window, scaleOf(window));
    expect(table?.span?.from).toBe(0);
    expect(cable?.span?.from).toBe(table?.span?.to);
    expect(meter?.span).toBeUndefined();
    expect(meter?.spread).toBeCloseTo(0.08, 9);
    expect(table?.fromMemory).toBe(true);
    expect(cable?.fromMemory).toBe(false);
  });
  test('ends in the middle of the window', () => {
    const one = scale(window);
    const end = chainOf(window, one)[1]?.span?.to ?? 0;
    expect(end).toBeCloseTo((one.from + one.to) / 2, 6);
  });
});

describe('the plumb line', () => {
  const window = { low: 2, high: 3 };
  test('is true to scale inside the window and keeps the order outside', () => {
    const places = [0, 1, 2, 2.5, 3, 4, 6, 30].map((amount) => placeIn(window, amount).at);
    expect(places).toEqual([...places].sort((one, other) => one - other));
    expect(places[3]).toBe(40);
    expect(Math.min(...places)).toBeGreaterThanOrEqual(4);
    expect(Math.max(...places)).toBeLessThanOrEqual(96);
  });
  test('says when it is far off', () => {
    expect(placeIn(window, 4.7).beyond).toBe(false);
    expect(placeIn(window, 99).beyond).toBe(true);
  });
  test('open ends run to the edge', () => {
    expect(stretchIn({ low: 2e6 }, { low: 2e6 })).toEqual({ from: 54, to: 100 });
    expect(stretchIn({ high: 0.1 }, { high: 0.1 })).toEqual({ from: 0, to: 54 });
    expect(placeIn({ low: 2e6 }, 2e4).at).toBeLessThan(54);
  });
  test('a sure prediction is still seen', () => {
    const bar = barIn(window, { low: 2.5, high: 2.5 });
    expect(bar.to - bar.from).toBeGreaterThanOrEqual(3);
  });
  test('a suspect stands where the line goes through its bar', () => {
    expect(stands({ low: 3, high: 6 }, 4.7)).toBe(true);
    expect(stands({ low: 2, high: 3 }, 4.7)).toBe(false);
    expect(stands({ low: 3 }, 4.7)).toBe(true);
  });
});
