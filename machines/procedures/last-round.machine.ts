import { ask, claims, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * It runs, with the amps and volts that it should have. May it be said that nothing is wrong?
 *
 * Only after a whole round: windings and insulation, the drop of one switch pole against the other
 * while it runs, the capacitors, the contactor poles and whatever else hangs on the circuit. A part
 * that is on its way out shows here and nowhere else. What comes only at times is left to the tree after it.
 */
export const lastRound = tree.createMachine({
  id: 'last-round',
  initial: 'main',
  states: {
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
      'as-expected': 'dropOne',
      low: 'motor',
      high: 'dropOne',
      open: 'dropOne',
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
      'as-expected': 'dropOne',
      low: 'motor',
      high: 'dropOne',
      open: 'dropOne',
      'not-taken': 'undecided',
    }),

    dropOne: ask('volts-pole-1', {
      'as-expected': 'dropTwo',
      low: 'dropTwo',
      high: 'dropTwoBesideHigh',
      none: 'dropTwo',
      'not-taken': 'undecided',
      'not-here': 'dropTwo',
    }),
    dropTwoBesideHigh: ask('volts-pole-2', {
      'as-expected': 'burntPoints',
      low: 'burntPoints',
      high: 'box',
      none: 'burntPoints',
      'not-taken': 'burntPoints',
    }),
    dropTwo: ask('volts-pole-2', {
      'as-expected': 'box',
      low: 'box',
      high: 'burntPoints',
      none: 'box',
      'not-taken': 'undecided',
      'not-here': 'box',
    }),

    box: ask('look-box', {
      clean: 'startCapacitor',
      'lid-unseated': 'burntJoint',
      'vented-capacitor': 'startCapacitor',
      'burnt-blade': 'burntJoint',
      wet: 'boxWet',
      'overload-button-out': 'overload',
      'not-taken': 'startCapacitor',
    }),
    startCapacitor: ask('start-capacitance', {
      'as-expected': 'runCapacitor',
      low: 'capacitorGone',
      high: 'capacitorShorted',
      open: 'capacitorShorted',
      'not-taken': 'undecided',
      'not-here': 'runCapacitor',
    }),
    runCapacitor: ask('run-capacitance', {
      'as-expected': 'case',
      low: 'runCapacitorGone',
      high: 'capacitorShorted',
      open: 'capacitorShorted',
      'not-taken': 'undecided',
      'not-here': 'contactor',
    }),
    case: ask('ohms-capacitor-case', {
      'as-expected': 'contactor',
      low: 'caseLeak',
      high: 'contactor',
      open: 'contactor',
      'not-taken': 'contactor',
    }),
    contactor: isHere('ohms-contactor-pole-1', 'poleOne', 'branchOne'),
    poleOne: ask('ohms-contactor-pole-1', {
      'as-expected': 'poleTwo',
      low: 'poleTwo',
      high: 'burntContacts',
      open: 'burntContacts',
      'not-taken': 'undecided',
    }),
    poleTwo: ask('ohms-contactor-pole-2', {
      'as-expected': 'branchOne',
      low: 'branchOne',
      high: 'burntContacts',
      open: 'burntContacts',
      'not-taken': 'undecided',
    }),
    branchOne: ask('ohms-branch-1', {
      'as-expected': 'branchTwo',
      low: 'circuit',
      high: 'branchTwo',
      open: 'branchTwo',
      'not-taken': 'nothing',
    }),
    branchTwo: ask('ohms-branch-2', {
      'as-expected': 'nothing',
      low: 'circuit',
      high: 'nothing',
      open: 'nothing',
      'not-taken': 'nothing',
    }),

    boxWet: claims('box-wet'),
    burntPoints: claims('switch-contacts-resistive'),
    burntJoint: claims('lid-contact-burnt', 'box-terminal-loose', 'lid-unseated'),
    burntContacts: claims('contactor-contacts-resistive'),
    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    capacitorGone: claims('start-capacitor-open', 'start-capacitor-weak'),
    capacitorShorted: claims('start-capacitor-shorted', 'run-capacitor-shorted'),
    caseLeak: claims('capacitor-leaks-to-case'),
    circuit: handsOver('pump-circuit'),
    nothing: handsOver('on-the-way-out'),
    motor: handsOver('motor-and-cable'),
    overload: handsOver('overloads'),
    undecided: undecided('last-round'),
  },
});
