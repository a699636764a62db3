import { describe, expect, test } from 'vitest';
import { setUp } from '../../../src/plant/plant.ts';
import { couple, type Whole } from '../../../src/plant/water/couple.ts';
import { setUpWater } from '../../../src/plant/water/water.ts';
import type { Edit } from '../../../src/schema/fault.ts';
import type { WaterEdit } from '../../../src/schema/water.ts';
import { of } from '../../../src/units/units.ts';
import { number, RUN } from '../support/ask.ts';
import { input, large, type Setting, small, spreads } from '../support/inputs.ts';
import { said, usual } from './usual.ts';

/** Gauge to switch, switch to motor, motor to pump, pump to gauge. */
interface Fault {
  readonly electrical?: readonly Edit[];
  readonly water?: readonly WaterEdit[];
  readonly severity?: number;
  readonly setting?: Setting;
}

function whole({ electrical = [], water = [], severity, setting = small }: Fault = {}): Whole {
  const halves = {
    plant: setUp(input({ ...setting, load: 1 }), spreads),
    water: setUpWater(usual),
    wants: { weakTap: usual.house.weakTap, leastFill: usual.tank.leastFill },
  };
  return couple(halves, { electrical: { edits: electrical, severity }, water: { edits: water, severity } });
}

const amps = ({ electrical }: Whole, lead: string): number =>
  number(electrical, 'amps', { clamp: [`box.lead-${lead}`] }, RUN);

describe('a sound whole', () => {
  test('works, at the load its pump asks for', () => {
    const sound = whole();
    expect(sound.seen).toBe('works-now');
    expect(sound.load).toBeCloseTo(1, 1);
  });
});

describe('water faults on the clamp', () => {
  test('dry: the load falls to its share, and the watts with it', () => {
    const dry = whole({ water: [{ edit: 'no-lift', shaft: 'dry' }], setting: large });
    const watts = (one: Whole) => number(one.electrical, 'watts', { clamp: ['panel.breaker-1'] }, RUN);
    expect(dry.load).toBeCloseTo(0.35, 9);
    expect(watts(dry)).toBeLessThan(0.65 * watts(whole({ setting: large })));
    // Derived by the electrical study at 35 % load: yellow 7.8, black 7.7, red 6.8 A
    expect(amps(dry, 'yellow')).toBeCloseTo(7.8, 0);
    expect(amps(dry, 'black')).toBeCloseTo(7.7, 0);
    expect(dry.seen).toBe('runs-without-water');
  });

  test('a sheared coupling asks for nothing at all', () => {
    const free = whole({ water: [{ edit: 'no-lift', shaft: 'free' }] });
    expect(free.load).toBe(0);
    expect(free.seen).toBe('runs-without-water');
  });

  test('a well that gives less than the pump takes', () => {
    const low = whole({ water: [{ edit: 'yield' }], severity: 0.1 });
    expect(low.load).toBeLessThan(0.7);
    expect(low.seen).toBe('runs-badly');
  });

  test('a torn bladder is a system that runs badly', () => {
    expect(whole({ water: [{ edit: 'air' }], severity: 0.05 }).seen).toBe('runs-badly');
  });

  test('a shut house valve is silence with pressure', () => {
    expect(whole({ water: [{ edit: 'close', at: 'house' }] }).seen).toBe('silent-with-pressure');
  });

  test('a closed tube is silence without', () => {
    expect(whole({ water: [{ edit: 'tube' }], severity: of(45, 'psi') }).seen).toBe(
      'silent-without-pressure',
    );
  });
});

describe('electrical faults on the gauge', () => {
  test('welded contacts lift the gauge to the relief valve', () => {
    const welded = whole({
      electrical: [
        { edit: 'stick', part: 'switch.pole-1', state: 'made' },
        { edit: 'stick', part: 'switch.pole-2', state: 'made' },
      ],
    });
    expect(said(welded.water, 'gauge-zone')).toBe('above-cut-out');
  });

  test('an open lead leaves the house dry', () => {
    const open = whole({ electrical: [{ edit: 'open', part: 'run.yellow' }] });
    expect(said(open.water, 'gauge-zone')).toBe('zero');
    expect(open.seen).toBe('silent-without-pressure');
  });

  test('a locked rotor hums', () => {
    expect(whole({ electrical: [{ edit: 'shaft', state: 'locked' }] }).seen).toBe('hums-or-trips');
  });

  test('low volts slow the pump a little, by the affinity laws', () => {
    const low = whole({ electrical: [{ edit: 'supply', leg: 'both' }], severity: 0.85 });
    const turns = low.electrical.turns(true) ?? 0;
    expect(turns).toBeLessThan(whole().electrical.turns(true) ?? 0);
    expect(turns).toBeGreaterThan(0.9);
    const flow = (one: Whole) => one.water.read('flow-at-pressure');
    expect(JSON.stringify(flow(low))).not.toBe(JSON.stringify(flow(whole())));
  });

  test('without a model the motor is taken at its word', () => {
    const bare = whole({ setting: { ...small, withoutModel: true } });
    expect(bare.electrical.turns(true)).toBeUndefined();
    expect(said(bare.water, 'gauge-zone')).toBe('between');
  });
});
