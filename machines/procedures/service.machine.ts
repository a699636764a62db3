import { ask, claims, clears, tree, undecided } from './ask.ts';

/**
 * The supply itself is wrong before it reaches the breaker: how?
 *
 * Pair first, then each leg to neutral. One leg gone and both gone look alike at the pump, and so
 * does a standby supply that feeds one leg only: where it stands is looked at before anybody calls
 * the utility. Legs that are unequal, one up and one down, have lost the neutral between them.
 */
export const service = tree.createMachine({
  id: 'service',
  initial: 'pair',
  states: {
    pair: ask('volts-service-pair', {
      'as-expected': 'legOneBesideGood',
      low: 'legOne',
      high: 'highSupply',
      none: 'legOne',
      'not-taken': 'house',
    }),
    legOne: ask('volts-service-1', {
      'as-expected': 'legTwoBesideGood',
      low: 'legTwoBesideLow',
      high: 'neutralOpen',
      none: 'legTwoBesideDead',
      'not-taken': 'house',
    }),
    legOneBesideGood: ask('volts-service-1', {
      'as-expected': 'sound',
      low: 'neutralOpen',
      high: 'neutralOpen',
      none: 'standbyAtLostLeg',
      'not-taken': 'sound',
    }),
    legTwoBesideLow: ask('volts-service-2', {
      'as-expected': 'unequalLegs',
      low: 'lowSupply',
      high: 'neutralOpen',
      none: 'standbyAtLostLeg',
      'not-taken': 'lowSupply',
    }),
    legTwoBesideGood: ask('volts-service-2', {
      'as-expected': 'standbyAtLostLeg',
      low: 'unequalLegs',
      high: 'neutralOpen',
      none: 'standbyAtLostLeg',
      'not-taken': 'standbyAtLostLeg',
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
    lowSupply: claims('supply-low', 'motor-wrong-volts'),
    highSupply: claims('supply-high'),
    lostLeg: claims('supply-lost-leg'),
    neutralOpen: claims('supply-neutral-open'),
    unequalLegs: claims('supply-neutral-open', 'supply-lost-leg'),
    halfSupply: claims('generator-single-phase', 'battery-supply-island'),
    lostLegOrHalf: claims('supply-lost-leg', 'generator-single-phase', 'battery-supply-island'),
    undecided: undecided('service'),
  },
});
