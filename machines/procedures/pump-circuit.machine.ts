import { ask, claims, handsOver, tree } from './ask.ts';

/**
 * The breaker opened, and motor and starting parts read sound. Is it something else on the circuit?
 *
 * What is left between the breaker and the lifted leads is read to ground, and whatever hangs there is
 * looked for: an arrester, a heat tape, a neighbour's light, a wet box. Then the breaker itself, by eye
 * and by ohms. The clock comes last of all: at once, within seconds, after minutes or not at all are four
 * different things.
 */
export const pumpCircuit = tree.createMachine({
  id: 'pump-circuit',
  initial: 'branchOne',
  states: {
    branchOne: ask('ohms-branch-1', {
      'as-expected': 'branchTwo',
      low: 'loadsBesideLow',
      high: 'branchTwo',
      open: 'branchTwo',
      'not-taken': 'branchTwo',
    }),
    branchTwo: ask('ohms-branch-2', {
      'as-expected': 'panel',
      low: 'loadsBesideLow',
      high: 'panel',
      open: 'panel',
      'not-taken': 'panel',
    }),
    loadsBesideLow: ask('other-loads', {
      'pump-only': 'box',
      'heater-or-tape': 'tape',
      other: 'otherLoad',
      'not-taken': 'box',
    }),
    box: ask('look-box', {
      clean: 'switch',
      'lid-unseated': 'switch',
      'vented-capacitor': 'switch',
      'burnt-blade': 'switch',
      wet: 'boxWet',
      'overload-button-out': 'switch',
      'not-taken': 'switch',
    }),
    switch: ask('look-switch', {
      clean: 'arrester',
      burnt: 'arrester',
      insects: 'arrester',
      wet: 'switchWet',
      'cut-off-lever-open': 'arrester',
      'not-taken': 'arrester',
    }),

    panel: ask('look-panel', {
      clean: 'loads',
      'hot-or-burnt': 'burnt',
      'wrong-breaker': 'wrongSize',
      'two-single-poles': 'wrongSize',
      'not-taken': 'loads',
    }),
    loads: ask('other-loads', {
      'pump-only': 'poleOne',
      'heater-or-tape': 'tape',
      other: 'otherLoad',
      'not-taken': 'poleOne',
    }),
    poleOne: ask('ohms-breaker-1', {
      'as-expected': 'poleTwo',
      low: 'poleTwo',
      high: 'burnt',
      open: 'poleTwoBesideOpen',
      'not-taken': 'poleTwo',
    }),
    poleTwo: ask('ohms-breaker-2', {
      'as-expected': 'residual',
      low: 'residual',
      high: 'burnt',
      open: 'poleOpen',
      'not-taken': 'residual',
    }),
    /** Both apart: it is still tripped, and says nothing about its poles. */
    poleTwoBesideOpen: ask('ohms-breaker-2', {
      'as-expected': 'poleOpen',
      low: 'poleOpen',
      high: 'poleOpen',
      open: 'residual',
      'not-taken': 'residual',
    }),
    residual: ask('residual-line', {
      'as-expected': 'clock',
      low: 'clock',
      high: 'leaks',
      none: 'clock',
      'not-taken': 'clock',
    }),
    clock: ask('time-to-trip', {
      'at-once': 'neutral',
      seconds: 'bound',
      minutes: 'weak',
      holds: 'trippedClear',
      'not-taken': 'trippedUntold',
    }),
    neutral: ask('ohms-neutral-ground', {
      'as-expected': 'groundFault',
      low: 'neutralGrounded',
      high: 'groundFault',
      open: 'groundFault',
      'not-taken': 'groundFault',
    }),

    arrester: claims('arrester-failed', 'heat-tape-failed', 'other-load-on-circuit'),
    tape: claims('heat-tape-failed', 'other-load-on-circuit'),
    otherLoad: claims('other-load-on-circuit'),
    boxWet: claims('box-wet'),
    switchWet: claims('switch-wet'),
    burnt: claims('breaker-weak', 'panel-joint-burnt'),
    wrongSize: claims('breaker-wrong-size'),
    poleOpen: claims('breaker-pole-open'),
    weak: claims('breaker-weak', 'other-load-on-circuit', 'box-overheated'),
    groundFault: claims('ground-fault-breaker-trips', 'breaker-weak'),
    neutralGrounded: claims('ground-fault-breaker-trips'),
    trippedClear: claims('breaker-tripped'),
    trippedUntold: claims('breaker-tripped', 'breaker-weak', 'ground-fault-breaker-trips'),
    bound: handsOver('bound-pump'),
    leaks: handsOver('ground-leak'),
  },
});
