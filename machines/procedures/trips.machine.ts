import { ask, claims, clears, handsOver, tree } from './ask.ts';

/**
 * The breaker opened. What made it open?
 *
 * It is not closed to see what happens: insulation and windings come before the one reset. Then, in
 * the same dead round, the capacitors and the relay. When all of it reads right, the rest of the circuit and
 * the breaker itself are looked at; the one trial start, last of all, tells the rest.
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
      'as-expected': 'box',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'box',
    }),
    twoWire: ask('ohms-two-wire', {
      'as-expected': 'circuit',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'motor',
    }),
    box: ask('look-box', {
      clean: 'startCapacitor',
      'lid-unseated': 'startCapacitor',
      'vented-capacitor': 'startCapacitor',
      'burnt-blade': 'startCapacitor',
      wet: 'boxWet',
      'overload-button-out': 'startCapacitor',
      'not-taken': 'startCapacitor',
    }),
    startCapacitor: ask('start-capacitance', {
      'as-expected': 'relayContact',
      low: 'capacitorGone',
      high: 'capacitorShorted',
      open: 'capacitorShorted',
      'not-taken': 'kick',
      'not-here': 'relayContact',
    }),
    kick: ask('capacitor-kick', {
      'jumps-then-climbs': 'relayContact',
      'stays-low': 'capacitorShorted',
      'no-jump': 'capacitorGone',
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
      'as-expected': 'circuit',
      low: 'caseLeak',
      high: 'circuit',
      open: 'circuit',
      'not-taken': 'circuit',
    }),

    notTripped: clears('trips'),
    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    runCapacitorShorted: claims('run-capacitor-shorted'),
    capacitorGone: claims('start-capacitor-open', 'start-capacitor-weak'),
    capacitorShorted: claims('start-capacitor-shorted'),
    contactOpen: claims('potential-relay-contact-open'),
    caseLeak: claims('capacitor-leaks-to-case'),
    boxWet: claims('box-wet'),
    circuit: handsOver('pump-circuit'),
    motor: handsOver('motor-and-cable'),
  },
});
