import { ask, claims, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * The motor runs and takes more than it should, with its starting parts let go. Why?
 *
 * Volts before windings, since low volts raise the amps of a sound motor; windings and
 * insulation before the bearing, since shorted turns and a leak raise them too. What is left drags, or has
 * too few shorted turns for an ordinary meter to see.
 */
export const highLoad = tree.createMachine({
  id: 'high-load',
  initial: 'line',
  states: {
    line: ask('volts-switch-load-pair', {
      'as-expected': 'leads',
      low: 'lossBefore',
      high: 'highSupply',
      none: 'undecided',
      'not-taken': 'leads',
      'not-here': 'boxLine',
    }),
    boxLine: ask('volts-box-line', {
      'as-expected': 'leads',
      low: 'lowSupply',
      high: 'highSupply',
      none: 'undecided',
      'not-taken': 'leads',
    }),
    leads: isHere('ohms-two-wire', 'twoWire', 'main'),
    main: ask('ohms-yellow-black', {
      'as-expected': 'start',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'drags',
    }),
    start: ask('ohms-yellow-red', {
      'as-expected': 'third',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'third',
    }),
    third: ask('ohms-black-red', {
      'as-expected': 'leak',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'leak',
    }),
    twoWire: ask('ohms-two-wire', {
      'as-expected': 'twoWireLeak',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'drags',
    }),
    leak: ask('insulation-system', {
      'as-expected': 'drags',
      low: 'motor',
      high: 'drags',
      open: 'drags',
      'not-taken': 'drags',
    }),
    twoWireLeak: ask('insulation-two-wire', {
      'as-expected': 'drags',
      low: 'motor',
      high: 'drags',
      open: 'drags',
      'not-taken': 'drags',
    }),

    drags: claims('motor-drags', 'main-turns-shorted'),
    highSupply: claims('supply-high'),
    lossBefore: handsOver('pressure-switch'),
    lowSupply: handsOver('supply'),
    motor: handsOver('motor-and-cable'),
    undecided: undecided('high-load'),
  },
});
