import { describe, expect, test } from 'vitest';
import { setUp } from '../../src/plant/plant.ts';
import type { PlantState } from '../../src/plant/types.ts';
import type { Edit } from '../../src/schema/fault.ts';
import type { WaterEdit, WaterQuestion } from '../../src/schema/water.ts';
import { of } from '../../src/units/units.ts';
import { number, RUN } from './support/ask.ts';
import { input, large, type Setting, small, spreads } from './support/inputs.ts';
import { usual } from './water/usual.ts';

/** Gauge to switch, switch to motor, motor to pump, pump to gauge. */
interface Fault {
  readonly electrical?: readonly Edit[];
  readonly water?: readonly WaterEdit[];
  readonly severity?: number;
  readonly setting?: Setting;
}

function whole({ electrical = [], water = [], severity, setting = small }: Fault = {}): PlantState {
  const plant = setUp({ ...input({ ...setting, load: 1 }), water: usual }, spreads);
  return plant.state({ edits: electrical, water, severity }, {});
}

/** What a question of eyes, ears or gauge is answered with. */
function asked(state: PlantState, predict: { rule: 'what-is-seen' } | { water: WaterQuestion }): string {
  const got = state.read({ at: { look: 'site' }, predict, site: RUN });
  if (got.kind !== 'answer') throw new Error(`expected an answer, got ${JSON.stringify(got)}`);
  return got.answer;
}
const seen = (state: PlantState): string => asked(state, { rule: 'what-is-seen' });

const amps = (state: PlantState, lead: string): number =>
  number(state, 'amps', { clamp: [`box.lead-${lead}`] }, RUN);

describe('a sound whole', () => {
  test('works, at the load its pump asks for', () => {
    const sound = whole();
    expect(seen(sound)).toBe('works-now');
    expect(sound.pumpLoad()).toBeCloseTo(1, 1);
  });
});

describe('water faults on the clamp', () => {
  test('dry: the load falls to its share, and the watts with it', () => {
    const dry = whole({ water: [{ edit: 'no-lift', shaft: 'dry' }], setting: large });
    const watts = (one: PlantState) => number(one, 'watts', { clamp: ['panel.breaker-1'] }, RUN);
    // The share of a dry pump over that of the sound one at its usual pressure
    expect(dry.pumpLoad()).toBeCloseTo(0.35, 1);
    expect(watts(dry)).toBeLessThan(0.65 * watts(whole({ setting: large })));
    // Derived by the electrical study at 35 % load: yellow 7.8, black 7.7, red 6.8 A
    expect(amps(dry, 'yellow')).toBeCloseTo(7.8, 0);
    expect(amps(dry, 'black')).toBeCloseTo(7.7, 0);
    expect(seen(dry)).toBe('runs-without-water');
  });

  test('a sheared coupling asks for nothing at all', () => {
    const free = whole({ water: [{ edit: 'no-lift', shaft: 'free' }] });
    expect(free.pumpLoad()).toBe(0);
    expect(seen(free)).toBe('runs-without-water');
  });

  test('a well that gives less than the pump takes', () => {
    const low = whole({ water: [{ edit: 'yield' }], severity: 0.1 });
    const later = (state: PlantState) =>
      state.read({
        at: { clamp: ['box.lead-yellow'] },
        predict: { reads: 'amps', moment: { time: of(60, 'min') } },
        site: RUN,
      });
    const [starved, fed] = [later(low), later(whole())];
    expect(starved.kind === 'value' && fed.kind === 'value' && starved.value < 0.9 * fed.value).toBe(true);
    expect(seen(low)).toBe('runs-badly');
  });

  test('a torn bladder is a system that runs badly', () => {
    expect(seen(whole({ water: [{ edit: 'air' }], severity: 0.05 }))).toBe('runs-badly');
  });

  test('a shut house valve is silence with pressure', () => {
    expect(seen(whole({ water: [{ edit: 'close', at: 'house' }] }))).toBe('silent-with-pressure');
  });

  test('a closed tube is silence without', () => {
    expect(seen(whole({ water: [{ edit: 'tube' }], severity: of(45, 'psi') }))).toBe(
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
    expect(asked(welded, { water: 'gauge-zone' })).toBe('above-cut-out');
  });

  test('an open lead leaves the house dry', () => {
    const open = whole({ electrical: [{ edit: 'open', part: 'run.yellow' }] });
    expect(asked(open, { water: 'gauge-zone' })).toBe('zero');
    expect(seen(open)).toBe('silent-without-pressure');
  });

  test('a locked rotor hums', () => {
    expect(seen(whole({ electrical: [{ edit: 'shaft', state: 'locked' }] }))).toBe('hums-or-trips');
  });

  test('low volts slow the pump a little, by the affinity laws', () => {
    const low = whole({ electrical: [{ edit: 'supply', leg: 'both' }], severity: 0.85 });
    const turns = low.turns(true) ?? 0;
    expect(turns).toBeLessThan(whole().turns(true) ?? 0);
    expect(turns).toBeGreaterThan(0.9);
    const flow = (one: PlantState) =>
      one.read({ at: { look: 'tank' }, predict: { water: 'flow-at-pressure' }, site: RUN });
    expect(JSON.stringify(flow(low))).not.toBe(JSON.stringify(flow(whole())));
  });

  test('without a model the motor is taken at its word', () => {
    const bare = whole({ setting: { ...small, withoutModel: true } });
    expect(bare.turns(true)).toBeUndefined();
    expect(asked(bare, { water: 'gauge-zone' })).toBe('between');
  });
});
