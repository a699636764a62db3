import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Two-wire: one pair of leads, and the start switch out of reach inside the motor.
 *
 * One ohm reading and the insulation at the switch, before any stall. Open means cool first, then
 * split at the well head. Right ohms in a motor that hums is the start switch inside or something
 * bound, which nothing at the surface tells apart.
 */
export const twoWireMotor = tree.createMachine({
  id: 'two-wire-motor',
  initial: 'pair',
  states: {
    pair: ask('ohms-two-wire', {
      'as-expected': 'insulation',
      low: 'belowLow',
      high: 'look',
      open: 'afterCool',
      'not-taken': 'insulation',
    }),
    insulation: ask('insulation-two-wire', {
      'as-expected': 'listen',
      low: 'leaks',
      high: 'listen',
      open: 'listen',
      'not-taken': 'listen',
    }),
    listen: ask('motor-sound', {
      silence: 'sound',
      'click-only': 'sound',
      'rapid-clicking': 'sound',
      'hum-then-quiet': 'bound',
      'steady-hum': 'bound',
      runs: 'sound',
      'not-taken': 'bound',
    }),
    belowLow: ask('ohms-well-two-wire', {
      'as-expected': 'buriedShorted',
      low: 'shortedBelow',
      high: 'undecided',
      open: 'undecided',
      'not-taken': 'shorted',
    }),

    afterCool: ask('ohms-after-cool-two-wire', {
      'as-expected': 'cycling',
      low: 'cycling',
      high: 'cycling',
      open: 'look',
      'not-taken': 'undecided',
    }),
    look: ask('look-wellhead', {
      dry: 'below',
      wet: 'below',
      'open-joint': 'spliceOpen',
      'burnt-joint': 'spliceBurnt',
      pinched: 'pinched',
      'not-taken': 'below',
    }),
    below: ask('ohms-well-two-wire', {
      'as-expected': 'buried',
      low: 'buried',
      high: 'undecided',
      open: 'openBelow',
      'not-taken': 'buried',
    }),
    buried: ask('ohms-buried-two-wire', {
      'as-expected': 'splice',
      low: 'splice',
      high: 'buriedResistive',
      open: 'buriedOpen',
      'not-taken': 'above',
    }),

    sound: clears('two-wire-motor'),
    shorted: claims(
      'main-turns-shorted',
      'winding-burnt',
      'drop-conductors-shorted',
      'buried-conductors-shorted',
    ),
    shortedBelow: claims('main-turns-shorted', 'winding-burnt', 'drop-conductors-shorted'),
    cycling: claims('motor-protector-cycling'),
    openBelow: claims('drop-conductor-open', 'winding-main-open', 'motor-protector-open'),
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
    bound: handsOver('bound-pump'),
    leaks: handsOver('ground-leak'),
    undecided: undecided('two-wire-motor'),
  },
});
