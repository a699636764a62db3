import { describe, expect, test } from 'vitest';
import { PROCEDURES } from '../../../machines/procedures/all.ts';
import type { Ending } from '../../../machines/procedures/ask.ts';
import { foldProcedure, passingOver, proposals, standings } from '../../../machines/procedures/fold.ts';
import { motorAndCable } from '../../../machines/procedures/motor-and-cable.machine.ts';
import { pressureSwitch } from '../../../machines/procedures/pressure-switch.machine.ts';
import { supply } from '../../../machines/procedures/supply.machine.ts';
import { switchDead } from '../../../machines/procedures/switch-dead.machine.ts';
import { wellHead } from '../../../machines/procedures/well-head.machine.ts';
import {
  given,
  NO_BOX,
  NO_CONTACTOR,
  NO_FITTINGS,
  POTENTIAL_RELAY,
  SENSING_RELAY,
  SWITCH_IN_LOOP,
  THREE_WIRE,
} from './support/answers.ts';

/** What the trees that have begun end with. */
function endings(answers: ReturnType<typeof given>): Ending[] {
  return standings(PROCEDURES, answers).flatMap(({ place }) => place.ends ?? []);
}

const claimed = (answers: ReturnType<typeof given>): string[] =>
  endings(answers).flatMap((ending) => ending.claims ?? []);

const asked = (answers: ReturnType<typeof given>): string[] =>
  proposals(PROCEDURES, answers).map((one) => one.check);

describe('calls as a good technician would take them', () => {
  test('silent, one switch pole open: the dead pair with both loads alive is no supply', () => {
    const lacking = [...NO_BOX, ...NO_CONTACTOR];
    const seen = { 'what-is-seen': 'silent-without-pressure', 'breaker-lever': 'on', 'gauge-zone': 'zero' };
    expect(asked(given(seen, lacking))).toContain('volts-switch-line');
    const pair = { ...seen, 'volts-switch-line': 'as-expected', 'volts-switch-load-pair': 'none' };
    expect(asked(given(pair, lacking))).toContain('volts-switch-load-1');
    expect(claimed(given(pair, lacking))).toEqual([]);
    const bothAlive = { ...pair, 'volts-switch-load-1': 'as-expected', 'volts-switch-load-2': 'as-expected' };
    expect(claimed(given(bothAlive, lacking))).toEqual(['switch-pole-open']);
    const bothDead = { ...pair, 'volts-switch-load-1': 'none', 'volts-switch-load-2': 'none' };
    expect(claimed(given(bothDead, lacking))).toEqual([]);
    expect(asked(given(bothDead, lacking))).toContain('look-switch');
  });

  test('silent after an outage: coil, then the loop from the far end, then the cut-off lever', () => {
    const lacking = [...THREE_WIRE, ...SWITCH_IN_LOOP, 'lid-swap'];
    const coil = {
      'what-is-seen': 'silent-without-pressure',
      'gauge-zone': 'zero',
      'breaker-lever': 'on',
      'house-power': 'all-works',
      'contactor-position': 'out',
      'volts-coil': 'none',
    };
    expect(asked(given(coil, lacking))).toContain('volts-loop-switched');
    const halved = {
      ...coil,
      'volts-loop-switched': 'none',
      'volts-loop-feed': 'as-expected',
      'volts-pole-1': 'high',
    };
    expect(endings(given(halved, lacking))).toContainEqual({ handsOver: 'pressure-switch' });
    expect(asked(given(halved, lacking))).toContain('look-switch');
    expect(claimed(given({ ...halved, 'look-switch': 'cut-off-lever-open' }, lacking))).toEqual([
      'switch-cut-off-open',
    ]);
  });

  test('a coil is blamed only when it is fed', () => {
    const lacking = [...THREE_WIRE, ...SWITCH_IN_LOOP];
    const out = { 'what-is-seen': 'silent-without-pressure', 'contactor-position': 'out' };
    const open = { 'ohms-contactor-coil': 'open' };
    expect(claimed(given({ ...out, ...open, 'volts-coil': 'none' }, lacking))).not.toContain(
      'contactor-coil-open',
    );
    expect(claimed(given({ ...out, ...open, 'volts-coil': 'as-expected' }, lacking))).toContain(
      'contactor-coil-open',
    );
  });

  test('hums, goes quiet: windings before starting parts, and the lid proves what ohms cannot', () => {
    const lacking = [...THREE_WIRE, ...NO_CONTACTOR, ...SENSING_RELAY];
    const hums = { 'what-is-seen': 'hums-or-trips', 'breaker-lever': 'on', 'motor-sound': 'hum-then-quiet' };
    expect(asked(given(hums, lacking))).toContain('ohms-yellow-black');
    const windings = {
      ...hums,
      'ohms-yellow-black': 'as-expected',
      'ohms-yellow-red': 'as-expected',
      'ohms-black-red': 'as-expected',
      'insulation-system': 'as-expected',
      'look-box': 'clean',
    };
    expect(asked(given(windings, lacking))).toContain('start-capacitance');
    expect(claimed(given({ ...windings, 'start-capacitance': 'low' }, lacking))).toContain(
      'start-capacitor-open',
    );
    const parts = { ...windings, 'start-capacitance': 'as-expected', 'ohms-sense-switch': 'as-expected' };
    expect(asked(given(parts, lacking))).toContain('lid-swap');
    expect(claimed(given({ ...parts, 'lid-swap': 'starts' }, lacking))).toContain('sensing-relay-open');
    const bound = {
      ...parts,
      'lid-swap': 'does-not-start',
      'ohms-branch-1': 'as-expected',
      'ohms-branch-2': 'as-expected',
      'amps-start-line': 'as-expected',
      'start-length': 'never',
    };
    expect(claimed(given(bound, lacking))).toEqual([]);
    expect(asked(given(bound, lacking))).toContain('reverse-bump');
    expect(claimed(given({ ...bound, 'reverse-bump': 'stays-bound' }, lacking))).toContain('rotor-locked');
    expect(claimed(given({ ...bound, 'reverse-bump': 'frees' }, lacking))).toContain('pump-sand-locked');
  });

  test('a box without such a lid is proved by what red takes at the start', () => {
    const lacking = [...THREE_WIRE, ...NO_CONTACTOR, ...POTENTIAL_RELAY];
    const proved = {
      'what-is-seen': 'hums-or-trips',
      'ohms-yellow-black': 'as-expected',
      'ohms-yellow-red': 'as-expected',
      'insulation-system': 'as-expected',
      'look-box': 'clean',
      'start-capacitance': 'as-expected',
      'ohms-relay-contact': 'as-expected',
      'ohms-relay-coil': 'as-expected',
      'run-capacitance': 'as-expected',
      'motor-sound': 'hum-then-quiet',
      'ohms-branch-1': 'as-expected',
      'ohms-branch-2': 'as-expected',
      'amps-start-line': 'as-expected',
      'start-length': 'never',
      'reverse-bump': 'stays-bound',
    };
    expect(asked(given(proved, lacking))).toContain('amps-start-red');
    expect(claimed(given({ ...proved, 'amps-start-red': 'as-expected' }, lacking))).toContain('rotor-locked');
    expect(claimed(given({ ...proved, 'amps-start-red': 'none' }, lacking))).not.toContain('rotor-locked');
  });

  test('trips since the rain: no reset, insulation first, and the well head before any pull', () => {
    const lacking = [...THREE_WIRE, ...NO_CONTACTOR, ...POTENTIAL_RELAY];
    const tripped = { 'what-is-seen': 'hums-or-trips', 'breaker-lever': 'middle' };
    expect(asked(given(tripped, lacking))).toContain('insulation-system');
    expect(endings(given(tripped, lacking))).toEqual([{ handsOver: 'trips' }]);
    const leaks = {
      ...tripped,
      'insulation-system': 'low',
      'ohms-yellow-black': 'as-expected',
      'ohms-yellow-red': 'as-expected',
      'ohms-black-red': 'as-expected',
    };
    expect(asked(given(leaks, lacking))).toContain('look-wellhead');
    const wet = { ...leaks, 'look-wellhead': 'wet' };
    expect(asked(given(wet, lacking))).toContain('insulation-downhole');
    expect(claimed(given({ ...wet, 'insulation-downhole': 'as-expected' }, lacking))).toContain(
      'wellhead-splice-wet',
    );
    expect(claimed(given({ ...wet, 'insulation-downhole': 'low' }, lacking))).toContain('motor-grounded');
  });

  test('stops after minutes: the overload is read first, and not blamed for a dead run capacitor', () => {
    const lacking = [...THREE_WIRE, ...NO_CONTACTOR, ...POTENTIAL_RELAY];
    const stopped = { 'what-is-seen': 'runs-badly', 'breaker-lever': 'on' };
    expect(asked(given(stopped, lacking))).toContain('ohms-main-overload');
    const open = { ...stopped, 'ohms-main-overload': 'open', 'ohms-yellow-black': 'as-expected' };
    expect(asked(given(open, lacking))).toContain('run-capacitance');
    expect(claimed(given({ ...open, 'run-capacitance': 'low' }, lacking))).toContain('run-capacitor-open');
    const sound = {
      ...open,
      'run-capacitance': 'as-expected',
      'start-capacitance': 'as-expected',
      'ohms-relay-coil': 'as-expected',
      'box-temperature': 'cool',
    };
    expect(claimed(given(sound, lacking))).toContain('main-overload-tripped');
    expect(claimed(given({ ...sound, 'box-temperature': 'hot' }, lacking))).toContain('box-overheated');
  });

  test('full volts and no amps: an open lead is read again cold before the well is opened', () => {
    const lacking = [...THREE_WIRE, ...NO_CONTACTOR, 'ohms-contactor-coil'];
    const open = {
      'ohms-yellow-black': 'open',
      'ohms-yellow-red': 'open',
      'ohms-black-red': 'as-expected',
    };
    expect(foldProcedure(motorAndCable, given(open, lacking)).proposes).toBe('ohms-after-cool-yellow-black');
    const cold = (outcome: string) =>
      foldProcedure(motorAndCable, given({ ...open, 'ohms-after-cool-yellow-black': outcome }, lacking)).ends;
    expect(cold('as-expected')).toEqual({ claims: ['motor-protector-cycling'] });
    expect(cold('open')).toEqual({ handsOver: 'well-head' });
    expect(cold('not-taken')).toEqual({ undecided: 'motor-and-cable' });
    const withContactor = foldProcedure(motorAndCable, given(open, THREE_WIRE));
    expect(withContactor.ends).toEqual({ handsOver: 'well-head' });
  });

  test('the pair dead at the switch: back to the service, and where the standby supply stands', () => {
    const lacking = [...THREE_WIRE, ...NO_CONTACTOR, ...NO_FITTINGS];
    const dead = {
      'what-is-seen': 'silent-without-pressure',
      'breaker-lever': 'on',
      'disconnect-position': 'on',
      'house-power': 'all-works',
      'volts-switch-line': 'none',
    };
    expect(asked(given(dead, lacking))).toContain('volts-service-pair');
    const good = { ...dead, 'volts-service-pair': 'as-expected', 'device-display': 'none' };
    const fed = { ...good, 'volts-breaker-pair': 'as-expected' };
    expect(claimed(given(fed, lacking))).toEqual(['disconnect-off']);
    const withFuses = lacking.filter((check) => !check.startsWith('ohms-fuse'));
    expect(asked(given(fed, withFuses))).toContain('ohms-fuse-1');
    expect(claimed(given({ ...fed, 'ohms-fuse-1': 'open' }, withFuses))).toEqual(['fuse-open']);
    const dark = { ...fed, 'device-display': 'dark' };
    expect(claimed(given(dark, lacking))).toEqual(['protector-failed']);
    const pole = { ...good, 'volts-breaker-pair': 'none', 'volts-breaker-1': 'as-expected' };
    expect(claimed(given(pole, lacking))).toEqual(['breaker-pole-open']);
    const leg = {
      ...dead,
      'volts-service-pair': 'none',
      'volts-service-1': 'as-expected',
      'volts-service-2': 'none',
    };
    expect(asked(given(leg, lacking))).toContain('standby-position');
    expect(claimed(given({ ...leg, 'standby-position': 'utility' }, lacking))).toEqual(['supply-lost-leg']);
    const tied = { ...leg, 'volts-service-2': 'as-expected', 'standby-position': 'generator' };
    expect(claimed(given(tied, lacking))).toEqual(['generator-single-phase', 'battery-supply-island']);
  });

  test('works now: a whole round, with nothing left out, before anybody says that nothing is wrong', () => {
    const lacking = [...THREE_WIRE, ...NO_CONTACTOR, ...POTENTIAL_RELAY, ...NO_FITTINGS];
    const round = {
      'motor-sound': 'runs',
      'amps-red': 'as-expected',
      'amps-yellow': 'as-expected',
      'volts-switch-load-pair': 'as-expected',
      'volts-pole-1': 'as-expected',
      'volts-pole-2': 'as-expected',
      'ohms-yellow-black': 'as-expected',
      'ohms-yellow-red': 'as-expected',
      'insulation-system': 'as-expected',
      'look-box': 'clean',
      'start-capacitance': 'as-expected',
      'run-capacitance': 'as-expected',
      'ohms-capacitor-case': 'as-expected',
      'ohms-branch-1': 'as-expected',
      'ohms-branch-2': 'as-expected',
      'lead-null': 'steady-low',
      'terminals-tug': 'tight',
      'ohms-bleed': 'as-expected',
      'box-temperature': 'cool',
      'other-loads': 'pump-only',
      'record-trend': 'no-record',
      'hot-spots': 'none',
      'log-a-day': 'steady',
      'water-anywhere': 'normal',
      'pump-stops': 'stops',
      'starts-unused': 'no',
      'first-bucket': 'clear',
      'fill-time': 'as-expected',
      precharge: 'as-expected',
    };
    const seen = { 'what-is-seen': 'works-now' };
    expect(claimed(given({ ...seen, ...round }, lacking))).toContain('nothing-wrong');
    for (const left of Object.keys(round)) {
      const rest = Object.fromEntries(Object.entries(round).filter(([check]) => check !== left));
      expect(claimed(given({ ...seen, ...rest }, lacking))).not.toContain('nothing-wrong');
    }
  });
});

describe('the pattern of the three lead ohms', () => {
  const ends = (yellowBlack: string, yellowRed: string, blackRed: string) =>
    foldProcedure(
      motorAndCable,
      given(
        {
          'ohms-yellow-black': yellowBlack,
          'ohms-yellow-red': yellowRed,
          'ohms-black-red': blackRed,
          'insulation-system': 'as-expected',
          'ohms-after-cool-yellow-black': 'open',
          'lead-null': 'steady-low',
        },
        [...THREE_WIRE, ...NO_CONTACTOR],
      ),
    ).ends;

  test.each([
    ['healthy', 'as-expected', 'as-expected', 'as-expected', { clears: 'motor-and-cable' }],
    ['yellow open', 'open', 'open', 'as-expected', { handsOver: 'well-head' }],
    ['black or main winding open', 'open', 'as-expected', 'open', { handsOver: 'well-head' }],
    ['red or start winding open', 'as-expected', 'open', 'open', { handsOver: 'well-head' }],
    ['red and black exchanged', 'high', 'low', 'as-expected', { claims: ['leads-exchanged'] }],
    ['yellow and black exchanged', 'as-expected', 'high', 'low', { claims: ['leads-exchanged'] }],
    ['yellow and red exchanged', 'high', 'as-expected', 'low', { claims: ['leads-exchanged'] }],
    ['rotated, B R Y', 'high', 'low', 'low', { claims: ['leads-exchanged'] }],
    ['rotated, R Y B', 'high', 'high', 'low', { claims: ['leads-exchanged'] }],
    ['a joint in yellow', 'high', 'high', 'as-expected', { handsOver: 'well-head' }],
    ['a joint in black', 'high', 'as-expected', 'high', { handsOver: 'well-head' }],
    ['a joint in red', 'as-expected', 'high', 'high', { handsOver: 'well-head' }],
    ['main winding short of turns', 'low', 'as-expected', 'low', { handsOver: 'well-head' }],
    ['start winding short of turns', 'as-expected', 'low', 'low', { handsOver: 'well-head' }],
    ['black and red shorted together', 'low', 'low', 'low', { handsOver: 'well-head' }],
    [
      'three readings that fit nothing',
      'as-expected',
      'as-expected',
      'open',
      { undecided: 'motor-and-cable' },
    ],
  ])('%s', (_, yellowBlack, yellowRed, blackRed, expected) => {
    expect(ends(yellowBlack, yellowRed, blackRed)).toEqual(expected);
  });

  test('insulation is read before the pair is called sound', () => {
    const place = foldProcedure(
      motorAndCable,
      given(
        {
          'ohms-yellow-black': 'as-expected',
          'ohms-yellow-red': 'as-expected',
          'ohms-black-red': 'as-expected',
        },
        THREE_WIRE,
      ),
    );
    expect(place.proposes).toBe('insulation-system');
  });
});

describe('the split at the well head', () => {
  const open = { 'insulation-system': 'as-expected', 'look-wellhead': 'dry', 'ohms-yellow-black': 'open' };
  const split = (said: Record<string, string>) => foldProcedure(wellHead, given({ ...open, ...said })).ends;

  test('good below: the buried loop tells the run from the splice', () => {
    const below = { 'ohms-well-yellow-black': 'as-expected', 'ohms-well-yellow-red': 'as-expected' };
    expect(split({ ...below, 'ohms-buried-yellow-black': 'open' })).toEqual({
      claims: ['buried-conductor-open'],
    });
    const run = {
      ...below,
      'ohms-buried-yellow-black': 'as-expected',
      'ohms-buried-yellow-red': 'as-expected',
    };
    expect(split(run)?.claims).toContain('wellhead-splice-open');
  });

  test('bad below: the lead that two open pairs share', () => {
    const main = { 'ohms-well-yellow-black': 'open' };
    expect(split({ ...main, 'ohms-well-yellow-red': 'as-expected' })?.claims).toContain('winding-main-open');
    const yellow = { ...main, 'ohms-well-yellow-red': 'open', 'ohms-well-black-red': 'as-expected' };
    expect(split(yellow)?.claims).toEqual(['motor-protector-open', 'drop-conductor-open']);
    const red = { 'ohms-well-yellow-black': 'as-expected', 'ohms-well-yellow-red': 'open' };
    expect(split(red)?.claims).toContain('winding-start-open');
  });
});

describe('what an installation does not have', () => {
  test('begins no tree of its own', () => {
    const begun = (lacking: readonly string[]) =>
      standings(PROCEDURES, given({ 'what-is-seen': 'hums-or-trips' }, lacking)).map(
        (one) => one.procedure.id,
      );
    expect(begun(THREE_WIRE)).toContain('control-loop');
    expect(begun([...THREE_WIRE, ...NO_CONTACTOR])).not.toContain('control-loop');
    expect(begun([...NO_BOX, ...NO_CONTACTOR])).toContain('two-wire-motor');
    expect(begun([...NO_BOX, ...NO_CONTACTOR])).not.toContain('motor-and-cable');
    expect(begun([...NO_BOX, ...NO_CONTACTOR])).not.toContain('starting-parts');
  });
});

describe('what cannot be read', () => {
  test('a switch that may not be probed live is judged dead', () => {
    const place = foldProcedure(
      pressureSwitch,
      given({ 'gauge-zone': 'zero', 'volts-switch-line': 'not-taken' }),
    );
    expect(place.ends).toEqual({ handsOver: 'switch-dead' });
    expect(foldProcedure(switchDead, given({})).proposes).toBe('look-switch');
  });

  test('checks that nobody may do are passed over, so that the tree goes on', () => {
    const answers = given({ 'gauge-zone': 'zero' });
    expect(foldProcedure(pressureSwitch, answers).proposes).toBe('volts-switch-line');
    const over = passingOver(answers, new Set(['volts-switch-line']));
    expect(foldProcedure(pressureSwitch, over).ends).toEqual({ handsOver: 'switch-dead' });
  });

  test('an answer that the tree does not know is as good as none', () => {
    const place = foldProcedure(supply, given({ 'breaker-lever': 'painted-over' }));
    expect(place.proposes).toBe('disconnect-position');
  });

  test('when what was seen leads nowhere, the other trees are heard', () => {
    const lacking = [...THREE_WIRE, ...NO_CONTACTOR];
    const pressure = {
      'what-is-seen': 'silent-with-pressure',
      'device-display': 'none',
      'gauge-compare': 'agree',
      'pump-stops': 'stops',
      'cut-in-pressure': 'as-expected',
      'water-anywhere': 'normal',
      'house-flow': 'within',
    };
    expect(asked(given(pressure, lacking))).toEqual(['cut-out-pressure']);
    const left = { ...pressure, 'cut-out-pressure': 'as-expected' };
    expect(asked(given(left, lacking))).toContain('breaker-lever');
  });
});
