import { ask, claims, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * It runs and red stays high: the start branch is held in. By the relay, or by something else?
 *
 * A relay that never gets the volts to pick up is no bad relay, and a leak, a shorted capacitor or
 * shorted turns look the same on the clamp. All of them are read before the relay is claimed.
 */
export const startHeldIn = tree.createMachine({
  id: 'start-held-in',
  initial: 'line',
  states: {
    line: ask('volts-switch-load-pair', {
      'as-expected': 'contactor',
      low: 'lossBefore',
      high: 'highSupply',
      none: 'undecided',
      'not-taken': 'contactor',
      'not-here': 'boxLine',
    }),
    boxLine: ask('volts-box-line', {
      'as-expected': 'contactor',
      low: 'lowSupply',
      high: 'highSupply',
      none: 'undecided',
      'not-taken': 'contactor',
    }),
    contactor: isHere('ohms-contactor-pole-1', 'poleOne', 'leak'),
    poleOne: ask('ohms-contactor-pole-1', {
      'as-expected': 'poleTwo',
      low: 'poleTwo',
      high: 'burntContacts',
      open: 'burntContacts',
      'not-taken': 'poleTwo',
    }),
    poleTwo: ask('ohms-contactor-pole-2', {
      'as-expected': 'leak',
      low: 'leak',
      high: 'burntContacts',
      open: 'burntContacts',
      'not-taken': 'leak',
    }),

    leak: ask('insulation-system', {
      'as-expected': 'main',
      low: 'motor',
      high: 'main',
      open: 'main',
      'not-taken': 'main',
    }),
    main: ask('ohms-yellow-black', {
      'as-expected': 'start',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'start',
    }),
    start: ask('ohms-yellow-red', {
      'as-expected': 'third',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'third',
    }),
    third: ask('ohms-black-red', {
      'as-expected': 'startCapacitor',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'startCapacitor',
    }),

    startCapacitor: ask('start-capacitance', {
      'as-expected': 'runCapacitor',
      low: 'capacitorGone',
      high: 'capacitorShorted',
      open: 'capacitorShorted',
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
      'as-expected': 'relayKind',
      low: 'caseLeak',
      high: 'relayKind',
      open: 'relayKind',
      'not-taken': 'relayKind',
    }),
    relayKind: isHere('ohms-relay-coil', 'relayCoil', 'senseShorted'),
    relayCoil: ask('ohms-relay-coil', {
      'as-expected': 'coilVolts',
      low: 'coilVolts',
      high: 'relayCoilOpen',
      open: 'relayCoilOpen',
      'not-taken': 'relay',
    }),
    coilVolts: ask('volts-relay-coil', {
      'as-expected': 'contactWelded',
      low: 'relay',
      high: 'relay',
      none: 'relay',
      'not-taken': 'contactWelded',
    }),

    burntContacts: claims('contactor-contacts-resistive'),
    highSupply: claims('supply-high'),
    capacitorGone: claims('start-capacitor-open', 'start-capacitor-weak'),
    capacitorShorted: claims('start-capacitor-shorted'),
    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    runCapacitorShorted: claims('run-capacitor-shorted'),
    caseLeak: claims('capacitor-leaks-to-case'),
    senseShorted: claims('sensing-relay-shorted'),
    contactWelded: claims('potential-relay-contact-welded', 'potential-relay-wrong'),
    relayCoilOpen: claims('potential-relay-coil-open'),
    relay: claims('potential-relay-contact-welded', 'potential-relay-coil-open', 'potential-relay-wrong'),
    lossBefore: handsOver('pressure-switch'),
    lowSupply: handsOver('supply'),
    motor: handsOver('motor-and-cable'),
    undecided: undecided('start-held-in'),
  },
});
