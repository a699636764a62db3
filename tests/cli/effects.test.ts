import { describe, expect, test } from 'vitest';
import { INSTALLATIONS, MAIN_READINGS, WATER_READINGS } from '../../src/cli/commands/effects.ts';
import { knownBy, knownByText } from '../../src/cli/effects-known-by.ts';
import type { Fault } from '../../src/schema/fault.ts';
import { catalog } from '../published/support/catalog.ts';
import { inProcess } from './support/in-process.ts';

interface Reading {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly regime: string;
}
interface Row {
  readonly fault: string;
  readonly variant: string;
  readonly starts: number;
  readonly mode: string;
  readonly share: number;
  readonly readings: Readonly<Record<string, Reading | string>>;
}

const run = (...words: string[]) => inProcess(['effects', ...words], { cwd: '/' });

/** One installation is enough for the shape of the answer: the smallest that has a start capacitor. */
const { code, out } = await run('--installation', 'start-only');
const data = JSON.parse(out);
const rows: readonly Row[] = data.installations[0].rows;
const rowsOf = (fault: string, mode?: string): Row[] =>
  rows.filter((row) => row.fault === fault && (mode === undefined || row.mode === mode));

function amps(row: Row | undefined, check: string): Reading {
  const reading = row?.readings[check];
  if (typeof reading !== 'object') throw new Error(`no number for ${check}: ${reading}`);
  return reading;
}

test('every reading and installation that is named exists', () => {
  for (const id of [...MAIN_READINGS, ...WATER_READINGS]) expect(Object.keys(catalog.checks)).toContain(id);
  for (const { box, motor } of Object.values(INSTALLATIONS)) {
    expect(Object.keys(catalog.boxes)).toContain(box);
    expect(Object.keys(catalog.motorModels)).toContain(motor);
  }
});

describe('a start-only installation', () => {
  test('ends well, with every fault that can occur there', () => {
    expect(code).toBe(0);
    expect(new Set(rows.map(({ fault }) => fault)).size).toBeGreaterThan(40);
    expect(rowsOf('start-capacitor-open')).not.toEqual([]);
    expect(rowsOf('contactor-jammed')).toEqual([]);
  });

  test('the shares of a fault in one variant add up', () => {
    const sums = new Map<string, number>();
    for (const { fault, variant, share } of rows) {
      const key = `${fault} ${variant}`;
      sums.set(key, (sums.get(key) ?? 0) + share);
    }
    for (const sum of sums.values()) {
      expect(sum).toBeGreaterThan(0.95);
      expect(sum).toBeLessThan(1.01);
    }
  });

  test('sound it starts and runs, with amps near the middle of their span', () => {
    const [sound] = rowsOf('nothing-wrong');
    expect(sound?.starts).toBeGreaterThan(0.99);
    const { value, low, high } = amps(sound, 'amps-line');
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
    expect(high / low).toBeLessThan(2);
  });

  test('without a start capacitor it stands, at saturated amps with a wide span', () => {
    const [open] = rowsOf('start-capacitor-open', 'stands');
    expect(open?.starts).toBe(0);
    const line = amps(open, 'amps-line');
    expect(line.regime).toBe('saturated');
    expect(line.high / line.low).toBeGreaterThan(2);
    expect(open?.readings['what-is-seen']).toBe('hums-or-trips');
  });

  test('start or not near the limit is a probability, with a row for each', () => {
    const near = rows.filter(({ starts }) => starts > 0.05 && starts < 0.95);
    expect(near.length).toBeGreaterThan(0);
    for (const one of near) {
      const same = rows.filter((row) => row.fault === one.fault && row.variant === one.variant);
      expect(new Set(same.map(({ mode }) => mode === 'stands')).size).toBe(2);
    }
  });

  test('faults of the water side have its readings too, and so has a sound system', () => {
    for (const fault of ['nothing-wrong', 'drop-pipe-hole', 'pump-coupling-sheared'])
      expect(Object.keys(rowsOf(fault)[0]?.readings ?? {})).toEqual(
        expect.arrayContaining([...WATER_READINGS]),
      );
    expect(Object.keys(rowsOf('start-capacitor-open')[0]?.readings ?? {})).not.toContain('static-level');
    const leak = (fault: string) => amps(rowsOf(fault)[0], 'leak-down-isolated').value;
    expect(leak('nothing-wrong')).toBe(0);
    expect(leak('drop-pipe-hole')).toBeGreaterThan(1);
    expect(rowsOf('pump-coupling-sheared')[0]?.readings['fill-time']).toBe('never');
  });

  test('a sign stands where the plant would have answered', () => {
    const signed = catalog.faults['tank-waterlogged']?.signs?.find(({ check }) => check === 'motor-sound');
    expect(rowsOf('tank-waterlogged')[0]?.readings['motor-sound']).toBe(signed?.answer);
  });

  test('every number is finite and lies within its span', () => {
    for (const row of rows) {
      for (const reading of Object.values(row.readings)) {
        if (typeof reading === 'string') continue;
        expect(reading.low).toBeLessThanOrEqual(reading.value);
        expect(reading.value).toBeLessThanOrEqual(reading.high);
        expect(Number.isFinite(reading.high)).toBe(true);
      }
    }
  });
});

describe('faults that the plant does not know', () => {
  const injected = (id: string): boolean =>
    (catalog.faults[id]?.variants ?? []).some(({ edits, water = [] }) => edits.length + water.length > 0);

  test('are listed, with the reason where they have no signs either', () => {
    const { knownByNothing, knownBySignsOnly } = data;
    const listed = [...knownByNothing.map(({ fault }: { fault: string }) => fault), ...knownBySignsOnly];
    expect(listed.sort()).toEqual(Object.keys(catalog.faults).filter((id) => !injected(id)));
    expect(knownBySignsOnly).toContain('second-feed-live');
  });

  test('one that has nothing gives its note, or says that it has none', () => {
    const bare = { ...catalog.faults['second-feed-live'], signs: [], note: 'seen by nobody' } as Fault;
    const { note: _, ...silent } = { ...bare, id: 'silent' };
    const found = knownBy({ faults: { [bare.id]: bare, silent } });
    expect(found).toEqual({
      nothing: [
        { fault: 'second-feed-live', note: 'seen by nobody' },
        { fault: 'silent', note: undefined },
      ],
      signsOnly: [],
    });
    expect(knownByText(found)).toContain('second-feed-live: seen by nobody');
    expect(knownByText(found)).toContain('silent: no reason given');
  });
});

test('as text it is one line a row', async () => {
  const text = await run('--installation', 'two-wire', '--as', 'text');
  expect(text.code).toBe(0);
  expect(text.out).toMatch(/^two-wire\n/);
  expect(text.out).toMatch(/^known by their signs only: \d+$/m);
  expect(text.out).toMatch(/switch-pole-open .*stands 100 % \| .*motor-sound silence/);
});

describe('called wrongly', () => {
  test.each([
    [['case.json'], 'takes no case file'],
    [['--as', 'pictures'], '--as is rows or text'],
    [['--installation', 'start-onyl'], 'start-only'],
  ])('%s', async (words, told) => {
    const wrong = await run(...words);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain(told);
  });
});
