import { describe, expect, test } from 'vitest';
import { setUp } from '../../src/plant/plant.ts';
import type { Edit } from '../../src/schema/fault.ts';
import { faulted, IDLE, LIFTED, number, OFF, RUN, reading, said } from './support/ask.ts';
import {
  elements,
  input,
  large,
  plugApart,
  plugApartPotential,
  type Setting,
  small,
  spreads,
  twoWire,
} from './support/inputs.ts';
import { service } from './support/pieces.ts';

/** Powered readings, what is heard and seen, and the plant's manners. */
const open = (part: string): Edit[] => [{ edit: 'open', part }];
type SeenRow = [string, Setting, Edit[], seen: string, sound: string, lever: string, trip: string];
const amps = (part: string) => ({ clamp: [part] });

describe('a healthy motor shows its printed row', () => {
  test('at full load and rated volts, lead by lead', () => {
    const state = faulted({ ...large, volts: 240, load: 1 });
    expect(number(state, 'amps', amps('box.lead-yellow'), RUN)).toBeCloseTo(14, 0);
    expect(number(state, 'amps', amps('box.lead-black'), RUN)).toBeCloseTo(11.2, 0);
    expect(number(state, 'amps', amps('box.lead-red'), RUN)).toBeCloseTo(6.1, 0);
    expect(number(state, 'amps', amps('panel.disconnect-1'), RUN)).toBeCloseTo(14, 0);
  });

  test('a stiff supply at rated volts and no cable gives the printed digits', () => {
    const stiff = { ...elements, source: { ...elements.source!, resistance: elements.wire!.resistance } };
    for (const motor of ['1.5HP', '3HP', '0.75HP'] as const) {
      const setting = motor === '0.75HP' ? plugApart : motor === '3HP' ? large : small;
      const state = faulted({ ...setting, motor, cableOhms: 0.001, volts: 230.2, load: 1, elements: stiff });
      const printed = { '1.5HP': [10, 9.9], '3HP': [14, 11.2], '0.75HP': [6.8, 6.8] }[motor];
      const yellow = number(state, 'amps', amps('box.lead-yellow'), RUN);
      const black = number(state, 'amps', amps('box.lead-black'), RUN);
      expect(Math.abs(yellow / printed[0]! - 1)).toBeLessThan(0.01);
      expect(Math.abs(black / printed[1]! - 1)).toBeLessThan(0.01);
    }
  });

  test('a clamp around both line conductors sees only what leaks', () => {
    const both = { clamp: ['switch.wire-1', 'switch.wire-2'] };
    expect(number(faulted(small), 'amps', both, RUN)).toBeLessThan(1e-4);
    const leak = faulted(small, [{ edit: 'leak', nodes: ['motor.B', 'motor.G'] }], { severity: 500 });
    expect(number(leak, 'amps', both, RUN)).toBeCloseTo(0.233, 3);
  });
});

describe('volts', () => {
  test('a dead conductor reads near nothing through a low-impedance meter', () => {
    const state = faulted(small, open('panel.breaker-1'));
    expect(number(state, 'volts', { between: ['panel.T1', 'panel.G'] }, IDLE)).toBeLessThan(0.1);
    expect(number(state, 'volts', { between: ['panel.T2', 'panel.G'] }, IDLE)).toBeCloseTo(120, 1);
  });

  test('a lost leg still shows the other one through the motor, and nothing between the two', () => {
    const state = faulted(small, open('panel.breaker-1'));
    expect(number(state, 'volts', { between: ['panel.T1', 'panel.G'] }, RUN)).toBeGreaterThan(110);
    expect(number(state, 'volts', { between: ['panel.T1', 'panel.T2'] }, RUN)).toBeLessThan(5);
  });

  test('an open pole carries the whole voltage, a resistive one its drop', () => {
    const apart = faulted(small, [{ edit: 'stick', part: 'switch.pole-1', state: 'apart' }]);
    expect(number(apart, 'volts', { across: 'switch.pole-1' }, RUN)).toBeGreaterThan(235);
    const poor = faulted(small, [{ edit: 'series', part: 'switch.pole-1' }], { severity: 0.3 });
    const drop = number(poor, 'volts', { between: ['switch.L1', 'switch.T1'] }, RUN);
    expect(drop).toBeGreaterThan(2.5);
    expect(drop).toBeLessThan(3.5);
  });

  test('not called, the load side is dead; unpowered, everything is', () => {
    const load = { between: ['switch.T1', 'switch.T2'] as [string, string] };
    expect(number(faulted(small), 'volts', load, IDLE)).toBeLessThan(0.1);
    expect(number(faulted(small), 'volts', load, RUN)).toBeGreaterThan(230);
    expect(number(faulted(small), 'volts', load, OFF)).toBe(0);
  });

  test('the control loop, link by link', () => {
    const loop = (state = faulted(large)) =>
      ['switch.L1', 'switch.T1', 'box.SW'].map(
        (node) => number(state, 'volts', { between: [node, 'box.L1'] }, RUN) > 200,
      );
    expect(loop()).toEqual([true, true, true]);
    expect(loop(faulted(large, open('switch.wire-1')))).toEqual([false, false, false]);
    expect(loop(faulted(large, [{ edit: 'stick', part: 'switch.pole-1', state: 'apart' }]))).toEqual([
      true,
      false,
      false,
    ]);
    expect(loop(faulted(large, open('switch.wire-2')))).toEqual([true, true, false]);
    expect(loop(faulted(large, open('box.contactor-coil')))).toEqual([true, true, true]);
  });

  test('two legs in phase are alive to ground and nothing to each other', () => {
    const state = faulted(small, [{ edit: 'supply', leg: 'L2' }], { severity: -1 });
    expect(number(state, 'volts', { between: ['service.L1', 'service.L2'] }, IDLE)).toBeLessThan(0.1);
    expect(number(state, 'volts', { between: ['service.L2', 'service.N'] }, IDLE)).toBeCloseTo(120, 1);
  });
});

describe('amps at start', () => {
  test('a good start draws the red lead in, a dead start capacitor does not', () => {
    expect(number(faulted(small), 'amps-at-start', amps('box.lead-red'), RUN)).toBeGreaterThan(8);
    expect(
      number(faulted(small, open('box.start-capacitor')), 'amps-at-start', amps('box.lead-red'), RUN),
    ).toBeLessThan(1);
  });

  test('a two-wire motor draws its printed locked-rotor amps from a stiff supply', () => {
    const stiff = { ...elements, source: { ...elements.source!, resistance: elements.wire!.resistance } };
    const state = faulted({ ...twoWire, cableOhms: 0.001, volts: 230, elements: stiff });
    expect(Math.abs(number(state, 'amps-at-start', amps('run.one'), RUN) / 40.7 - 1)).toBeLessThan(0.03);
    const failed = faulted(
      { ...twoWire, cableOhms: 0.001, volts: 230, elements: stiff },
      open('motor.start-switch'),
    );
    expect(number(failed, 'amps-at-start', amps('run.one'), RUN)).toBeCloseTo(32, 0);
  });
});

describe('a current-sensing relay is fired by the main current', () => {
  test.each(['run.yellow', 'run.black', 'motor.main'])('%s open: silence and no current', (part) => {
    const state = faulted(plugApart, open(part));
    expect(number(state, 'amps', amps('box.lead-yellow'), RUN)).toBeLessThan(0.01);
    expect(said(state, 'sound')).toBe('silence');
    expect(said(state, 'what-is-seen')).toBe('silent-without-pressure');
  });

  test.each(['run.red', 'motor.start', 'box.sense-switch', 'box.start-capacitor'])(
    '%s open: it hums',
    (part) => {
      const state = faulted(plugApart, open(part));
      expect(state.mode.starts).toBe(false);
      expect(number(state, 'amps', amps('box.lead-yellow'), RUN)).toBeGreaterThan(25);
      expect(said(state, 'what-is-seen')).toBe('hums-or-trips');
    },
  );

  test('with a potential relay the same open main hums on the start branch alone', () => {
    const state = faulted(plugApartPotential, open('motor.main'));
    expect(number(state, 'amps', amps('box.lead-red'), RUN)).toBeCloseTo(8.1, 0);
  });
});

describe('what is seen and heard', () => {
  const locked: Edit[] = [{ edit: 'shaft', state: 'locked' }];
  test.each([
    ['sound', small, [], 'works-now', 'runs', 'on', 'holds'],
    ['rotor locked', small, locked, 'hums-or-trips', 'hum-then-quiet', 'on', 'seconds'],
    [
      'breaker open on both poles',
      small,
      [...open('panel.breaker-1'), ...open('panel.breaker-2')],
      'silent-without-pressure',
      'silence',
      'middle',
      'holds',
    ],
    [
      'breaker open on one pole',
      small,
      open('panel.breaker-1'),
      'silent-without-pressure',
      'silence',
      'on',
      'holds',
    ],
    [
      'contact welded',
      small,
      [{ edit: 'stick', part: 'box.relay-contact', state: 'made' }],
      'hums-or-trips',
      'runs',
      'on',
      'seconds',
    ],
    ['shaft free', small, [{ edit: 'shaft', state: 'free' }], 'runs-without-water', 'runs', 'on', 'holds'],
    [
      'leads exchanged',
      small,
      [{ edit: 'exchange', parts: ['box.lead-yellow', 'box.lead-black'] }],
      'hums-or-trips',
      'hum-then-quiet',
      'on',
      'seconds',
    ],
    [
      'switch told nothing',
      small,
      [{ edit: 'command', calling: false }],
      'silent-without-pressure',
      'silence',
      'on',
      'holds',
    ],
    [
      'contactor coil open',
      large,
      open('box.contactor-coil'),
      'silent-without-pressure',
      'silence',
      'on',
      'holds',
    ],
    [
      'overload open',
      large,
      open('box.main-overload'),
      'silent-without-pressure',
      'click-only',
      'on',
      'holds',
    ],
  ] satisfies SeenRow[])('%s', (...row) => {
    const [, setting, edits, seen, sound, lever, trip] = row;
    const state = faulted(setting, edits);
    expect(said(state, 'what-is-seen')).toBe(seen);
    expect(said(state, 'sound')).toBe(sound);
    expect(said(state, 'breaker-lever')).toBe(lever);
    expect(said(state, 'trip-class')).toBe(trip);
  });

  test('a dead short trips the breaker at once', () => {
    const state = faulted(small, [{ edit: 'leak', nodes: ['box.L1', 'box.G'] }], { severity: 0.3 });
    expect(said(state, 'trip-class')).toBe('at-once');
    expect(said(state, 'breaker-lever')).toBe('middle');
  });

  test.each([
    ['sound', [], undefined, 'in'],
    ['coil open', open('box.contactor-coil'), undefined, 'out'],
    ['loop wire open', open('switch.wire-2'), undefined, 'out'],
    [
      'jammed',
      [
        { edit: 'stick', part: 'box.pole-1', state: 'apart' },
        { edit: 'stick', part: 'box.pole-2', state: 'apart' },
      ],
      undefined,
      'buzzing',
    ],
    ['one pole burnt', [{ edit: 'stick', part: 'box.pole-1', state: 'apart' }], undefined, 'in'],
    ['supply too low to pull in', [{ edit: 'supply', leg: 'both' }], 0.7, 'buzzing'],
  ] satisfies [string, Edit[], number | undefined, string][])('contactor: %s', (...row) => {
    const [, edits, severity, position] = row;
    const state = faulted(large, edits, severity === undefined ? {} : { severity });
    expect(said(state, 'contactor-position')).toBe(position);
  });

  test('where there is no contactor there is nothing to look at', () => {
    const got = faulted(small).read({
      at: { look: 'box' },
      predict: { rule: 'contactor-position' },
      site: RUN,
    });
    expect(got).toEqual({ kind: 'none', reason: 'no-such-node' });
  });

  test('contacts of the switch follow the call', () => {
    expect(said(faulted(small), 'contacts-made', RUN)).toBe('made');
    expect(said(faulted(small), 'contacts-made', IDLE)).toBe('apart');
  });
});

describe('capacitors on the meter', () => {
  const at = { across: 'box.start-capacitor' };
  test('label, weak, open, shorted', () => {
    expect(number(faulted(small), 'capacitance', at, OFF)).toBeCloseTo(115.5e-6, 9);
    const weak = faulted(small, [{ edit: 'scale', part: 'box.start-capacitor' }], { severity: 0.5 });
    expect(number(weak, 'capacitance', at, OFF)).toBeCloseTo(57.75e-6, 9);
    expect(number(faulted(small, open('box.start-capacitor')), 'capacitance', at, OFF)).toBe(0);
    expect(
      number(faulted(small, [{ edit: 'short', part: 'box.start-capacitor' }]), 'capacitance', at, OFF),
    ).toBe(1);
  });
});

describe('modes and margins', () => {
  test('a forced mode that is the natural one changes nothing', () => {
    for (const setting of [small, large, plugApart, twoWire]) {
      const natural = faulted(setting);
      const forced = faulted(setting, [], { forced: natural.mode });
      expect(natural.margins.start).toBeGreaterThan(1);
      expect(natural.margins.release).toBeGreaterThan(1);
      const part = setting === twoWire ? 'run.one' : 'run.yellow';
      expect(number(forced, 'amps', amps(part), RUN)).toBe(number(natural, 'amps', amps(part), RUN));
    }
  });

  test('forced to stall, to hold its start branch, to run', () => {
    const red = (forced: { starts: boolean; releases: boolean }, edits: Edit[] = []) =>
      number(faulted(small, edits, { forced }), 'amps', amps('run.red'), RUN);
    expect(red({ starts: false, releases: false })).toBeGreaterThan(9);
    expect(red({ starts: true, releases: false })).toBeGreaterThan(12);
    expect(red({ starts: true, releases: true })).toBeLessThan(2);
    expect(red({ starts: true, releases: true }, open('box.start-capacitor'))).toBeLessThan(2);
  });

  test('an open start capacitor is near the edge, a start-only motor far beyond it', () => {
    expect(Math.abs(faulted(small, open('box.start-capacitor')).margins.start)).toBeLessThan(0.5);
    expect(faulted(plugApart, open('box.start-capacitor')).margins.start).toBeLessThan(-10);
  });
});

describe('answers that are no numbers', () => {
  test('unknown nodes, questions of others, powered ohms', () => {
    const state = faulted(small);
    expect(reading(state, 'volts', { between: ['box.L1', 'box.SW'] }, RUN)).toEqual({
      kind: 'none',
      reason: 'no-such-node',
    });
    expect(reading(state, 'amps', { clamp: ['box.pole-1'] }, RUN)).toEqual({
      kind: 'none',
      reason: 'no-such-node',
    });
    expect(reading(state, 'ohms', { between: ['lead.Y', 'lead.B'] }, RUN)).toEqual({
      kind: 'none',
      reason: 'not-a-plant-reading',
    });
    expect(state.read({ at: { look: 'tank' }, predict: { signs: true }, site: RUN })).toEqual({
      kind: 'none',
      reason: 'not-a-plant-reading',
    });
  });

  test('a row without a model answers ohms and volts, not amps', () => {
    const state = faulted({ ...small, withoutModel: true });
    expect(reading(state, 'amps', amps('run.yellow'), RUN)).toEqual({ kind: 'none', reason: 'no-model' });
    expect(number(state, 'volts', { between: ['box.L1', 'box.L2'] }, RUN)).toBeGreaterThan(235);
    expect(number(state, 'ohms', { between: ['lead.Y', 'lead.B'] }, LIFTED)).toBeGreaterThan(0);
  });
});

describe('mistakes of a catalog stop the plant with their names', () => {
  const plant = setUp(input(small), spreads);
  test.each([
    [[{ edit: 'open', part: 'box.pole-1' }], undefined, /no part box\.pole-1/],
    [[{ edit: 'leak', nodes: ['box.B', 'box.SW'] }], 5, /no node box\.SW/],
    [[{ edit: 'series', part: 'run.red' }], undefined, /needs a severity/],
  ] as [Edit[], number | undefined, RegExp][])('%j', (edits, severity, message) => {
    expect(() => plant.state({ edits, severity }, {})).toThrow(message);
  });

  test('no source, a part twice, an element that is missing', () => {
    const good = input(small);
    expect(() => setUp({ ...good, pieces: good.pieces.slice(1) }, spreads)).toThrow(/no source/);
    expect(() => setUp({ ...good, pieces: [...good.pieces, service] }, spreads)).toThrow(/occurs twice/);
    const { bleed: _bleed, ...rest } = elements;
    expect(() =>
      setUp({ ...good, elements: rest }, spreads).state({ edits: [], severity: undefined }, {}),
    ).toThrow(/no element bleed/);
  });
});
