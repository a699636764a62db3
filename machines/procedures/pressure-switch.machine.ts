import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Does the pressure switch pass on what it is given, and does it know the pressure?
 *
 * Live first: the pair, then each load to ground. A dead pair with both loads alive to ground is one
 * open pole, never "it has power"; a drop counts against the other pole, since a high current
 * raises both. Where one pole sits in the control loop its two sides are read
 * from the coil's far end. Dead both sides: look for the lever of a cut-off and for burnt points,
 * clear the tube, and only then ohms across each pole with the lever made.
 */
export const pressureSwitch = tree.createMachine({
  id: 'pressure-switch',
  initial: 'gauge',
  states: {
    gauge: ask('gauge-zone', {
      zero: 'line',
      'below-cut-in': 'line',
      between: 'line',
      'above-cut-out': 'tubeAtRest',
      'no-gauge': 'line',
      'not-taken': 'line',
    }),
    tubeAtRest: ask('tube-clear', {
      clear: 'sound',
      blocked: 'tubeBlocked',
      'not-taken': 'undecided',
    }),

    line: ask('volts-switch-line', {
      'as-expected': 'loadPair',
      low: 'noSupply',
      high: 'loadPair',
      none: 'noSupply',
      'not-taken': 'lookUnread',
      'not-here': 'feedSide',
    }),
    loadPair: ask('volts-switch-load-pair', {
      'as-expected': 'dropOne',
      low: 'dropOne',
      high: 'dropOne',
      none: 'loadOne',
      'not-taken': 'dropOne',
    }),
    loadOne: ask('volts-switch-load-1', {
      'as-expected': 'onePoleOpen',
      low: 'onePoleOpen',
      high: 'onePoleOpen',
      none: 'loadTwo',
      'not-taken': 'lookUnread',
    }),
    loadTwo: ask('volts-switch-load-2', {
      'as-expected': 'onePoleOpen',
      low: 'onePoleOpen',
      high: 'onePoleOpen',
      none: 'lookNotPassing',
      'not-taken': 'lookUnread',
    }),
    dropOne: ask('volts-pole-1', {
      'as-expected': 'dropTwo',
      low: 'dropTwo',
      high: 'dropTwoBesideHigh',
      none: 'dropTwo',
      'not-taken': 'dropTwo',
    }),
    dropTwo: ask('volts-pole-2', {
      'as-expected': 'sound',
      low: 'sound',
      high: 'burntPoints',
      none: 'sound',
      'not-taken': 'undecided',
    }),
    dropTwoBesideHigh: ask('volts-pole-2', {
      'as-expected': 'burntPoints',
      low: 'burntPoints',
      high: 'poleOneUnread',
      none: 'burntPoints',
      'not-taken': 'burntPoints',
    }),

    feedSide: ask('volts-loop-feed', {
      'as-expected': 'switchedSide',
      low: 'noFeed',
      high: 'switchedSide',
      none: 'noFeed',
      'not-taken': 'lookUnread',
    }),
    switchedSide: ask('volts-loop-switched', {
      'as-expected': 'sound',
      low: 'lookNotPassing',
      high: 'sound',
      none: 'lookNotPassing',
      'not-taken': 'lookUnread',
    }),

    lookNotPassing: ask('look-switch', {
      clean: 'tubeNotPassing',
      burnt: 'poleOne',
      insects: 'insects',
      wet: 'poleOne',
      'cut-off-lever-open': 'cutOff',
      'not-taken': 'tubeNotPassing',
    }),
    tubeNotPassing: ask('tube-clear', {
      clear: 'poleOne',
      blocked: 'tubeBlocked',
      'not-taken': 'poleOne',
    }),
    poleOne: ask('ohms-switch-pole-1', {
      'as-expected': 'notTold',
      low: 'notTold',
      high: 'contactsOpen',
      open: 'contactsOpen',
      'not-taken': 'undecided',
    }),

    lookUnread: ask('look-switch', {
      clean: 'poleOneUnread',
      burnt: 'poleOneUnread',
      insects: 'insects',
      wet: 'poleOneUnread',
      'cut-off-lever-open': 'cutOff',
      'not-taken': 'poleOneUnread',
    }),
    poleOneUnread: ask('ohms-switch-pole-1', {
      'as-expected': 'poleTwoUnread',
      low: 'poleTwoUnread',
      high: 'burntPoints',
      open: 'poleTwoBesideOpen',
      'not-taken': 'tubeUnread',
    }),
    poleTwoUnread: ask('ohms-switch-pole-2', {
      'as-expected': 'tubeUnread',
      low: 'tubeUnread',
      high: 'burntPoints',
      open: 'onePoleOpen',
      'not-taken': 'tubeUnread',
    }),
    poleTwoBesideOpen: ask('ohms-switch-pole-2', {
      'as-expected': 'onePoleOpen',
      low: 'onePoleOpen',
      high: 'contactsOpen',
      open: 'contactsOpen',
      'not-taken': 'onePoleOpen',
      'not-here': 'contactsOpen',
    }),
    tubeUnread: ask('tube-clear', {
      clear: 'undecided',
      blocked: 'tubeBlocked',
      'not-taken': 'undecided',
    }),

    sound: clears('pressure-switch'),
    onePoleOpen: claims('switch-pole-open'),
    contactsOpen: claims('switch-contacts-open'),
    burntPoints: claims('switch-contacts-resistive'),
    insects: claims('switch-insects'),
    notTold: claims('switch-cut-off-open', 'switch-diaphragm-failed', 'switch-tube-blocked', 'switch-frozen'),
    cutOff: claims('switch-cut-off-open'),
    tubeBlocked: claims('switch-tube-blocked', 'switch-frozen'),
    noSupply: handsOver('supply'),
    noFeed: handsOver('control-loop'),
    undecided: undecided('pressure-switch'),
  },
});
