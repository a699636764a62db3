import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * The motor runs. Does it take what it should, lead by lead, and does it get its volts?
 *
 * Red first: it shows whether the starting parts let go and whether the run capacitor works. Then the
 * leads that carry the load, then volts under load. Amps never recognise exchanged leads; ohms do.
 */
export const runningLoad = tree.createMachine({
  id: 'running-load',
  initial: 'listen',
  states: {
    listen: ask('motor-sound', {
      silence: 'notRunning',
      'click-only': 'notRunning',
      'rapid-clicking': 'chatters',
      'hum-then-quiet': 'notStarting',
      'steady-hum': 'notStarting',
      runs: 'red',
      'not-taken': 'red',
    }),

    red: ask('amps-red', {
      'as-expected': 'yellow',
      low: 'runCapacitorInService',
      high: 'yellowBesideHighRed',
      none: 'runCapacitorInService',
      'not-taken': 'yellow',
    }),
    /** A motor that turns nothing shows more in red and less in yellow. */
    yellowBesideHighRed: ask('amps-yellow', {
      'as-expected': 'heldIn',
      low: 'unloaded',
      high: 'heldIn',
      none: 'notRunning',
      'not-taken': 'heldIn',
    }),
    /** Where it can be read running, a good one needs no stop. */
    runCapacitorInService: ask('run-capacitor-in-service', {
      'as-expected': 'yellow',
      low: 'runCapacitor',
      high: 'runCapacitor',
      open: 'runCapacitor',
      'not-taken': 'runCapacitor',
    }),
    runCapacitor: ask('run-capacitance', {
      'as-expected': 'yellow',
      low: 'runCapacitorGone',
      high: 'runCapacitorShorted',
      open: 'runCapacitorShorted',
      'not-taken': 'runCapacitorGone',
      'not-here': 'yellow',
    }),

    yellow: ask('amps-yellow', {
      'as-expected': 'line',
      low: 'line',
      high: 'highLoad',
      none: 'notRunning',
      'not-taken': 'line',
      'not-here': 'lineAmps',
    }),
    lineAmps: ask('amps-line', {
      'as-expected': 'line',
      low: 'line',
      high: 'highLoad',
      none: 'notRunning',
      'not-taken': 'line',
    }),

    line: ask('volts-switch-load-pair', {
      'as-expected': 'lastRound',
      low: 'lossBefore',
      high: 'highSupply',
      none: 'undecided',
      'not-taken': 'lastRound',
      'not-here': 'boxLine',
    }),
    boxLine: ask('volts-box-line', {
      'as-expected': 'lastRound',
      low: 'lowSupply',
      high: 'highSupply',
      none: 'undecided',
      'not-taken': 'lastRound',
    }),

    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    runCapacitorShorted: claims('run-capacitor-shorted'),
    highSupply: claims('supply-high'),
    lastRound: handsOver('last-round'),
    unloaded: handsOver('delivery'),
    heldIn: handsOver('start-held-in'),
    highLoad: handsOver('high-load'),
    chatters: handsOver('tank-and-cycling'),
    lossBefore: handsOver('pressure-switch'),
    lowSupply: handsOver('supply'),
    notStarting: handsOver('starting-parts'),
    notRunning: clears('running-load'),
    undecided: undecided('running-load'),
  },
});
