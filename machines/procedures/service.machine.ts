import { ask, claims, clears, tree, undecided } from './ask.ts';

/**
 * The supply itself is wrong before it reaches the breaker: how?
 *
 * Pair first, then each leg to neutral. One leg gone and both gone look alike at the pump, and so
 * does a standby supply that feeds one leg only: where it stands is looked at before anybody calls
 * the utility.
 */
export const service = tree.createMachine({
  id: 'service',
  initial: 'pair',
  states: {
    pair: ask('volts-service-pair', {
      'as-expected': 'sound',
      low: 'legOne',
      high: 'highSupply',
      none: 'legOne',
      'not-taken': 'house',
    }),
    legOne: ask('volts-service-1', {
      'as-expected': 'standbyAtLostLeg',
      low: 'legTwoBesideLow',
      high: 'standbyAtLostLeg',
      none: 'legTwoBesideDead',
      'not-taken': 'house',
    }),
    legTwoBesideLow: ask('volts-service-2', {
      'as-expected': 'standbyAtLostLeg',
      low: 'lowSupply',
      high: 'standbyAtLostLeg',
      none: 'standbyAtLostLeg',
      'not-taken': 'lowSupply',
    }),
    legTwoBesideDead: ask('volts-service-2', {
      'as-expected': 'standbyAtLostLeg',
      low: 'standbyAtLostLeg',
      high: 'standbyAtLostLeg',
      none: 'standbyAtDead',
      'not-taken': 'house',
    }),
    house: ask('house-power', {
      'all-works': 'undecided',
      'half-dead': 'standbyAtLostLeg',
      'all-dead': 'standbyAtDead',
      'not-taken': 'undecided',
    }),
    standbyAtLostLeg: ask('standby-position', {
      utility: 'lostLeg',
      generator: 'halfSupply',
      between: 'lostLeg',
      none: 'lostLeg',
      'not-taken': 'lostLegOrHalf',
    }),
    standbyAtDead: ask('standby-position', {
      utility: 'noSupply',
      generator: 'leftOnStandby',
      between: 'leftOnStandby',
      none: 'noSupply',
      'not-taken': 'noSupplyOrStandby',
    }),

    sound: clears('service'),
    noSupply: claims('supply-out'),
    leftOnStandby: claims('transfer-switch-left'),
    noSupplyOrStandby: claims('supply-out', 'transfer-switch-left'),
    lowSupply: claims('supply-low'),
    highSupply: claims('supply-high'),
    lostLeg: claims('supply-lost-leg'),
    halfSupply: claims('generator-single-phase'),
    lostLegOrHalf: claims('supply-lost-leg', 'generator-single-phase'),
    undecided: undecided('service'),
  },
});
