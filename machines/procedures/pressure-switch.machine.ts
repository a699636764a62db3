import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Does the pressure switch pass on what it is given, and does it know the pressure?
 *
 * Live first: the pair, then each load to ground. A dead pair with both loads alive to ground is one open
 * pole, never "it has power"; a drop counts against the other pole, since a high current raises both. Where
 * one pole sits in the control loop its two sides are read from the coil's far end. Dead both sides: look
 * for the lever of a cut-off and for burnt points, clear the tube, and only then ohms across the points.
 * Sound points that are not made were not told to make, unless a drive stands in the switch's place. What
 * may not be probed live is read dead, by another tree.
 */
export const pressureSwitch = tree.createMachine({
  id: 'pressure-switch',
  initial: 'gauge',
  states: {
    gauge: ask('gauge-zone', {
      zero: 'line',
      'below-cut-in': 'line',
      between: 'line',
      'above-cut-out': 'sound',
      'no-gauge': 'line',
      'not-taken': 'line',
    }),

    line: ask('volts-switch-line', {
      'as-expected': 'loadPair',
      low: 'noSupply',
      high: 'loadPair',
      none: 'noSupply',
      'not-taken': 'unread',
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
      'not-taken': 'unread',
    }),
    loadTwo: ask('volts-switch-load-2', {
      'as-expected': 'onePoleOpen',
      low: 'onePoleOpen',
      high: 'onePoleOpen',
      none: 'lookNotPassing',
      'not-taken': 'unread',
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
      high: 'unread',
      none: 'burntPoints',
      'not-taken': 'burntPoints',
    }),

    feedSide: ask('volts-loop-feed', {
      'as-expected': 'switchedSide',
      low: 'noFeed',
      high: 'switchedSide',
      none: 'noFeed',
      'not-taken': 'unread',
    }),
    switchedSide: ask('volts-loop-switched', {
      'as-expected': 'sound',
      low: 'across',
      high: 'sound',
      none: 'across',
      'not-taken': 'unread',
    }),
    /** All the volts across the points: they are apart. None: the wires are to blame. */
    across: ask('volts-pole-1', {
      'as-expected': 'noFeed',
      low: 'noFeed',
      high: 'lookNotPassing',
      none: 'noFeed',
      'not-taken': 'lookNotPassing',
    }),

    lookNotPassing: ask('look-switch', {
      clean: 'tubeNotPassing',
      burnt: 'poleOne',
      insects: 'insects',
      wet: 'wet',
      'cut-off-lever-open': 'cutOff',
      'not-taken': 'tubeNotPassing',
    }),
    tubeNotPassing: ask('tube-clear', {
      clear: 'poleOne',
      blocked: 'tubeBlocked',
      'not-taken': 'poleOne',
    }),
    poleOne: ask('ohms-switch-pole-1', {
      'as-expected': 'display',
      low: 'display',
      high: 'contactsOpen',
      open: 'contactsOpen',
      'not-taken': 'undecided',
    }),

    display: ask('device-display', {
      none: 'notTold',
      normal: 'device',
      dark: 'device',
      'dry-run': 'device',
      fault: 'device',
      'not-taken': 'notTold',
    }),

    sound: clears('pressure-switch'),
    onePoleOpen: claims('switch-pole-open'),
    contactsOpen: claims('switch-contacts-open'),
    burntPoints: claims('switch-contacts-resistive'),
    insects: claims('switch-insects'),
    wet: claims('switch-wet', 'switch-diaphragm-failed'),
    notTold: claims(
      'switch-cut-off-open',
      'switch-diaphragm-failed',
      'switch-spring-broken',
      'switch-tube-blocked',
      'switch-frozen',
    ),
    cutOff: claims('switch-cut-off-open'),
    tubeBlocked: claims('switch-tube-blocked', 'switch-frozen'),
    device: handsOver('drive-or-protector'),
    unread: handsOver('switch-dead'),
    noSupply: handsOver('supply'),
    noFeed: handsOver('control-loop'),
    undecided: undecided('pressure-switch'),
  },
});
