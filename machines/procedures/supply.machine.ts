import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Does the supply reach the pump circuit?
 *
 * Look first: lever, standby supply, the rest of the house. Then the pair at the pressure switch,
 * and only if that is dead back towards the service, each pair before its legs to ground: a leg that
 * is alive to ground says nothing while the pair is dead. A breaker found tripped is not closed to
 * see what happens; it goes straight to the dead readings.
 */
export const supply = tree.createMachine({
  id: 'supply',
  initial: 'lever',
  states: {
    lever: ask('breaker-lever', {
      on: 'standby',
      middle: 'tripped',
      off: 'tripped',
      'not-seen': 'standby',
      'not-taken': 'standby',
    }),
    standby: ask('standby-position', {
      utility: 'house',
      generator: 'leftOnStandby',
      between: 'leftOnStandby',
      none: 'house',
      'not-taken': 'house',
    }),
    house: ask('house-power', {
      'all-works': 'switchLine',
      'half-dead': 'service',
      'all-dead': 'noSupply',
      'not-taken': 'switchLine',
    }),

    switchLine: ask('volts-switch-line', {
      'as-expected': 'sound',
      low: 'serviceBehindLow',
      high: 'sound',
      none: 'serviceBehind',
      'not-taken': 'serviceBehind',
      'not-here': 'boxLine',
    }),
    boxLine: ask('volts-box-line', {
      'as-expected': 'sound',
      low: 'serviceBehindLow',
      high: 'sound',
      none: 'serviceBehind',
      'not-taken': 'serviceBehind',
    }),

    serviceBehind: ask('volts-service-pair', {
      'as-expected': 'breakerPair',
      low: 'legOne',
      high: 'breakerPair',
      none: 'legOne',
      'not-taken': 'breakerPair',
    }),
    serviceBehindLow: ask('volts-service-pair', {
      'as-expected': 'undecided',
      low: 'legOne',
      high: 'undecided',
      none: 'legOne',
      'not-taken': 'undecided',
    }),
    legOne: ask('volts-service-1', {
      'as-expected': 'lostLeg',
      low: 'legTwoBesideLow',
      high: 'lostLeg',
      none: 'legTwoBesideDead',
      'not-taken': 'undecided',
    }),
    legTwoBesideLow: ask('volts-service-2', {
      'as-expected': 'lostLeg',
      low: 'lowSupply',
      high: 'lostLeg',
      none: 'lostLeg',
      'not-taken': 'undecided',
    }),
    legTwoBesideDead: ask('volts-service-2', {
      'as-expected': 'lostLeg',
      low: 'lostLeg',
      high: 'lostLeg',
      none: 'noSupply',
      'not-taken': 'undecided',
    }),

    service: ask('volts-service-pair', {
      'as-expected': 'lineDespiteHouse',
      low: 'legOne',
      high: 'lineDespiteHouse',
      none: 'legOne',
      'not-taken': 'lineDespiteHouse',
    }),
    lineDespiteHouse: ask('volts-switch-line', {
      'as-expected': 'sound',
      low: 'breakerPair',
      high: 'sound',
      none: 'breakerPair',
      'not-taken': 'breakerPair',
    }),

    breakerPair: ask('volts-breaker-pair', {
      'as-expected': 'switchedOff',
      low: 'breakerLegOne',
      high: 'switchedOff',
      none: 'breakerLegOne',
      'not-taken': 'breakerOhmsOne',
    }),
    breakerLegOne: ask('volts-breaker-1', {
      'as-expected': 'poleOpen',
      low: 'poleOpen',
      high: 'poleOpen',
      none: 'breakerLegTwo',
      'not-taken': 'breakerOhmsOne',
    }),
    breakerLegTwo: ask('volts-breaker-2', {
      'as-expected': 'poleOpen',
      low: 'poleOpen',
      high: 'poleOpen',
      none: 'tripped',
      'not-taken': 'breakerOhmsOne',
    }),
    breakerOhmsOne: ask('ohms-breaker-1', {
      'as-expected': 'breakerOhmsTwo',
      low: 'breakerOhmsTwo',
      high: 'poleOpen',
      open: 'poleOpen',
      'not-taken': 'undecided',
    }),
    breakerOhmsTwo: ask('ohms-breaker-2', {
      'as-expected': 'undecided',
      low: 'undecided',
      high: 'poleOpen',
      open: 'poleOpen',
      'not-taken': 'undecided',
    }),

    sound: clears('supply'),
    leftOnStandby: claims('transfer-switch-left'),
    noSupply: claims('supply-out'),
    lowSupply: claims('supply-low'),
    lostLeg: claims('supply-lost-leg'),
    poleOpen: claims('breaker-pole-open'),
    switchedOff: claims('disconnect-off'),
    tripped: handsOver('overloads'),
    undecided: undecided('supply'),
  },
});
