import { ask, claims, clears, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * The well has water and the motor turns. Does the pump end do its part?
 *
 * Begun only when the level is known. Before a pump is blamed the pressure is watched with the pump off,
 * since a hole takes what the pump gives, and the leads are read, since a new splice can run it backwards.
 * Then two flows at two pressures; against a shut valve only where that is safe. Nothing at all is told
 * apart by watts: a shaft that turns nothing takes little, a pump whose pipe has parted takes as much as
 * ever.
 */
export const pumpEnd = tree.createMachine({
  id: 'pump-end',
  initial: 'falls',
  states: {
    falls: ask('leak-down-isolated', {
      'as-expected': 'leads',
      low: 'leads',
      high: 'leak',
      'not-taken': 'leads',
    }),
    leads: isHere('ohms-two-wire', 'flowLow', 'main'),
    main: ask('ohms-yellow-black', {
      'as-expected': 'start',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'start',
    }),
    start: ask('ohms-yellow-red', {
      'as-expected': 'flowLow',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'flowLow',
    }),

    flowLow: ask('flow-at-low-pressure', {
      'as-expected': 'flowHigh',
      low: 'shut',
      high: 'flowHigh',
      'not-taken': 'shut',
    }),
    flowHigh: ask('flow-at-high-pressure', {
      'as-expected': 'sound',
      low: 'shut',
      high: 'sound',
      'not-taken': 'undecided',
    }),

    shut: ask('dead-head-pressure', {
      'as-expected': 'freeze',
      low: 'watts',
      high: 'freeze',
      'not-taken': 'watts',
    }),
    freeze: ask('look-freeze', {
      'above-freezing': 'drawnDown',
      frozen: 'frozen',
      'not-taken': 'drawnDown',
    }),
    drawnDown: ask('pumping-level', {
      'as-expected': 'intake',
      low: 'intake',
      high: 'yields',
      'not-taken': 'intakeOrYield',
    }),
    watts: ask('watts-line', {
      'as-expected': 'zone',
      low: 'zoneBesideLow',
      high: 'drags',
      'not-taken': 'shutAmps',
    }),
    shutAmps: ask('dead-head-amps', {
      'as-expected': 'zone',
      low: 'zoneBesideLow',
      high: 'zone',
      none: 'undecided',
      'not-taken': 'zone',
    }),
    zone: ask('gauge-zone', {
      zero: 'givesNothing',
      'below-cut-in': 'levelBesideWeak',
      between: 'levelBesideWeak',
      'above-cut-out': 'undecided',
      'no-gauge': 'levelBesideWeak',
      'not-taken': 'levelBesideWeak',
    }),
    zoneBesideLow: ask('gauge-zone', {
      zero: 'levelBesideNothing',
      'below-cut-in': 'levelBesideWeak',
      between: 'levelBesideWeak',
      'above-cut-out': 'undecided',
      'no-gauge': 'levelBesideWeak',
      'not-taken': 'levelBesideNothing',
    }),
    levelBesideWeak: ask('static-level', {
      'as-expected': 'worn',
      low: 'worn',
      high: 'levelLow',
      'not-taken': 'amps',
    }),
    amps: ask('amps-after-running', {
      'as-expected': 'worn',
      low: 'undecided',
      high: 'undecided',
      none: 'undecided',
      'not-taken': 'undecided',
    }),
    levelBesideNothing: ask('static-level', {
      'as-expected': 'turnsNothing',
      low: 'turnsNothing',
      high: 'levelLow',
      'not-taken': 'undecided',
    }),

    sound: clears('pump-end'),
    worn: claims('pump-worn', 'pump-too-small', 'pump-stages-melted'),
    drags: claims('pump-stages-melted', 'pump-upthrust-worn', 'motor-drags'),
    intake: claims('pump-intake-blocked', 'well-iron-slime', 'flow-control-stuck'),
    yields: claims('well-yield-low', 'well-screen-clogged'),
    intakeOrYield: claims('pump-intake-blocked', 'well-yield-low', 'well-screen-clogged'),
    turnsNothing: claims('pump-coupling-sheared', 'pump-air-locked', 'check-valve-stuck'),
    givesNothing: claims('drop-pipe-parted', 'check-valve-stuck'),
    frozen: claims('line-frozen', 'heat-tape-failed'),
    levelLow: claims('well-level-low', 'well-drawn-by-others'),
    leak: handsOver('leak-down'),
    motor: handsOver('motor-and-cable'),
    undecided: undecided('pump-end'),
  },
});
