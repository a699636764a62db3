import { describe, expect, test } from 'vitest';
import type { WaterState } from '../../../src/plant/water/types.ts';
import { type WaterEdit, type WaterQuestion, waterEdit, waterQuestion } from '../../../src/schema/water.ts';
import { of } from '../../../src/units/units.ts';
import { stateOf, usual } from './usual.ts';

/**
 * Faults of the trade as edits of the water side: what is edited, how far it may go, and a reading
 * that it must move at either end of that span. Spans: service-judgement (practice), in printed units.
 */
interface Expressed {
  readonly edits: readonly WaterEdit[];
  readonly span?: readonly [number, number];
  readonly moves: WaterQuestion;
  /** With a low-pressure cut-off fitted, or a check valve above ground. */
  readonly on?: 'cut-off';
}

const gpm = (low: number, high: number) => [of(low, 'gpm'), of(high, 'gpm')] as const;
const psi = (low: number, high: number) => [of(low, 'psi'), of(high, 'psi')] as const;
const ft = (low: number, high: number) => [of(low, 'ft'), of(high, 'ft')] as const;

const FAULTS: Readonly<Record<string, Expressed>> = {
  'switch-tube-blocked-high': { edits: [{ edit: 'tube' }], span: psi(35, 48), moves: 'gauge-zone' },
  'switch-tube-blocked-low': { edits: [{ edit: 'tube' }], span: psi(0, 29), moves: 'plateau' },
  'switch-diaphragm-torn': { edits: [{ edit: 'thrust-lost' }], moves: 'gauge-zone' },
  'switch-misadjusted': { edits: [{ edit: 'setting', of: 'both' }], span: psi(4, 15), moves: 'cut-in' },
  'switch-cut-out-beyond-pump': {
    edits: [{ edit: 'setting', of: 'cut-out' }],
    span: psi(30, 60),
    moves: 'cut-out',
  },
  'switch-differential-lost': {
    edits: [{ edit: 'setting', of: 'cut-out' }],
    span: psi(-18, -15),
    moves: 'drawdown',
  },
  'switch-cut-off-open': { edits: [{ edit: 'cut-off-open' }], moves: 'switch-tells' },
  'gauge-stuck': { edits: [{ edit: 'gauge', shows: 'stuck' }], span: psi(0, 48), moves: 'gauge-error' },
  'gauge-off': { edits: [{ edit: 'gauge', shows: 'offset' }], span: psi(5, 15), moves: 'gauge-error' },
  'tank-bladder-torn': { edits: [{ edit: 'air' }], span: [0.02, 0.1], moves: 'air-valve' },
  'tank-precharge-low': { edits: [{ edit: 'precharge' }], span: psi(-25, -10), moves: 'drawdown' },
  'tank-precharge-high': { edits: [{ edit: 'precharge' }], span: psi(5, 17), moves: 'cut-in' },
  'tank-precharge-high-on-cut-off': {
    edits: [{ edit: 'precharge' }],
    span: psi(5, 17),
    moves: 'gauge-zone',
    on: 'cut-off',
  },
  'tank-port-choked': { edits: [{ edit: 'close', at: 'tank' }], moves: 'drawdown' },
  'tank-undersized': { edits: [{ edit: 'volume' }], span: [0.1, 0.6], moves: 'fill-time' },
  'tank-shell-leaks': {
    edits: [{ edit: 'leak', at: 'tank' }],
    span: gpm(0.02, 2),
    moves: 'leak-down-isolated',
  },
  'filter-clogged': { edits: [{ edit: 'restrict' }], span: psi(60, 600), moves: 'filter-drop' },
  'house-valve-shut': { edits: [{ edit: 'close', at: 'house' }], moves: 'tap-pressure' },
  'house-leaks': { edits: [{ edit: 'leak', at: 'house' }], span: gpm(0.3, 10), moves: 'leak-down-open' },
  'buried-line-leaks': {
    edits: [{ edit: 'leak', at: 'buried' }],
    span: gpm(0.2, 8),
    moves: 'leak-down-isolated',
  },
  'line-frozen': { edits: [{ edit: 'close', at: 'line' }], moves: 'open-discharge' },
  'demand-exceeds-supply': { edits: [{ edit: 'demand' }], span: gpm(9, 14), moves: 'gauge-running' },
  'pump-worn': { edits: [{ edit: 'head' }], span: [0.7, 0.9], moves: 'dead-head' },
  'pump-melted': { edits: [{ edit: 'head' }], span: [0.2, 0.4], moves: 'plateau' },
  'pump-too-small': { edits: [{ edit: 'head' }], span: [0.3, 0.6], moves: 'flow-at-pressure' },
  'coupling-sheared': { edits: [{ edit: 'no-lift', shaft: 'free' }], moves: 'dead-head' },
  'intake-blocked': { edits: [{ edit: 'intake' }], span: [0.2, 0.6], moves: 'flow-at-pressure' },
  'pump-air-locked': { edits: [{ edit: 'no-lift', shaft: 'dry' }], moves: 'dead-head' },
  'drop-pipe-holed': {
    edits: [{ edit: 'leak', at: 'riser', depth: of(60, 'ft') }],
    span: gpm(0.5, 8),
    moves: 'dead-head',
  },
  'drop-pipe-parted': { edits: [{ edit: 'parted' }], moves: 'open-discharge' },
  'pitless-leaks': {
    edits: [{ edit: 'leak', at: 'pitless' }],
    span: gpm(0.5, 5),
    moves: 'leak-down-isolated',
  },
  'check-valve-passes': {
    edits: [{ edit: 'leak', at: 'check' }],
    span: gpm(0.1, 3),
    moves: 'leak-down-isolated',
  },
  'check-valve-jammed': { edits: [{ edit: 'close', at: 'check' }], moves: 'open-discharge' },
  'well-yields-little': { edits: [{ edit: 'yield' }], span: [0.05, 0.25], moves: 'discharge' },
  'water-level-low': { edits: [{ edit: 'level' }], span: [0.5, 1.4], moves: 'static-level' },
  'screen-clogged': { edits: [{ edit: 'yield' }], span: [0.1, 0.7], moves: 'pumping-level' },
  'well-filled-in': { edits: [{ edit: 'bottom' }], span: ft(5, 60), moves: 'bottom-tells' },
  'well-gas': { edits: [{ edit: 'gas' }], span: [0.05, 0.4], moves: 'discharge' },
  'neighbour-pumps': { edits: [{ edit: 'level' }], span: [0.1, 0.3], moves: 'pumping-level' },
};

const withCutOff = { ...usual, switch: { ...usual.switch, cutOff: of(20, 'psi') } };
const asked = (state: WaterState, question: WaterQuestion): string => JSON.stringify(state.read(question));

describe('every fault moves the reading that finds it', () => {
  test.each(Object.entries(FAULTS))('%s', (_, { edits, span, moves, on }) => {
    const input = on === 'cut-off' ? withCutOff : usual;
    for (const severity of span ?? [undefined]) {
      const faulted = stateOf({ edits, input, ...(severity === undefined ? {} : { severity }) });
      expect(asked(faulted, moves)).not.toBe(asked(stateOf({ input }), moves));
    }
  });

  test('a question that a fault does not touch stays as it was', () => {
    expect(asked(stateOf({ edits: [{ edit: 'bottom' }], severity: 1 }), 'fill-time')).toBe(
      asked(stateOf(), 'fill-time'),
    );
  });
});

describe('nothing is left out', () => {
  const kinds = waterEdit.options.map((option) => option.shape.edit.value);

  test('every kind of edit is used by a fault', () => {
    const used = new Set(Object.values(FAULTS).flatMap(({ edits }) => edits.map(({ edit }) => edit)));
    expect(kinds.filter((kind) => !used.has(kind))).toEqual([]);
  });

  test('every question is moved by some fault', () => {
    const moved = waterQuestion.options.filter((question) =>
      Object.values(FAULTS).some(({ edits, span }) => {
        const [severity] = span ?? [undefined];
        const faulted = stateOf({ edits, ...(severity === undefined ? {} : { severity }) });
        return asked(faulted, question) !== asked(stateOf(), question);
      }),
    );
    expect(waterQuestion.options.filter((question) => !moved.includes(question))).toEqual([]);
  });
});
