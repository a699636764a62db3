import { ask, claims, clears, handsOver, tree } from './ask.ts';

/**
 * The breaker opened. What made it open?
 *
 * It is not closed to see what happens: insulation and windings come before the one reset. Then, in
 * the same dead round, the capacitors, the relay and whatever else hangs on the circuit. When all of
 * it reads right, the motor may still be unable to turn; the one trial start tells.
 */
export const trips = tree.createMachine({
  id: 'trips',
  initial: 'lever',
  states: {
    lever: ask('breaker-lever', {
      on: 'notTripped',
      middle: 'insulation',
      off: 'insulation',
      'not-seen': 'insulation',
      'not-taken': 'insulation',
    }),
    insulation: ask('insulation-system', {
      'as-expected': 'main',
      low: 'motor',
      high: 'main',
      open: 'main',
      'not-taken': 'motor',
      'not-here': 'twoWireInsulation',
    }),
    twoWireInsulation: ask('insulation-two-wire', {
      'as-expected': 'twoWire',
      low: 'motor',
      high: 'twoWire',
      open: 'twoWire',
      'not-taken': 'motor',
    }),
    main: ask('ohms-yellow-black', {
      'as-expected': 'start',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'motor',
    }),
    start: ask('ohms-yellow-red', {
      'as-expected': 'startCapacitor',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'startCapacitor',
    }),
    twoWire: ask('ohms-two-wire', {
      'as-expected': 'branchOne',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'motor',
    }),
    startCapacitor: ask('start-capacitance', {
      'as-expected': 'relayContact',
      low: 'capacitorGone',
      high: 'capacitorShorted',
      open: 'capacitorShorted',
      'not-taken': 'relayContact',
    }),
    relayContact: ask('ohms-relay-contact', {
      'as-expected': 'runCapacitor',
      low: 'runCapacitor',
      high: 'contactOpen',
      open: 'contactOpen',
      'not-taken': 'runCapacitor',
    }),
    runCapacitor: ask('run-capacitance', {
      'as-expected': 'case',
      low: 'runCapacitorGone',
      high: 'runCapacitorShorted',
      open: 'runCapacitorShorted',
      'not-taken': 'case',
    }),
    case: ask('ohms-capacitor-case', {
      'as-expected': 'branchOne',
      low: 'caseLeak',
      high: 'branchOne',
      open: 'branchOne',
      'not-taken': 'branchOne',
    }),
    branchOne: ask('ohms-branch-1', {
      'as-expected': 'branchTwo',
      low: 'arrester',
      high: 'branchTwo',
      open: 'branchTwo',
      'not-taken': 'branchTwo',
    }),
    branchTwo: ask('ohms-branch-2', {
      'as-expected': 'trippedClear',
      low: 'arrester',
      high: 'trippedClear',
      open: 'trippedClear',
      'not-taken': 'trippedClear',
    }),

    notTripped: clears('trips'),
    trippedClear: claims('breaker-tripped', 'rotor-locked', 'start-switch-inside-failed'),
    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    runCapacitorShorted: claims('run-capacitor-shorted'),
    capacitorGone: claims('start-capacitor-open', 'start-capacitor-weak'),
    capacitorShorted: claims('start-capacitor-shorted'),
    contactOpen: claims('potential-relay-contact-open'),
    caseLeak: claims('capacitor-leaks-to-case'),
    arrester: claims('arrester-failed'),
    motor: handsOver('motor-and-cable'),
  },
});
