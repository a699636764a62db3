import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * It starts too often. Has the tank lost its cushion?
 *
 * Count the starts, then one press of the air valve: water there is a torn bladder, in a minute and with
 * no cover opened. Look at tank and valves, time a fill, and only then drain the tank, since its charge
 * reads right only when it is empty of water. A tank that is charged right and gives little is choked, too
 * small, or served by a switch whose two settings have come together. Starts with no tap open are a leak,
 * and another tree's.
 */
export const tankAndCycling = tree.createMachine({
  id: 'tank-and-cycling',
  initial: 'cycling',
  states: {
    cycling: ask('cycling', {
      slow: 'unused',
      rapid: 'airValve',
      'does-not-stop': 'sound',
      'no-starts': 'sound',
      'not-taken': 'airValve',
    }),
    unused: ask('starts-unused', {
      no: 'airValve',
      yes: 'falls',
      'not-taken': 'airValve',
    }),
    airValve: ask('air-valve', {
      air: 'tank',
      water: 'tankBesideWater',
      'not-taken': 'tank',
    }),
    tankBesideWater: ask('look-tank', {
      light: 'waterlogged',
      heavy: 'waterlogged',
      'rusted-or-leaking': 'waterlogged',
      'plain-steel': 'airControl',
      'not-taken': 'waterlogged',
    }),
    tank: ask('look-tank', {
      light: 'valves',
      heavy: 'valves',
      'rusted-or-leaking': 'shell',
      'plain-steel': 'plainBucket',
      'not-taken': 'valves',
    }),
    plainBucket: ask('first-bucket', {
      clear: 'fill',
      air: 'airControl',
      none: 'fill',
      sand: 'fill',
      rust: 'fill',
      'not-taken': 'fill',
    }),
    valves: ask('look-valves', {
      'all-open': 'chatter',
      'house-valve-shut': 'chatter',
      'tank-valve-shut': 'tankShut',
      'check-above-ground': 'chatterBesideCheck',
      'switch-far-away': 'misplaced',
      'not-taken': 'chatter',
    }),
    chatterBesideCheck: ask('contact-chatter', {
      once: 'fill',
      several: 'checkBetween',
      'not-taken': 'fill',
    }),
    chatter: ask('contact-chatter', {
      once: 'fill',
      several: 'prechargeBesideChatter',
      'not-taken': 'fill',
    }),
    prechargeBesideChatter: ask('precharge', {
      'as-expected': 'chatters',
      low: 'chargedTooLow',
      high: 'chargedTooHigh',
      'not-taken': 'chatters',
    }),
    fill: ask('fill-time', {
      'as-expected': 'precharge',
      low: 'precharge',
      high: 'slowFill',
      open: 'slowFill',
      'not-taken': 'precharge',
    }),
    precharge: ask('precharge', {
      'as-expected': 'drawdown',
      low: 'chargedTooLow',
      high: 'chargedTooHigh',
      'not-taken': 'drawdown',
    }),
    drawdown: ask('drawdown-volume', {
      'as-expected': 'sound',
      low: 'cutOut',
      high: 'sound',
      'not-taken': 'undecided',
    }),
    cutOut: ask('cut-out-pressure', {
      'as-expected': 'givesLittle',
      low: 'settings',
      high: 'givesLittle',
      'not-taken': 'givesLittle',
    }),

    sound: clears('tank-and-cycling'),
    waterlogged: claims('tank-waterlogged'),
    airControl: claims('tank-air-control-failed'),
    shell: claims('tank-shell-leaks'),
    tankShut: claims('tank-valve-shut'),
    misplaced: claims('switch-misplaced'),
    checkBetween: claims('check-valve-doubled', 'switch-chatters'),
    chatters: claims('switch-chatters', 'tank-port-plugged', 'switch-differential-lost'),
    chargedTooLow: claims('tank-precharge-low'),
    chargedTooHigh: claims('tank-precharge-high'),
    givesLittle: claims('tank-port-plugged', 'tank-too-small', 'flow-control-stuck'),
    falls: handsOver('leak-down'),
    slowFill: handsOver('delivery'),
    settings: handsOver('settings-and-gauge'),
    undecided: undecided('tank-and-cycling'),
  },
});
