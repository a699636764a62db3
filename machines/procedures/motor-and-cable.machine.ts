import { ask, claims, clears, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * What do the three lead ohms say, read at the box with the leads lifted?
 *
 * The pattern of all three decides, never one of them: two pairs off name the lead that they share,
 * and a lead in the wrong place shows as three good values in the wrong pairs. Readings that fit no
 * pattern are to be taken again. An open lead is read once more after cooling before anybody opens
 * the well, because a hot protector reads open too.
 */
export const motorAndCable = tree.createMachine({
  id: 'motor-and-cable',
  initial: 'main',
  states: {
    main: ask('ohms-yellow-black', {
      'as-expected': 'startBesideGood',
      low: 'startBesideLow',
      high: 'startBesideHigh',
      open: 'startBesideOpen',
      'not-taken': 'startAlone',
      'not-here': 'twoWire',
    }),

    startBesideGood: ask('ohms-yellow-red', {
      'as-expected': 'thirdBesideGood',
      low: 'thirdBesideStartLow',
      high: 'thirdBesideStartHigh',
      open: 'thirdBesideRedOpen',
      'not-taken': 'thirdBesideGood',
    }),
    thirdBesideGood: ask('ohms-black-red', {
      'as-expected': 'insulation',
      low: 'exchangedOrShorted',
      high: 'takeAgain',
      open: 'takeAgain',
      'not-taken': 'insulation',
    }),
    thirdBesideStartLow: ask('ohms-black-red', {
      'as-expected': 'wellHead',
      low: 'wellHead',
      high: 'takeAgain',
      open: 'takeAgain',
      'not-taken': 'wellHead',
    }),
    thirdBesideStartHigh: ask('ohms-black-red', {
      'as-expected': 'exchangedOrJoint',
      low: 'exchanged',
      high: 'wellHead',
      open: 'takeAgain',
      'not-taken': 'wellHead',
    }),
    thirdBesideRedOpen: ask('ohms-black-red', {
      'as-expected': 'takeAgain',
      low: 'takeAgain',
      high: 'takeAgain',
      open: 'wellHead',
      'not-taken': 'wellHead',
    }),

    startBesideLow: ask('ohms-yellow-red', {
      'as-expected': 'thirdBesideMainLow',
      low: 'wellHead',
      high: 'thirdBesideMainLow',
      open: 'wellHead',
      'not-taken': 'thirdBesideMainLow',
    }),
    thirdBesideMainLow: ask('ohms-black-red', {
      'as-expected': 'wellHead',
      low: 'wellHead',
      high: 'takeAgain',
      open: 'takeAgain',
      'not-taken': 'wellHead',
    }),

    startBesideHigh: ask('ohms-yellow-red', {
      'as-expected': 'thirdBesideBlackHigh',
      low: 'exchanged',
      high: 'thirdBesideYellowHigh',
      open: 'wellHead',
      'not-taken': 'thirdBesideBlackHigh',
    }),
    thirdBesideBlackHigh: ask('ohms-black-red', {
      'as-expected': 'wellHead',
      low: 'exchanged',
      high: 'wellHead',
      open: 'takeAgain',
      'not-taken': 'wellHead',
    }),
    thirdBesideYellowHigh: ask('ohms-black-red', {
      'as-expected': 'wellHead',
      low: 'exchanged',
      high: 'wellHead',
      open: 'takeAgain',
      'not-taken': 'wellHead',
    }),

    startBesideOpen: ask('ohms-yellow-red', {
      'as-expected': 'thirdBesideBlackOpen',
      low: 'thirdBesideBlackOpen',
      high: 'thirdBesideBlackOpen',
      open: 'thirdBesideYellowOpen',
      'not-taken': 'thirdBesideYellowOpen',
    }),
    thirdBesideBlackOpen: ask('ohms-black-red', {
      'as-expected': 'takeAgain',
      low: 'takeAgain',
      high: 'takeAgain',
      open: 'protectorInside',
      'not-taken': 'protectorInside',
    }),
    thirdBesideYellowOpen: ask('ohms-black-red', {
      'as-expected': 'protectorInside',
      low: 'protectorInside',
      high: 'protectorInside',
      open: 'wellHead',
      'not-taken': 'protectorInside',
    }),
    /** A motor that a contactor box feeds has no protector of its own, so nothing can be hot. */
    protectorInside: isHere('contactor-position', 'wellHead', 'afterCool'),
    afterCool: ask('ohms-after-cool-yellow-black', {
      'as-expected': 'cycling',
      low: 'cycling',
      high: 'cycling',
      open: 'wellHead',
      'not-taken': 'undecided',
    }),

    startAlone: ask('ohms-yellow-red', {
      'as-expected': 'thirdAlone',
      low: 'wellHead',
      high: 'thirdBesideYellowHigh',
      open: 'thirdBesideYellowOpen',
      'not-taken': 'leak',
    }),
    thirdAlone: ask('ohms-black-red', {
      'as-expected': 'insulation',
      low: 'exchangedOrShorted',
      high: 'wellHead',
      open: 'protectorInside',
      'not-taken': 'leak',
    }),
    insulation: ask('insulation-system', {
      'as-expected': 'sound',
      low: 'wellHead',
      high: 'sound',
      open: 'sound',
      'not-taken': 'undecided',
    }),

    leak: ask('insulation-system', {
      'as-expected': 'undecided',
      low: 'wellHead',
      high: 'undecided',
      open: 'undecided',
      'not-taken': 'undecided',
    }),

    /** Three readings that fit no pattern: the leads of the meter before the motor. */
    takeAgain: ask('lead-null', {
      'steady-low': 'undecided',
      'high-or-unsteady': 'meter',
      'not-taken': 'undecided',
    }),

    sound: clears('motor-and-cable'),
    meter: claims('meter-wrong'),
    exchanged: claims('leads-exchanged'),
    exchangedOrJoint: claims('leads-exchanged', 'wellhead-splice-resistive', 'buried-conductor-resistive'),
    exchangedOrShorted: claims('leads-exchanged', 'main-turns-shorted', 'start-turns-shorted'),
    cycling: claims('motor-protector-cycling'),
    wellHead: handsOver('well-head'),
    twoWire: handsOver('two-wire-motor'),
    undecided: undecided('motor-and-cable'),
  },
});
