import { ask, claims, handsOver, tree, undecided } from './ask.ts';

/**
 * Motor, box and cable are sound, and nothing is on its way out. Does the water do what it should too?
 *
 * Taps, rest, bucket, one timed fill and the charge of the drained tank: what the electrical round cannot
 * see. Only after this may it be said that nothing is wrong.
 */
export const waterRound = tree.createMachine({
  id: 'water-round',
  initial: 'taps',
  states: {
    taps: ask('water-anywhere', {
      none: 'delivery',
      weak: 'delivery',
      pulsing: 'tank',
      normal: 'stops',
      'one-place-only': 'house',
      'comes-and-goes': 'well',
      'not-taken': 'undecided',
    }),
    stops: ask('pump-stops', {
      stops: 'unused',
      'never-stops': 'settings',
      'never-starts': 'settings',
      'not-taken': 'undecided',
    }),
    unused: ask('starts-unused', {
      no: 'bucket',
      yes: 'leak',
      'not-taken': 'undecided',
    }),
    bucket: ask('first-bucket', {
      clear: 'fill',
      air: 'well',
      none: 'delivery',
      sand: 'well',
      rust: 'well',
      'not-taken': 'undecided',
    }),
    fill: ask('fill-time', {
      'as-expected': 'precharge',
      low: 'tank',
      high: 'delivery',
      open: 'delivery',
      'not-taken': 'undecided',
    }),
    precharge: ask('precharge', {
      'as-expected': 'nothing',
      low: 'chargedTooLow',
      high: 'chargedTooHigh',
      'not-taken': 'undecided',
    }),

    nothing: claims('nothing-wrong'),
    chargedTooLow: claims('tank-precharge-low'),
    chargedTooHigh: claims('tank-precharge-high'),
    tank: handsOver('tank-and-cycling'),
    house: handsOver('house-side'),
    leak: handsOver('leak-down'),
    settings: handsOver('settings-and-gauge'),
    delivery: handsOver('delivery'),
    well: handsOver('well'),
    undecided: undecided('water-round'),
  },
});
