import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * The motor runs and little or no water comes. Where does it go?
 *
 * Look and listen first: what comes out of the tap, and ice on the line. Nothing at all: the clamp and
 * a look at what the well head gives say whether it is stopped above ground. Weak: the house is shut off
 * before anybody blames the well, and the gauge is watched with the pump off before anybody blames the
 * pump, since a hole in the pipe looks like a worn pump until then. Everything further down is left to
 * the trees that open the well.
 */
export const delivery = tree.createMachine({
  id: 'delivery',
  initial: 'sound',
  states: {
    sound: ask('motor-sound', {
      silence: 'notRunning',
      'click-only': 'notRunning',
      'rapid-clicking': 'notRunning',
      'hum-then-quiet': 'notRunning',
      'steady-hum': 'notRunning',
      runs: 'looks',
      'not-taken': 'looks',
    }),
    looks: ask('water-looks', {
      clear: 'plateau',
      air: 'well',
      none: 'freeze',
      sand: 'well',
      milky: 'well',
      rusty: 'plateau',
      'not-taken': 'plateau',
    }),

    freeze: ask('look-freeze', {
      'above-freezing': 'ampsNone',
      frozen: 'frozen',
      'not-taken': 'ampsNone',
    }),
    ampsNone: ask('amps-line', {
      'as-expected': 'discharge',
      low: 'discharge',
      high: 'highLoad',
      none: 'notRunning',
      'not-taken': 'discharge',
    }),
    discharge: ask('open-discharge', {
      'as-expected': 'house',
      low: 'well',
      high: 'house',
      'not-taken': 'well',
    }),

    plateau: ask('plateau-pressure', {
      'as-expected': 'fill',
      low: 'isolate',
      high: 'settings',
      'not-taken': 'isolate',
    }),
    fill: ask('fill-time', {
      'as-expected': 'house',
      low: 'house',
      high: 'amps',
      open: 'isolate',
      'not-taken': 'isolate',
    }),
    isolate: ask('isolate-house', {
      fills: 'house',
      'still-low': 'amps',
      'never-runs': 'notRunning',
      'not-taken': 'amps',
    }),
    amps: ask('amps-line', {
      'as-expected': 'falls',
      low: 'falls',
      high: 'highLoad',
      none: 'notRunning',
      'not-taken': 'falls',
    }),
    falls: ask('leak-down-isolated', {
      'as-expected': 'well',
      low: 'well',
      high: 'leak',
      'not-taken': 'casing',
    }),
    casing: ask('listen-casing', {
      steady: 'well',
      spray: 'leak',
      gurgle: 'well',
      rumble: 'highLoad',
      'not-taken': 'undecided',
    }),

    frozen: claims('line-frozen', 'heat-tape-failed'),
    house: handsOver('house-side'),
    leak: handsOver('leak-down'),
    well: handsOver('well'),
    highLoad: handsOver('high-load'),
    settings: handsOver('settings-and-gauge'),
    notRunning: clears('delivery'),
    undecided: undecided('delivery'),
  },
});
