import { ask, claims, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * The motor runs and takes more than it should, with its starting parts let go. Why?
 *
 * Volts before windings, since low volts raise the amps of a sound motor; windings before the
 * bearing, since shorted turns raise them too. What is left is something that drags.
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
      'as-expected': 'drags',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'dragsOrTurns',
    }),
    twoWire: ask('ohms-two-wire', {
      'as-expected': 'drags',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'dragsOrTurns',
    }),

    drags: claims('motor-drags'),
    dragsOrTurns: claims('motor-drags', 'main-turns-shorted'),
    highSupply: claims('supply-high'),
    lossBefore: handsOver('pressure-switch'),
    lowSupply: handsOver('supply'),
    motor: handsOver('motor-and-cable'),
    undecided: undecided('high-load'),
  },
});
