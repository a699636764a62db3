import { describe, expect, test } from 'vitest';
import type { WaterInput } from '../../../src/plant/water/types.ts';
import { setUpWater } from '../../../src/plant/water/water.ts';
import type { WaterEdit, WaterQuestion } from '../../../src/schema/water.ts';
import { of, type UnitName } from '../../../src/units/units.ts';
import { type Faulted, number, said, stateOf, usual } from './usual.ts';

/**
 * What faults do to the readings, direction by direction, as the trade tells them apart. Sources of
 * the directions: service-judgement (practice); numbers of the walks are derived in their comments.
 */
const psi = (value: number): number => of(value, 'psi');
const faulted = (edits: readonly WaterEdit[], severity?: number): Faulted =>
  severity === undefined ? { edits } : { edits, severity };
const read = (fault: Faulted, question: WaterQuestion, unit: UnitName): number =>
  number(stateOf(fault), question, { unit });
const sound: Faulted = {};
const kind = (fault: Faulted, question: WaterQuestion): string => stateOf(fault).read(question).kind;

describe('a sound house', () => {
  test('cycles between its settings and gives what its curve says', () => {
    expect(read(sound, 'cut-in', 'psi')).toBeCloseTo(30, 9);
    expect(read(sound, 'cut-out', 'psi')).toBeCloseTo(50, 9);
    expect(read(sound, 'plateau', 'psi')).toBeCloseTo(50, 9);
    expect(said(stateOf(), 'gauge-zone')).toBe('between');
    expect(read(sound, 'leak-down-isolated', 'psi/min')).toBe(0);
    // 44 · (42.7/44.7 − 42.7/64.7) = 13.0 gal
    expect(read(sound, 'drawdown', 'gal')).toBeCloseTo(13, 1);
    expect(read(sound, 'fill-time', 's')).toBeGreaterThanOrEqual(60);
    expect(said(stateOf(), 'discharge')).toBe('clear');
    expect(said(stateOf(), 'first-draw')).toBe('none');
    expect(stateOf().load()).toBeCloseTo(1, 1);
  });
});

describe('pump end', () => {
  test('wear: weak, low dead-head, level as it was, amps a little low', () => {
    const worn = faulted([{ edit: 'head' }], 0.7);
    expect(read(worn, 'dead-head', 'psi')).toBeLessThan(0.75 * read(sound, 'dead-head', 'psi'));
    expect(read(worn, 'flow-at-pressure', 'gpm')).toBeLessThan(read(sound, 'flow-at-pressure', 'gpm'));
    expect(stateOf(worn).load()).toBeLessThan(1);
    expect(read(worn, 'leak-down-isolated', 'psi/min')).toBe(0);
  });

  test('badly worn it never reaches cut-out', () => {
    const worn = faulted([{ edit: 'head' }], 0.45);
    expect(read(worn, 'plateau', 'psi')).toBeLessThan(50);
    expect(kind(worn, 'cut-out')).toBe('never');
    expect(kind(worn, 'fill-time')).toBe('never');
  });

  test('a blocked intake keeps the dead-head and loses the flow', () => {
    const blocked = faulted([{ edit: 'intake' }], 0.4);
    expect(read(blocked, 'dead-head', 'psi')).toBeCloseTo(read(sound, 'dead-head', 'psi'), 9);
    expect(read(blocked, 'flow-at-pressure', 'gpm')).toBeLessThan(
      0.6 * read(sound, 'flow-at-pressure', 'gpm'),
    );
  });

  test.each([
    { name: 'air lock', edits: [{ edit: 'no-lift', shaft: 'dry' }], load: 0.35 },
    { name: 'sheared coupling', edits: [{ edit: 'no-lift', shaft: 'free' }], load: 0 },
  ] as const)('$name: runs, nothing comes, the load tells which', ({ edits, load }) => {
    const fault = faulted(edits);
    expect(read(fault, 'dead-head', 'psi')).toBe(0);
    expect(said(stateOf(fault), 'gauge-zone')).toBe('zero');
    expect(said(stateOf(fault), 'discharge')).toBe('none');
    expect(stateOf(fault).load()).toBeCloseTo(load, 9);
  });

  test('a parted pipe loads the pump as open discharge does', () => {
    const parted = faulted([{ edit: 'parted' }]);
    expect(read(parted, 'dead-head', 'psi')).toBe(0);
    expect(stateOf(parted).load()).toBeGreaterThan(0.9);
    expect(said(stateOf(parted), 'first-draw')).toBe('air');
  });

  test('a jammed check valve dead-heads the pump', () => {
    const jammed = faulted([{ edit: 'close', at: 'check' }]);
    expect(said(stateOf(jammed), 'discharge')).toBe('none');
    expect(stateOf(jammed).load()).toBeCloseTo(0.6, 9);
  });
});

describe('leaks', () => {
  const riser = faulted([{ edit: 'leak', at: 'riser', depth: of(60, 'ft') }], of(2, 'gpm'));
  const house = faulted([{ edit: 'leak', at: 'house' }], of(1, 'gpm'));
  const check = faulted([{ edit: 'leak', at: 'check' }], of(1, 'gpm'));

  test('a hole lets out at cut-out what it was given', () => {
    const tank = stateOf(faulted([{ edit: 'leak', at: 'tank' }], of(1, 'gpm')));
    // 44 gal · 42.7 / 64.7² = 0.449 gal/psi: a gallon a minute is 2.2 psi/min at first
    const rate = number(tank, 'leak-down-isolated', { unit: 'psi/min', moment: { seconds: 1 } });
    expect(rate).toBeCloseTo(1 / 0.449, 1);
  });

  test('in the drop pipe: falls isolated, dead-head low, the first draw brings air once it was off', () => {
    expect(read(riser, 'leak-down-isolated', 'psi/min')).toBeGreaterThan(2);
    expect(read(riser, 'dead-head', 'psi')).toBeLessThan(read(sound, 'dead-head', 'psi'));
    expect(said(stateOf(riser), 'first-draw', { off: true, seconds: of(8, 'h') })).toBe('air');
    expect(said(stateOf(riser), 'first-draw', { off: true, seconds: 60 })).toBe('none');
  });

  test('in the house: falls only with the house valve open', () => {
    expect(read(house, 'leak-down-isolated', 'psi/min')).toBe(0);
    expect(read(house, 'leak-down-open', 'psi/min')).toBeGreaterThan(1);
  });

  test('a passing check valve: falls, and the running pump is as good as new', () => {
    expect(read(check, 'leak-down-isolated', 'psi/min')).toBeGreaterThan(1);
    expect(read(check, 'flow-at-pressure', 'gpm')).toBeCloseTo(read(sound, 'flow-at-pressure', 'gpm'), 9);
  });

  test('a check valve above ground hides the well side, and lets the column run away unseen', () => {
    const hidden = { ...riser, input: { ...usual, checkAboveGround: true } };
    expect(read(hidden, 'leak-down-isolated', 'psi/min')).toBe(0);
    expect(said(stateOf(hidden), 'first-draw')).toBe('air');
  });

  test('a big hole keeps the pressure from cut-out with a tap open', () => {
    const big = faulted([{ edit: 'leak', at: 'riser', depth: of(60, 'ft') }], of(8, 'gpm'));
    expect(read(big, 'gauge-running', 'psi')).toBeLessThan(50);
    expect(kind(big, 'cycle-on')).toBe('never');
  });

  test('a leak in the drop pipe names its depth', () => {
    expect(() => stateOf(faulted([{ edit: 'leak', at: 'riser' }], 1e-4))).toThrow(/name a depth/);
  });
});

describe('tank', () => {
  test('a torn bladder: water at the air valve, a twentieth of the drawdown and of every time', () => {
    const torn = faulted([{ edit: 'air' }], 0.05);
    expect(said(stateOf(torn), 'air-valve')).toBe('water');
    expect(read(torn, 'drawdown', 'gal') / read(sound, 'drawdown', 'gal')).toBeCloseTo(0.05, 6);
    expect(read(torn, 'cycle-off', 's') / read(sound, 'cycle-off', 's')).toBeCloseTo(0.05, 6);
    expect(read(torn, 'fill-time', 's')).toBeLessThan(5);
  });

  test('lost air: less drawdown, and the drained reading says so', () => {
    const low = faulted([{ edit: 'precharge' }], psi(-14));
    expect(read(low, 'precharge', 'psi')).toBeCloseTo(14, 6);
    expect(read(low, 'drawdown', 'gal')).toBeLessThan(0.75 * read(sound, 'drawdown', 'gal'));
  });

  test('too much air: the gauge plunges before the switch calls, and a cut-off stays open', () => {
    const high = faulted([{ edit: 'precharge' }], psi(10));
    expect(read(high, 'cut-in', 'psi')).toBe(0);
    const withCutOff = { ...usual, switch: { ...usual.switch, cutOff: of(20, 'psi') } };
    expect(said(stateOf({ ...high, input: withCutOff }), 'gauge-zone')).toBe('zero');
    expect(said(stateOf({ input: withCutOff }), 'gauge-zone')).toBe('between');
  });

  test('shut off there is no cushion at all', () => {
    expect(read(faulted([{ edit: 'close', at: 'tank' }]), 'drawdown', 'gal')).toBe(0);
  });
});

describe('switch and gauge', () => {
  test('a tube closed high: silent on an empty tank; closed low: runs to the relief valve', () => {
    const high = faulted([{ edit: 'tube' }], psi(45));
    const low = faulted([{ edit: 'tube' }], psi(5));
    expect(said(stateOf(high), 'switch-tells')).toBe('satisfied');
    expect(said(stateOf(high), 'gauge-zone')).toBe('zero');
    expect(said(stateOf(low), 'gauge-zone')).toBe('above-cut-out');
    expect(read(low, 'plateau', 'psi')).toBeCloseTo(75, 6);
  });

  test('welded contacts run on to the relief valve too', () => {
    const drive = { turns: true, speed: 1, always: true, follows: true };
    expect(said(stateOf({ drive }), 'gauge-zone')).toBe('above-cut-out');
  });

  test('settings and gauge move what is seen', () => {
    const both = faulted([{ edit: 'setting', of: 'both' }], psi(10));
    expect(read(both, 'cut-in', 'psi')).toBeCloseTo(40, 9);
    expect(read(both, 'cut-out', 'psi')).toBeCloseTo(60, 9);
    const off = faulted([{ edit: 'gauge', shows: 'offset' }], psi(-8));
    expect(read(off, 'cut-out', 'psi')).toBeCloseTo(42, 9);
    expect(read(off, 'gauge-error', 'psi')).toBeCloseTo(-8, 9);
    const stuck = faulted([{ edit: 'gauge', shows: 'stuck' }], psi(33));
    expect(read(stuck, 'gauge-at-rest', 'psi')).toBeCloseTo(33, 9);
    expect(read(stuck, 'cut-in', 'psi')).toBeCloseTo(33, 9);
  });

  test('an edit that needs a severity says so', () => {
    expect(() => stateOf(faulted([{ edit: 'head' }]))).toThrow(/needs a severity/);
  });
});

describe('house', () => {
  test('a clogged filter: gauge normal, weak at the tap', () => {
    const clogged = faulted([{ edit: 'restrict' }], psi(400));
    expect(read(clogged, 'gauge-running', 'psi')).toBeCloseTo(50, 9);
    expect(read(clogged, 'tap-pressure', 'psi')).toBeLessThan(20);
    expect(read(clogged, 'filter-drop', 'psi')).toBeGreaterThan(30);
  });

  test('more use than the pump gives', () => {
    const guests = faulted([{ edit: 'demand' }], of(12, 'gpm'));
    expect(read(guests, 'plateau', 'psi')).toBeLessThan(30);
    expect(said(stateOf(guests), 'gauge-zone')).toBe('zero');
  });
});

describe('walks', () => {
  const atTank = (volume: number, more: Partial<WaterInput> = {}): WaterInput => ({
    ...usual,
    ...more,
    tank: { ...usual.tank, volume: of(volume, 'gal') },
  });

  test('clicks on and off: a drawdown of 1.1 gal at 2 gpm is 33 s off', () => {
    // 44 gal, 30/50: 13.0 gal and 390 s off when sound; 1.1 gal of 13.0 is 8.5 % of the air
    const draw = of(2, 'gpm');
    const off = (fault: Faulted) => number(stateOf(fault), 'cycle-off', { unit: 's', moment: { draw } });
    expect(off({ input: atTank(44) })).toBeCloseTo(390, -1);
    expect(off({ ...faulted([{ edit: 'air' }], 1.1 / 13), input: atTank(44) })).toBeCloseTo(33, 0);
  });

  test('an empty tank with 47 psi of air stands at 47 psi after the first drops', () => {
    const high = faulted([{ edit: 'precharge' }], psi(19));
    expect(read(high, 'precharge', 'psi')).toBeCloseTo(47, 6);
  });

  test('weak for weeks: 38 to 34 psi in a minute is 2.9 gpm out of the pipe', () => {
    // Hole sized so that it lets out 2.93 gpm at the mean of 36 psi: √(36 + x)/(√(50 + x)) of its flow at cut-out
    const depth = of(60, 'ft');
    const column = 60 / 2.31;
    const atCutOut = of(2.93, 'gpm') * Math.sqrt((50 + column) / (36 + column));
    const state = stateOf(faulted([{ edit: 'leak', at: 'riser', depth }], atCutOut));
    const rate = number(state, 'leak-down-isolated', { unit: 'psi/min', moment: { pressure: psi(38) } });
    expect(rate).toBeCloseTo(4, 1);
  });

  test('water for 25 minutes, then air: level, recovery and yield agree', () => {
    // Rest 110 ft, intake 260 ft, 6 in casing; 2.8 gpm at 141 ft of drawdown. About 10 gpm are pumped:
    // 1.47 gal/ft · 141 ft = 207 gal out of the casing in 24 min and what came in meanwhile.
    const well = {
      ...usual.well,
      depth: of(300, 'ft'),
      staticLevel: of(110, 'ft'),
      intake: of(260, 'ft'),
      specificCapacity: of(2.8 / 141, 'gpm/ft'),
    };
    const input = {
      ...usual,
      well,
      pump: { ...usual.pump, shutOffHead: of(600, 'ft'), classHead: of(420, 'ft') },
    };
    const state = stateOf({ input });
    const running = (minutes: number) => ({ seconds: of(minutes, 'min'), pressure: psi(40) });
    const level = number(state, 'pumping-level', { unit: 'ft', moment: { seconds: of(24, 'min') } });
    expect(level).toBeGreaterThan(220);
    expect(level).toBeLessThanOrEqual(260);
    const rising = number(state, 'recovery-rate', { unit: 'ft', moment: { seconds: of(24, 'min') } });
    // (level − 110) · 0.01986 gpm/ft ÷ 1.47 gal/ft, a minute
    expect(rising * 60).toBeCloseTo(((level - 110) * (2.8 / 141)) / 1.469, 1);
    expect(said(state, 'discharge', running(2))).toBe('clear');
    expect(said(state, 'discharge', running(60))).toBe('air');
    expect(number(state, 'flow-at-pressure', { unit: 'gpm', moment: { pressure: psi(40) } })).toBeCloseTo(
      (150 * 2.8) / 141,
      1,
    );
    expect(
      setUpWater(input)
        .state({ edits: [], severity: undefined })
        .load({ seconds: of(24, 'h') }),
    ).toBeLessThan(0.6);
  });
});
