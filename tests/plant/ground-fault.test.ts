import { describe, expect, test } from 'vitest';
import { conditionsOf } from '../../src/plant/conditions.ts';
import { applyEdits } from '../../src/plant/electrical/edits.ts';
import { circuitOf } from '../../src/plant/electrical/install.ts';
import { type Trip, tripClass, tripsOf } from '../../src/plant/electrical/trips.ts';
import { layOut } from '../../src/plant/layout.ts';
import { setUp } from '../../src/plant/plant.ts';
import type { Edit } from '../../src/schema/fault.ts';
import { number, RUN } from './support/ask.ts';
import { contentInput, type Swaps } from './support/content.ts';
import { spreads } from './support/inputs.ts';
import { runUp } from './support/vectors.ts';

/**
 * What does a leak to ground draw from a 120 V leg, and what opens on it?
 *
 * Expected values: Ohm's law on 120 V and the ohms of the fault (derived); what opens follows from
 * the ratings: a class A device between 4 and 6 mA, a magnetic breaker at five to ten times its
 * rating. A 3/4 hp motor on a 20 A breaker, 75 m of 12 gauge.
 */
const WATCHED: Swaps = { panel: 'panel-ground-fault' };
const MOTOR = '3-wire-0.75hp-230v-start-only';
const plant = (swaps: Swaps = {}) => contentInput('start-only-potential-relay', MOTOR, swaps);
const leak = (nodes: [string, string]): Edit => ({ edit: 'leak', nodes });
const atMotor = leak(['motor.B', 'motor.G']);
/** At the end of the cable in the box, so that nothing but the fault itself limits the current. */
const atBox = leak(['lead.B', 'box.G']);

function tripsWith(swaps: Swaps, edits: readonly Edit[], ohms: number): readonly Trip[] {
  const { circuit, at } = runUp(plant(swaps), edits, ohms);
  return tripsOf(circuit, at);
}

const both = { clamp: ['panel.breaker-1', 'panel.breaker-2'] };
function residualMilliamps(edits: readonly Edit[], ohms: number): number {
  const state = setUp(plant(WATCHED), spreads).state({ edits, severity: ohms }, {});
  return 1000 * number(state, 'residual', both, RUN);
}

/** Less by the drop to the motor and by what the sound insulation leaks from the other leg. */
describe('the current that does not come back', () => {
  test.each([
    ['0.5 megohm', 0.5e6, 0.24],
    ['30 kilohm', 30e3, 4],
    ['20 kilohm', 20e3, 6],
    ['500 ohm', 500, 240],
  ])('%s', (_, ohms, milliamps) => {
    expect(Math.abs(residualMilliamps([atMotor], ohms) / milliamps - 1)).toBeLessThan(0.06);
  });

  test('a sound installation leaks microamperes', () => {
    expect(residualMilliamps([], 1)).toBeLessThan(0.02);
  });
});

describe('what opens', () => {
  test('0.5 megohm: nothing', () => {
    expect(tripsWith(WATCHED, [atMotor], 0.5e6)).toEqual([]);
  });

  test('20 to 30 kilohm: the ground-fault breaker, at once, somewhere between 4 and 6 mA', () => {
    expect(tripsWith(WATCHED, [atMotor], 30e3)).toEqual([]);
    const trips = tripsWith(WATCHED, [atMotor], 20e3);
    expect(trips.map(({ kind }) => kind)).toEqual(['ground-fault-pole', 'ground-fault-pole']);
    expect(tripClass(trips)).toBe('at-once');
  });

  test('500 ohm: nothing but the ground-fault breaker, and the line amps hardly move', () => {
    expect(tripsWith({}, [atMotor], 500)).toEqual([]);
    expect(tripClass(tripsWith(WATCHED, [atMotor], 500))).toBe('at-once');
    const amps = (edits: readonly Edit[]) => runUp(plant(), edits, 500).amps('panel.breaker-1');
    expect(amps([atMotor]) / amps([])).toBeLessThan(1.03);
  });

  /** 120 V ÷ 6.3 Ω = 19 A beside the motor's own 6 A, which lags it; 1.13 times the rating is held for ever. */
  test('6 ohm: a 20 A breaker that carries the motor already, in minutes', () => {
    const { circuit, at, amps } = runUp(plant(), [atBox], 6);
    expect(amps('panel.breaker-1')).toBeGreaterThan(1.15 * 20);
    expect(amps('panel.breaker-1')).toBeLessThan(28);
    const [first] = tripsOf(circuit, at);
    expect(first?.kind).toBe('breaker-pole');
    expect(tripClass(tripsOf(circuit, at))).toBe('minutes');
  });

  /** The way there and back is 0.3 Ω here: 0.3 Ω of fault make 0.6 Ω, 120 V ÷ 0.6 Ω = 200 A. */
  test('0.6 ohm, the way included: the same breaker at once', () => {
    const { circuit, at, amps } = runUp(plant(), [atBox], 0.3);
    expect(amps('panel.breaker-1')).toBeGreaterThan(180);
    expect(tripsOf(circuit, at)[0]).toMatchObject({ kind: 'breaker-pole', seconds: 0 });
  });

  /** 100 A is five times the rating: inside the spread of magnetic trips, else five seconds of heat. */
  test('1.2 ohm, the way included: the same breaker within seconds', () => {
    const { circuit, at, amps } = runUp(plant(), [atBox], 0.9);
    expect(amps('panel.breaker-1') / 20).toBeGreaterThan(5);
    expect(tripsOf(circuit, at)[0]!.seconds).toBeLessThan(6);
  });
});

describe.each(['service.bond', 'panel.ground', 'box.ground', 'drop.ground'])(
  'with the ground path open at %s',
  (part) => {
    const dead = leak(['motor.B', 'motor.G']);
    const open: Edit = { edit: 'open', part };

    test('a dead-grounded motor never trips anything, not even a ground-fault breaker', () => {
      expect(tripsWith({}, [dead], 1)).not.toEqual([]);
      expect(tripsWith({}, [dead, open], 1)).toEqual([]);
      expect(tripsWith(WATCHED, [dead, open], 1)).toEqual([]);
    });

    test('and the casing is live', () => {
      const casing = { between: ['motor.G', 'service.N'] as [string, string] };
      const volts = (edits: readonly Edit[]) =>
        number(setUp(plant(), spreads).state({ edits, severity: 1 }, {}), 'volts', casing, RUN);
      expect(volts([dead, open])).toBeGreaterThan(110);
      expect(volts([open])).toBeLessThan(1);
      expect(volts([])).toBeLessThan(1);
    });
  },
);

test('a pole that is open already opens no more', () => {
  const input = plant(WATCHED);
  const layout = layOut(input.pieces);
  const edits: Edit[] = [atMotor, { edit: 'open', part: 'panel.breaker-1' }];
  const conditions = conditionsOf(input, spreads, {});
  const circuit = circuitOf(layout, applyEdits(layout, { edits, severity: 500 }), { input, conditions });
  const { at } = runUp(input, edits, 500);
  expect(tripsOf(circuit, at).map(({ part }) => layout.parts[part]!.id)).not.toContain('panel.breaker-1');
});
