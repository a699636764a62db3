import { ask, claims, clears, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * The motor runs. Does it take what it should, lead by lead, and does it get its volts?
 *
 * Red first: it shows whether the starting parts let go and whether the run capacitor works. Then
 * the leads that carry the load, then volts under load. Amps never recognise exchanged leads; ohms
 * do, and with the insulation they close the round before anybody says that nothing is wrong.
 */
export const runningLoad = tree.createMachine({
  id: 'running-load',
  initial: 'listen',
  states: {
    listen: ask('motor-sound', {
      silence: 'notRunning',
      'click-only': 'notRunning',
      'hum-then-quiet': 'notStarting',
      'steady-hum': 'notStarting',
      runs: 'red',
      'not-taken': 'red',
    }),

    red: ask('amps-red', {
      'as-expected': 'yellow',
      low: 'runCapacitor',
      high: 'relayKind',
      none: 'runCapacitor',
      'not-taken': 'yellow',
    }),
    runCapacitor: ask('run-capacitance', {
      'as-expected': 'motor',
      low: 'runCapacitorGone',
      high: 'runCapacitorShorted',
      open: 'runCapacitorShorted',
      'not-taken': 'runCapacitorGone',
      'not-here': 'yellow',
    }),
    relayKind: isHere('ohms-relay-coil', 'relayCoil', 'senseShorted'),
    relayCoil: ask('ohms-relay-coil', {
      'as-expected': 'contactWelded',
      low: 'contactWelded',
      high: 'relayCoilOpen',
      open: 'relayCoilOpen',
      'not-taken': 'undecided',
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
      'as-expected': 'main',
      low: 'lossBefore',
      high: 'highSupply',
      none: 'undecided',
      'not-taken': 'main',
      'not-here': 'boxLine',
    }),
    boxLine: ask('volts-box-line', {
      'as-expected': 'main',
      low: 'lowSupply',
      high: 'highSupply',
      none: 'undecided',
      'not-taken': 'main',
    }),

    main: ask('ohms-yellow-black', {
      'as-expected': 'start',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'undecided',
      'not-here': 'twoWire',
    }),
    start: ask('ohms-yellow-red', {
      'as-expected': 'insulation',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'undecided',
    }),
    insulation: ask('insulation-system', {
      'as-expected': 'nothing',
      low: 'motor',
      high: 'nothing',
      open: 'nothing',
      'not-taken': 'undecided',
    }),
    twoWire: ask('ohms-two-wire', {
      'as-expected': 'twoWireInsulation',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'undecided',
    }),
    twoWireInsulation: ask('insulation-two-wire', {
      'as-expected': 'nothing',
      low: 'motor',
      high: 'nothing',
      open: 'nothing',
      'not-taken': 'undecided',
    }),

    nothing: claims('nothing-wrong'),
    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    runCapacitorShorted: claims('run-capacitor-shorted'),
    senseShorted: claims('sensing-relay-shorted'),
    contactWelded: claims('potential-relay-contact-welded'),
    relayCoilOpen: claims('potential-relay-coil-open'),
    highSupply: claims('supply-high'),
    highLoad: handsOver('high-load'),
    lossBefore: handsOver('pressure-switch'),
    lowSupply: handsOver('supply'),
    motor: handsOver('motor-and-cable'),
    notStarting: handsOver('starting-parts'),
    notRunning: clears('running-load'),
    undecided: undecided('running-load'),
  },
});
