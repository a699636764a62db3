import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * If anything leaks, has it a way back? Nothing tells until it does.
 *
 * The bond on the casing is looked at, hands off. Then the ground wire is read from the panel to the
 * motor, and volts are looked for on the casing. Volts there with a whole ground wire come from a leak or
 * from the neutral of the supply.
 */
export const groundPath = tree.createMachine({
  id: 'ground-path',
  initial: 'bond',
  states: {
    bond: ask('casing-bond', {
      bonded: 'wire',
      'not-bonded': 'notBonded',
      'not-taken': 'wire',
    }),
    wire: ask('ohms-ground-path', {
      'as-expected': 'casing',
      low: 'casing',
      high: 'wireOpen',
      open: 'wireOpen',
      'not-taken': 'casing',
    }),
    casing: ask('volts-casing-earth', {
      none: 'residual',
      some: 'leg',
      'not-taken': 'residual',
    }),
    leg: ask('volts-service-1', {
      'as-expected': 'leaks',
      low: 'service',
      high: 'service',
      none: 'service',
      'not-taken': 'leaks',
    }),
    residual: ask('residual-line', {
      'as-expected': 'neutral',
      low: 'neutral',
      high: 'leaks',
      none: 'neutral',
      'not-taken': 'neutral',
    }),
    neutral: ask('ohms-neutral-ground', {
      'as-expected': 'sound',
      low: 'neutralGrounded',
      high: 'sound',
      open: 'sound',
      'not-taken': 'undecided',
      'not-here': 'sound',
    }),

    sound: clears('ground-path'),
    notBonded: claims('casing-not-bonded'),
    wireOpen: claims('ground-wire-open'),
    neutralGrounded: claims('ground-fault-breaker-trips'),
    leaks: handsOver('ground-leak'),
    service: handsOver('service'),
    undecided: undecided('ground-path'),
  },
});
