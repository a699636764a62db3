import { describe, expect, test } from 'vitest';
import { setUp } from '../../src/plant/plant.ts';
import type { PlantState } from '../../src/plant/types.ts';
import type { Edit } from '../../src/schema/fault.ts';
import { IDLE, number, OFF, RUN, said } from './support/ask.ts';
import { boxes, contentInput, type Swaps } from './support/content.ts';
import { spreads } from './support/inputs.ts';

/** Pieces that a fitting puts in the place of others: each must leave a sound installation sound. */
const SMALL = ['start-only-potential-relay', '3-wire-0.75hp-230v-start-only'] as const;
const LARGE_MOTOR = '3-wire-3hp-230v-start-and-run';
const LOOPS = [
  ['contactor-loop-fed-from-l2', { 'switch-in-loop-from-l2': 'switch-in-loop-from-l2-float' }],
  ['contactor-loop-fed-from-l1', { 'switch-in-loop-from-l1': 'switch-in-loop-from-l1-float' }],
] as const;

function stateOf(box: string, motor: string, swaps: Swaps, edits: readonly Edit[] = []): PlantState {
  return setUp(contentInput(box, motor, swaps), spreads).state({ edits, severity: undefined }, {});
}

const isSound = (state: PlantState): void => {
  expect(state.mode).toEqual({ starts: true, releases: true });
  expect(said(state, 'what-is-seen')).toBe('works-now');
  expect(said(state, 'trip-class')).toBe('holds');
};

const volts = (state: PlantState, one: string, other: string, site = RUN): number =>
  number(state, 'volts', { between: [one, other] }, site);

describe.each([
  ['panel-fused', ['panel.fuse-1', 'panel.fuse-2']],
  ['panel-load-protector', ['panel.protector-1', 'panel.protector-2']],
  ['panel-ground-fault', ['panel.breaker-1', 'panel.breaker-2']],
])('%s', (piece, parts) => {
  const swaps = { panel: piece };

  test('leaves every box sound', () => {
    for (const { id, leads, serves } of Object.values(boxes)) {
      const circuit = serves.includes('start-and-run') ? 'start-and-run' : 'start-only';
      const motor = leads === '2-wire' ? '2-wire-1hp-230v' : `3-wire-1hp-230v-${circuit}`;
      isSound(stateOf(id, motor, swaps));
    }
  });

  test('either part open silences the motor and shows the supply across itself', () => {
    for (const part of parts) {
      const state = stateOf(...SMALL, swaps, [{ edit: 'open', part }]);
      expect(said(state, 'what-is-seen')).toBe('silent-without-pressure');
      expect(number(state, 'volts', { across: part }, RUN)).toBeGreaterThan(200);
      expect(number(state, 'ohms', { across: part }, OFF)).toBeGreaterThan(1e9);
    }
  });

  test('good, it drops next to nothing', () => {
    const state = stateOf(...SMALL, swaps);
    for (const part of parts) {
      expect(number(state, 'volts', { across: part }, RUN)).toBeLessThan(0.15);
      expect(number(state, 'ohms', { across: part }, OFF)).toBeLessThan(0.05);
    }
  });
});

describe.each(LOOPS)('a float in the loop of %s', (box, swaps) => {
  test('calls, and the contactor comes in', () => {
    const state = stateOf(box, LARGE_MOTOR, swaps);
    isSound(state);
    expect(said(state, 'contactor-position')).toBe('in');
  });

  test('open, it holds the pump off with the switch made: volts up to it and none behind it', () => {
    const state = stateOf(box, LARGE_MOTOR, swaps, [{ edit: 'open', part: 'loop.float' }]);
    expect(said(state, 'contactor-position')).toBe('out');
    expect(said(state, 'what-is-seen')).toBe('silent-without-pressure');
    const far = box.endsWith('l2') ? 'box.L1' : 'box.L2';
    expect(volts(state, far, 'switch.T1')).toBeGreaterThan(230);
    expect(volts(state, far, 'box.SW')).toBeLessThan(120);
    expect(volts(state, far, 'loop.F')).toBeGreaterThan(230);
  });

  test('the switch still stops it', () => {
    expect(number(stateOf(box, LARGE_MOTOR, swaps), 'amps', { clamp: ['run.yellow'] }, IDLE)).toBeLessThan(
      0.1,
    );
  });
});
