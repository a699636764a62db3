import { ask, claims, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * It takes more amps than it should, or starts slowly, with its starting parts let go. Why?
 *
 * Volts before windings, since low volts raise the amps of a sound motor; windings, insulation and the run
 * capacitor before the bearing, since they raise them too; and whatever else hangs on the circuit, since
 * the clamp counts it as the pump's. Then an ear at the casing, and the volts that arrive at the well. What
 * is left drags, or has too few shorted turns for an ordinary meter to see.
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
      'not-taken': 'undecided',
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
      'not-taken': 'undecided',
    }),
    leak: ask('insulation-system', {
      'as-expected': 'runCapacitor',
      low: 'leaks',
      high: 'runCapacitor',
      open: 'runCapacitor',
      'not-taken': 'runCapacitor',
    }),
    twoWireLeak: ask('insulation-two-wire', {
      'as-expected': 'loads',
      low: 'leaks',
      high: 'loads',
      open: 'loads',
      'not-taken': 'loads',
    }),
    runCapacitor: ask('run-capacitance', {
      'as-expected': 'case',
      low: 'runCapacitorOff',
      high: 'runCapacitorOff',
      open: 'runCapacitorOff',
      'not-taken': 'case',
    }),
    case: ask('ohms-capacitor-case', {
      'as-expected': 'loads',
      low: 'caseLeak',
      high: 'loads',
      open: 'loads',
      'not-taken': 'loads',
    }),
    loads: ask('other-loads', {
      'pump-only': 'residual',
      'heater-or-tape': 'circuit',
      other: 'circuit',
      'not-taken': 'residual',
    }),
    residual: ask('residual-line', {
      'as-expected': 'poleOne',
      low: 'poleOne',
      high: 'circuit',
      none: 'poleOne',
      'not-taken': 'poleOne',
    }),
    poleOne: ask('ohms-contactor-pole-1', {
      'as-expected': 'poleTwo',
      low: 'poleTwo',
      high: 'burntContacts',
      open: 'burntContacts',
      'not-taken': 'poleTwo',
    }),
    poleTwo: ask('ohms-contactor-pole-2', {
      'as-expected': 'casing',
      low: 'casing',
      high: 'burntContacts',
      open: 'burntContacts',
      'not-taken': 'casing',
    }),
    casing: ask('listen-casing', {
      steady: 'wellPair',
      spray: 'wellPair',
      gurgle: 'wellPair',
      rumble: 'rumbles',
      'not-taken': 'wellPair',
    }),
    wellPair: ask('volts-well-pair', {
      'as-expected': 'drags',
      low: 'loss',
      high: 'drags',
      none: 'drags',
      'not-taken': 'drags',
    }),

    runCapacitorOff: claims('run-capacitor-open', 'run-capacitor-weak', 'run-capacitor-shorted'),
    burntContacts: claims('contactor-contacts-resistive'),
    caseLeak: claims('capacitor-leaks-to-case'),
    drags: claims(
      'motor-drags',
      'pump-upthrust-worn',
      'rotor-bars-open',
      'main-turns-shorted',
      'start-turns-shorted',
    ),
    rumbles: claims('motor-drags', 'pump-upthrust-worn', 'pump-stages-melted'),
    loss: claims('cable-too-thin', 'buried-conductor-resistive', 'wellhead-splice-resistive'),
    circuit: handsOver('pump-circuit'),
    leaks: handsOver('ground-leak'),
    highSupply: claims('supply-high'),
    lossBefore: handsOver('pressure-switch'),
    lowSupply: handsOver('supply'),
    motor: handsOver('motor-and-cable'),
    undecided: undecided('high-load'),
  },
});
