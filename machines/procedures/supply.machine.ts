import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Does the supply reach the pump circuit?
 *
 * Look first: the lever and the rest of the house. Then the pair at the pressure switch,
 * and only if that is dead back towards the service, each pair before its legs to ground: a leg that
 * is alive to ground says nothing while the pair is dead. A breaker found tripped is not closed to
 * see what happens; it goes straight to the dead readings.
 */
export const supply = tree.createMachine({
  id: 'supply',
  initial: 'lever',
  states: {
    lever: ask('breaker-lever', {
      on: 'house',
      middle: 'tripped',
      off: 'tripped',
      'not-seen': 'house',
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
      'as-expected': 'breakerPair',
      low: 'incoming',
      high: 'breakerPair',
      none: 'incoming',
      'not-taken': 'breakerPair',
    }),
    serviceBehindLow: ask('volts-service-pair', {
      'as-expected': 'breakerBehindLow',
      low: 'incoming',
      high: 'breakerBehindLow',
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
      low: 'breakerBehindLow',
      high: 'highSupply',
      none: 'breakerPair',
      'not-taken': 'breakerPair',
    }),

    breakerBehindLow: ask('volts-breaker-pair', {
      'as-expected': 'lossPastBreaker',
      low: 'panelJoint',
      high: 'lossPastBreaker',
      none: 'breakerLegOne',
      'not-taken': 'undecided',
    }),
    breakerPair: ask('volts-breaker-pair', {
      'as-expected': 'switchedOff',
      low: 'panelJoint',
      high: 'switchedOff',
      none: 'breakerLegOne',
      'not-taken': 'undecided',
    }),
    breakerLegOne: ask('volts-breaker-1', {
      'as-expected': 'poleOpen',
      low: 'poleOpen',
      high: 'poleOpen',
      none: 'breakerLegTwo',
      'not-taken': 'undecided',
    }),
    breakerLegTwo: ask('volts-breaker-2', {
      'as-expected': 'poleOpen',
      low: 'poleOpen',
      high: 'poleOpen',
      none: 'tripped',
      'not-taken': 'undecided',
    }),

    sound: clears('supply'),
    highSupply: claims('supply-high'),
    panelJoint: claims('panel-joint-burnt'),
    lossPastBreaker: claims('disconnect-burnt', 'supply-joint-loose'),
    poleOpen: claims('breaker-pole-open'),
    switchedOff: claims('disconnect-off'),
    incoming: handsOver('service'),
    tripped: handsOver('trips'),
    undecided: undecided('supply'),
  },
});
