import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Does the supply reach the pump circuit?
 *
 * Look first: the lever, the disconnect, the rest of the house. Then the pair at the pressure switch, and
 * only if that is dead or low back to the service. A good service leaves the stretch between, a tree of its
 * own. A breaker found tripped is not closed to see what happens; it goes straight to the dead readings.
 */
export const supply = tree.createMachine({
  id: 'supply',
  initial: 'lever',
  states: {
    lever: ask('breaker-lever', {
      on: 'disconnect',
      middle: 'tripped',
      off: 'tripped',
      'not-seen': 'disconnect',
      'not-taken': 'disconnect',
    }),
    disconnect: ask('disconnect-position', {
      on: 'house',
      off: 'switchedOff',
      none: 'house',
      'not-taken': 'house',
    }),
    house: ask('house-power', {
      'all-works': 'switchLine',
      'half-dead': 'serviceDespiteHouse',
      'all-dead': 'incoming',
      'not-taken': 'switchLine',
    }),

    switchLine: ask('volts-switch-line', {
      'as-expected': 'sound',
      low: 'serviceBehindLow',
      high: 'highSupply',
      none: 'serviceBehind',
      'not-taken': 'serviceBehind',
      'not-here': 'boxLine',
    }),
    boxLine: ask('volts-box-line', {
      'as-expected': 'sound',
      low: 'serviceBehindLow',
      high: 'highSupply',
      none: 'serviceBehind',
      'not-taken': 'serviceBehind',
    }),

    serviceBehind: ask('volts-service-pair', {
      'as-expected': 'feed',
      low: 'incoming',
      high: 'feed',
      none: 'incoming',
      'not-taken': 'feed',
    }),
    serviceBehindLow: ask('volts-service-pair', {
      'as-expected': 'feed',
      low: 'incoming',
      high: 'feed',
      none: 'incoming',
      'not-taken': 'undecided',
    }),

    serviceDespiteHouse: ask('volts-service-pair', {
      'as-expected': 'lineDespiteHouse',
      low: 'incoming',
      high: 'lineDespiteHouse',
      none: 'incoming',
      'not-taken': 'lineDespiteHouse',
    }),
    lineDespiteHouse: ask('volts-switch-line', {
      'as-expected': 'sound',
      low: 'feed',
      high: 'highSupply',
      none: 'feed',
      'not-taken': 'feed',
    }),

    sound: clears('supply'),
    highSupply: claims('supply-high'),
    switchedOff: claims('disconnect-off'),
    incoming: handsOver('service'),
    feed: handsOver('pump-feed'),
    tripped: handsOver('trips'),
    undecided: undecided('supply'),
  },
});
