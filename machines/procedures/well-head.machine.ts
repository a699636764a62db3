import { ask, claims, handsOver, tree, undecided } from './ask.ts';

/**
 * Three-wire: the box end reads wrong. Is it the buried run, the splice at the well head, or below?
 *
 * Look at the splice, then split there and read the same three pairs downwards. Good below means the
 * run from the box to the cap or the splice itself; the buried loop, tied at its far end, tells those
 * apart. Bad below is the drop or the motor, which nothing above ground tells apart on one lead.
 * A leak to ground is split in the same place, by a tree of its own.
 */
export const wellHead = tree.createMachine({
  id: 'well-head',
  initial: 'leak',
  states: {
    leak: ask('insulation-system', {
      'as-expected': 'look',
      low: 'grounded',
      high: 'look',
      open: 'look',
      'not-taken': 'look',
    }),

    look: ask('look-wellhead', {
      dry: 'main',
      wet: 'main',
      'open-joint': 'spliceOpen',
      'burnt-joint': 'spliceBurnt',
      pinched: 'pinched',
      'not-taken': 'main',
    }),
    main: ask('ohms-well-yellow-black', {
      'as-expected': 'start',
      low: 'shortedBelow',
      high: 'undecided',
      open: 'startBesideOpen',
      'not-taken': 'start',
    }),
    start: ask('ohms-well-yellow-red', {
      'as-expected': 'boxMain',
      low: 'shortedBelow',
      high: 'undecided',
      open: 'redBelow',
      'not-taken': 'boxMain',
    }),
    boxMain: ask('ohms-yellow-black', {
      'as-expected': 'boxStart',
      low: 'buriedShorted',
      high: 'boxStart',
      open: 'buriedMain',
      'not-taken': 'boxStart',
    }),
    boxStart: ask('ohms-yellow-red', {
      'as-expected': 'buriedMain',
      low: 'buriedShorted',
      high: 'buriedMain',
      open: 'buriedMain',
      'not-taken': 'buriedMain',
    }),
    startBesideOpen: ask('ohms-well-yellow-red', {
      'as-expected': 'blackBelow',
      low: 'blackBelow',
      high: 'blackBelow',
      open: 'thirdBesideOpen',
      'not-taken': 'below',
    }),
    thirdBesideOpen: ask('ohms-well-black-red', {
      'as-expected': 'yellowBelow',
      low: 'yellowBelow',
      high: 'yellowBelow',
      open: 'below',
      'not-taken': 'below',
    }),
    buriedMain: ask('ohms-buried-yellow-black', {
      'as-expected': 'buriedStart',
      low: 'buriedStart',
      high: 'buriedResistive',
      open: 'buriedOpen',
      'not-taken': 'buriedStart',
    }),
    buriedStart: ask('ohms-buried-yellow-red', {
      'as-expected': 'splice',
      low: 'splice',
      high: 'buriedResistive',
      open: 'buriedOpen',
      'not-taken': 'above',
    }),

    spliceOpen: claims('wellhead-splice-open'),
    spliceBurnt: claims('wellhead-splice-resistive'),
    splice: claims('wellhead-splice-open', 'wellhead-splice-resistive'),
    buriedOpen: claims('buried-conductor-open'),
    buriedResistive: claims('buried-conductor-resistive'),
    buriedShorted: claims('buried-conductors-shorted'),
    pinched: claims('cable-pinched'),
    above: claims(
      'buried-conductor-open',
      'buried-conductor-resistive',
      'wellhead-splice-open',
      'wellhead-splice-resistive',
    ),
    shortedBelow: claims(
      'main-turns-shorted',
      'start-turns-shorted',
      'winding-burnt',
      'drop-conductors-shorted',
    ),
    yellowBelow: claims('motor-protector-open', 'drop-conductor-open'),
    blackBelow: claims('winding-main-open', 'drop-conductor-open', 'motor-protector-open'),
    redBelow: claims('winding-start-open', 'drop-conductor-open'),
    below: claims('drop-conductor-open', 'winding-main-open', 'winding-start-open', 'motor-protector-open'),
    grounded: handsOver('ground-leak'),
    undecided: undecided('well-head'),
  },
});
