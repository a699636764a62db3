import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * The service is good and the switch gets nothing, or too little: what stops it between?
 *
 * The pair after the breaker before its legs to ground: a leg that is alive to ground says nothing while
 * the pair is dead. Past a good breaker a dead line is a fuse, a protector that has opened or a disconnect
 * that is off; fuses are read drawn, never by their looks. A low line is a blade or a joint, and the drop
 * across each blade tells which, one against the other since a high current raises both.
 */
export const pumpFeed = tree.createMachine({
  id: 'pump-feed',
  initial: 'line',
  states: {
    line: ask('volts-switch-line', {
      'as-expected': 'sound',
      low: 'breakerBehindLow',
      high: 'sound',
      none: 'breaker',
      'not-taken': 'breaker',
      'not-here': 'boxLine',
    }),
    boxLine: ask('volts-box-line', {
      'as-expected': 'sound',
      low: 'breakerBehindLow',
      high: 'sound',
      none: 'breaker',
      'not-taken': 'breaker',
    }),

    breaker: ask('volts-breaker-pair', {
      'as-expected': 'fuseOne',
      low: 'panelJoint',
      high: 'fuseOne',
      none: 'legOne',
      'not-taken': 'undecided',
    }),
    legOne: ask('volts-breaker-1', {
      'as-expected': 'poleOpen',
      low: 'poleOpen',
      high: 'poleOpen',
      none: 'legTwo',
      'not-taken': 'undecided',
    }),
    legTwo: ask('volts-breaker-2', {
      'as-expected': 'poleOpen',
      low: 'poleOpen',
      high: 'poleOpen',
      none: 'tripped',
      'not-taken': 'undecided',
    }),
    fuseOne: ask('ohms-fuse-1', {
      'as-expected': 'fuseTwo',
      low: 'fuseTwo',
      high: 'fuseOpen',
      open: 'fuseOpen',
      'not-taken': 'fuseTwo',
    }),
    fuseTwo: ask('ohms-fuse-2', {
      'as-expected': 'display',
      low: 'display',
      high: 'fuseOpen',
      open: 'fuseOpen',
      'not-taken': 'undecided',
      'not-here': 'display',
    }),
    display: ask('device-display', {
      none: 'switchedOff',
      normal: 'switchedOff',
      dark: 'device',
      'dry-run': 'device',
      fault: 'device',
      'not-taken': 'switchedOff',
    }),

    breakerBehindLow: ask('volts-breaker-pair', {
      'as-expected': 'bladeOne',
      low: 'panelJoint',
      high: 'bladeOne',
      none: 'legOne',
      'not-taken': 'undecided',
    }),
    bladeOne: ask('volts-disconnect-1', {
      'as-expected': 'bladeTwo',
      low: 'bladeTwo',
      high: 'bladeTwoBesideHigh',
      none: 'bladeTwo',
      'not-taken': 'bladeTwo',
    }),
    bladeTwo: ask('volts-disconnect-2', {
      'as-expected': 'joint',
      low: 'joint',
      high: 'bladeBurnt',
      none: 'joint',
      'not-taken': 'bladeOrJoint',
    }),
    bladeTwoBesideHigh: ask('volts-disconnect-2', {
      'as-expected': 'bladeBurnt',
      low: 'bladeBurnt',
      high: 'joint',
      none: 'bladeBurnt',
      'not-taken': 'bladeOrJoint',
    }),

    sound: clears('pump-feed'),
    panelJoint: claims('panel-joint-burnt', 'breaker-weak'),
    poleOpen: claims('breaker-pole-open'),
    fuseOpen: claims('fuse-open'),
    switchedOff: claims('disconnect-off'),
    bladeBurnt: claims('disconnect-burnt'),
    joint: claims('supply-joint-loose'),
    bladeOrJoint: claims('disconnect-burnt', 'supply-joint-loose'),
    device: handsOver('drive-or-protector'),
    tripped: handsOver('trips'),
    undecided: undecided('pump-feed'),
  },
});
