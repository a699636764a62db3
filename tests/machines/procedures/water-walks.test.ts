import { describe, expect, test } from 'vitest';
import { PROCEDURES } from '../../../machines/procedures/all.ts';
import { proposals, standings } from '../../../machines/procedures/fold.ts';
import { given, NO_BOX, NO_CONTACTOR, NO_FITTINGS, POTENTIAL_RELAY, THREE_WIRE } from './support/answers.ts';

/** Calls whose fault lies in the water, told in the order in which a good technician would take them. */
const TWO_LEAD = [...NO_BOX, ...NO_CONTACTOR, ...NO_FITTINGS];
const THREE_LEAD = [...THREE_WIRE, ...NO_CONTACTOR, ...POTENTIAL_RELAY, ...NO_FITTINGS];

type Said = Readonly<Record<string, string>>;

const claimed = (said: Said, lacking: readonly string[]): string[] =>
  standings(PROCEDURES, given(said, lacking)).flatMap(({ place }) => place.ends?.claims ?? []);

const asked = (said: Said, lacking: readonly string[]): string[] =>
  proposals(PROCEDURES, given(said, lacking)).map((one) => one.check);

describe('the tank', () => {
  const clicks = { 'what-is-seen': 'runs-badly', cycling: 'rapid' };

  test('clicks on and off: one press of the air valve, with no cover opened', () => {
    expect(asked(clicks, TWO_LEAD)).toContain('air-valve');
    const torn = { ...clicks, 'air-valve': 'water', 'look-tank': 'heavy' };
    expect(claimed(torn, TWO_LEAD)).toEqual(['tank-waterlogged']);
  });

  test('air at the valve: the tank is drained before its charge is blamed', () => {
    const looks = {
      ...clicks,
      'air-valve': 'air',
      'look-tank': 'light',
      'look-valves': 'all-open',
      'contact-chatter': 'once',
      'fill-time': 'low',
    };
    expect(claimed(looks, TWO_LEAD)).toEqual([]);
    expect(asked(looks, TWO_LEAD)).toContain('precharge');
    expect(claimed({ ...looks, precharge: 'low' }, TWO_LEAD)).toEqual(['tank-precharge-low']);
    const right = { ...looks, precharge: 'as-expected', 'drawdown-volume': 'low' };
    expect(claimed({ ...right, 'cut-out-pressure': 'as-expected' }, TWO_LEAD)).toContain('tank-port-plugged');
    const narrow = {
      ...right,
      'gauge-compare': 'agree',
      'pump-stops': 'stops',
      'cut-in-pressure': 'as-expected',
      'cut-out-pressure': 'low',
    };
    expect(claimed(narrow, TWO_LEAD)).toEqual(['switch-differential-lost', 'switch-misadjusted']);
  });
});

describe('weak for weeks, never stops', () => {
  const weak = {
    'what-is-seen': 'runs-badly',
    'motor-sound': 'runs',
    'water-looks': 'clear',
    'plateau-pressure': 'low',
  };

  test('the house is shut off before anybody blames the well', () => {
    expect(asked(weak, THREE_LEAD)).toContain('isolate-house');
    const house = {
      ...weak,
      'isolate-house': 'fills',
      'water-anywhere': 'weak',
      'gauge-zone': 'below-cut-in',
    };
    expect(asked(house, THREE_LEAD)).toContain('leaks-indoors');
    const watering = { ...house, 'leaks-indoors': 'hose-or-irrigation', 'house-flow': 'above' };
    expect(claimed(watering, THREE_LEAD)).toEqual(['demand-too-great']);
  });

  test('the gauge falls with the pump off: a hole, told by the ear, and no pump end is sold', () => {
    const falls = {
      ...weak,
      'isolate-house': 'still-low',
      'amps-line': 'as-expected',
      'leak-down-isolated': 'high',
      'starts-unused': 'yes',
      'look-tank': 'light',
      'relief-valve': 'dry',
      'look-valves': 'all-open',
    };
    expect(asked(falls, THREE_LEAD)).toContain('wet-ground');
    expect(claimed(falls, THREE_LEAD)).toEqual([]);
    const heard = { ...falls, 'wet-ground': 'no', 'listen-casing': 'steady' };
    const inTheWell = claimed({ ...heard, 'listen-after-stop': 'water-falls' }, THREE_LEAD);
    expect(inTheWell).toContain('drop-pipe-hole');
    expect(inTheWell).not.toContain('pump-worn');
  });

  test('a check valve above ground hides the well side: a steady gauge then proves nothing', () => {
    const blind = {
      ...weak,
      'starts-unused': 'yes',
      'look-tank': 'light',
      'relief-valve': 'dry',
      'look-valves': 'check-above-ground',
      'leak-down-isolated': 'as-expected',
      'leak-down-open': 'as-expected',
    };
    expect(asked(blind, THREE_LEAD)).toContain('listen-casing');
    const quiet = { ...blind, 'listen-casing': 'steady', 'listen-after-stop': 'silent' };
    expect(claimed(quiet, THREE_LEAD)).toEqual([]);
    const heard = { ...quiet, 'listen-after-stop': 'water-falls' };
    expect(claimed(heard, THREE_LEAD)).toContain('check-valve-leaks');
  });

  test('a worn pump is claimed last: well, leak and leads first, and two flows', () => {
    const pump = {
      ...weak,
      'isolate-house': 'still-low',
      'amps-line': 'as-expected',
      'leak-down-isolated': 'as-expected',
      'first-bucket': 'clear',
      'amps-after-running': 'as-expected',
    };
    expect(asked(pump, THREE_LEAD)).toContain('ohms-yellow-black');
    const leads = { ...pump, 'ohms-yellow-black': 'as-expected', 'ohms-yellow-red': 'as-expected' };
    expect(asked(leads, THREE_LEAD)).toContain('flow-at-low-pressure');
    const flow = { ...leads, 'flow-at-low-pressure': 'low' };
    expect(asked(flow, THREE_LEAD)).toContain('dead-head-pressure');
    const notShut = { ...flow, 'dead-head-pressure': 'not-taken', 'watts-line': 'as-expected' };
    const level = { ...notShut, 'gauge-zone': 'between' };
    expect(claimed(level, THREE_LEAD)).not.toContain('pump-worn');
    expect(asked(level, THREE_LEAD)).toContain('static-level');
    expect(claimed({ ...level, 'static-level': 'as-expected' }, THREE_LEAD)).toContain('pump-worn');
    expect(claimed({ ...level, 'static-level': 'high' }, THREE_LEAD)).toContain('well-level-low');
    const intake = { ...flow, 'dead-head-pressure': 'as-expected', 'look-freeze': 'above-freezing' };
    expect(claimed({ ...intake, 'pumping-level': 'as-expected' }, THREE_LEAD)).toContain(
      'pump-intake-blocked',
    );
  });
});

describe('the well', () => {
  const air = { 'what-is-seen': 'runs-badly', 'first-bucket': 'air', 'listen-casing': 'steady' };

  test('water, then air, then none: level at rest, level running, recovery; no pull', () => {
    expect(asked(air, THREE_LEAD)).toContain('static-level');
    const running = { ...air, 'static-level': 'as-expected', 'pumping-level': 'high' };
    expect(asked(running, THREE_LEAD)).toContain('recovery-rate');
    const slow = claimed({ ...running, 'recovery-rate': 'low' }, THREE_LEAD);
    expect(slow).toEqual(['well-yield-low', 'well-screen-clogged']);
  });

  test('an air line saves opening the well', () => {
    const withLine = THREE_LEAD.filter((check) => check !== 'airline-level');
    expect(asked(air, withLine)).toContain('airline-level');
    const low = { ...air, 'airline-level': 'high', 'neighbours-water': 'same-trouble' };
    expect(claimed(low, withLine)).toContain('well-level-low');
  });

  test('clear water and steady amps prove a level without opening anything', () => {
    const clear = {
      'what-is-seen': 'runs-badly',
      'first-bucket': 'clear',
      'amps-after-running': 'as-expected',
    };
    expect(asked(clear, THREE_LEAD)).toContain('leak-down-isolated');
    expect(asked(clear, THREE_LEAD)).not.toContain('static-level');
  });

  test('without a level the pump end is not asked about', () => {
    const untold = { ...air, 'static-level': 'not-taken' };
    expect(asked(untold, THREE_LEAD)).not.toContain('leak-down-isolated');
    expect(claimed(untold, THREE_LEAD)).toEqual([]);
  });
});

describe('pressure on the gauge and none at the taps', () => {
  const dry = { 'what-is-seen': 'silent-with-pressure', 'water-anywhere': 'none', 'gauge-zone': 'between' };

  test('a valve, ice, a filter: what stands between', () => {
    expect(asked(dry, TWO_LEAD)).toContain('look-valves');
    expect(claimed({ ...dry, 'look-valves': 'house-valve-shut' }, TWO_LEAD)).toContain('house-valve-shut');
    const open = { ...dry, 'look-valves': 'all-open' };
    expect(claimed({ ...open, 'look-freeze': 'frozen' }, TWO_LEAD)).toContain('line-frozen');
    const thawed = { ...open, 'look-freeze': 'above-freezing' };
    expect(claimed({ ...thawed, 'filter-age': 'overdue' }, TWO_LEAD)).toEqual(['filter-clogged']);
    expect(claimed({ ...thawed, 'filter-age': 'none' }, TWO_LEAD)).toContain('backflow-valve-stuck');
  });
});

describe('drive or protector', () => {
  const PROTECTED = TWO_LEAD.filter((check) => check !== 'device-bypass');
  const stopped = {
    'what-is-seen': 'silent-without-pressure',
    'device-display': 'dry-run',
    'device-settings': 'right',
  };

  test('a dry-run stop is believed until the level is known, and is bridged only then', () => {
    expect(asked(stopped, PROTECTED)).toContain('static-level');
    expect(asked(stopped, PROTECTED)).not.toContain('device-bypass');
    expect(claimed({ ...stopped, 'static-level': 'high' }, PROTECTED)).toEqual(['protector-dry-trip']);
    const wet = { ...stopped, 'static-level': 'as-expected' };
    expect(asked(wet, PROTECTED)).toContain('device-bypass');
    expect(claimed({ ...wet, 'device-bypass': 'runs-normally' }, PROTECTED)).toContain(
      'protector-false-trip',
    );
  });
});
