import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Something opened to protect the circuit: a breaker, or an overload in the box. What made it open?
 *
 * Insulation and windings come before any reset. An overload is read before its button is touched,
 * since pressing it destroys the only trace. An open overload is seldom the fault itself: the
 * capacitors that would have made the motor draw too much are read before it is claimed.
 */
export const overloads = tree.createMachine({
  id: 'overloads',
  initial: 'lever',
  states: {
    lever: ask('breaker-lever', {
      on: 'main',
      middle: 'tripped',
      off: 'tripped',
      'not-seen': 'main',
      'not-taken': 'main',
    }),

    main: ask('ohms-main-overload', {
      'as-expected': 'start',
      low: 'start',
      high: 'windingsBehindMain',
      open: 'windingsBehindMain',
      'not-taken': 'start',
    }),
    start: ask('ohms-start-overload', {
      'as-expected': 'button',
      low: 'button',
      high: 'startOpen',
      open: 'startOpen',
      'not-taken': 'button',
    }),
    button: ask('look-box', {
      clean: 'sound',
      'lid-unseated': 'lidNotHome',
      'vented-capacitor': 'startParts',
      'burnt-blade': 'burntJoint',
      wet: 'sound',
      'overload-button-out': 'windingsBehindMain',
      'not-taken': 'undecided',
      'not-here': 'sound',
    }),

    windingsBehindMain: ask('ohms-yellow-black', {
      'as-expected': 'runCapacitorBehindMain',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'runCapacitorBehindMain',
    }),
    runCapacitorBehindMain: ask('run-capacitance', {
      'as-expected': 'startCapacitorBehindMain',
      low: 'runCapacitorGone',
      high: 'startParts',
      open: 'startParts',
      'not-taken': 'startCapacitorBehindMain',
    }),
    startCapacitorBehindMain: ask('start-capacitance', {
      'as-expected': 'mainTripped',
      low: 'startParts',
      high: 'startParts',
      open: 'startParts',
      'not-taken': 'mainTripped',
    }),

    tripped: ask('insulation-system', {
      'as-expected': 'windingsBehindBreaker',
      low: 'motor',
      high: 'windingsBehindBreaker',
      open: 'windingsBehindBreaker',
      'not-taken': 'motor',
      'not-here': 'trippedTwoWire',
    }),
    trippedTwoWire: ask('insulation-two-wire', {
      'as-expected': 'twoWireBehindBreaker',
      low: 'motor',
      high: 'twoWireBehindBreaker',
      open: 'twoWireBehindBreaker',
      'not-taken': 'motor',
    }),
    windingsBehindBreaker: ask('ohms-yellow-black', {
      'as-expected': 'startWindingBehindBreaker',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'motor',
    }),
    startWindingBehindBreaker: ask('ohms-yellow-red', {
      'as-expected': 'startCapacitorBehindBreaker',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'startCapacitorBehindBreaker',
    }),
    twoWireBehindBreaker: ask('ohms-two-wire', {
      'as-expected': 'branchOne',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'motor',
    }),
    startCapacitorBehindBreaker: ask('start-capacitance', {
      'as-expected': 'contactBehindBreaker',
      low: 'startParts',
      high: 'startParts',
      open: 'startParts',
      'not-taken': 'contactBehindBreaker',
    }),
    contactBehindBreaker: ask('ohms-relay-contact', {
      'as-expected': 'runCapacitorBehindBreaker',
      low: 'runCapacitorBehindBreaker',
      high: 'startParts',
      open: 'startParts',
      'not-taken': 'runCapacitorBehindBreaker',
    }),
    runCapacitorBehindBreaker: ask('run-capacitance', {
      'as-expected': 'case',
      low: 'runCapacitorGone',
      high: 'startParts',
      open: 'startParts',
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

    sound: clears('overloads'),
    trippedClear: claims('breaker-tripped', 'rotor-locked', 'start-switch-inside-failed'),
    mainTripped: claims('main-overload-tripped'),
    startOpen: claims('start-overload-open'),
    lidNotHome: claims('lid-unseated'),
    burntJoint: claims('lid-contact-burnt', 'box-terminal-loose'),
    caseLeak: claims('capacitor-leaks-to-case'),
    arrester: claims('arrester-failed'),
    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    motor: handsOver('motor-and-cable'),
    startParts: handsOver('starting-parts'),
    undecided: undecided('overloads'),
  },
});
