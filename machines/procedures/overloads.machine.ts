import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * An overload in the box opened. What made it open?
 *
 * It is read before its button is touched, since pressing it destroys the only trace. It is seldom the
 * fault itself: the capacitors and the relay coil that would have made the motor draw too much are read
 * before it is claimed, and a hand is laid on the box, since heat alone trips it. A welded relay contact
 * cannot be seen dead, so it is claimed beside.
 */
export const overloads = tree.createMachine({
  id: 'overloads',
  initial: 'main',
  states: {
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
      'vented-capacitor': 'ventedCapacitor',
      'burnt-blade': 'burntJoint',
      wet: 'boxWet',
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
      high: 'runCapacitorShorted',
      open: 'runCapacitorShorted',
      'not-taken': 'startCapacitorBehindMain',
    }),
    startCapacitorBehindMain: ask('start-capacitance', {
      'as-expected': 'relayCoilBehindMain',
      low: 'capacitorGone',
      high: 'capacitorShorted',
      open: 'capacitorShorted',
      'not-taken': 'relayCoilBehindMain',
    }),
    relayCoilBehindMain: ask('ohms-relay-coil', {
      'as-expected': 'heat',
      low: 'heat',
      high: 'relayCoilOpen',
      open: 'relayCoilOpen',
      'not-taken': 'heat',
    }),
    heat: ask('box-temperature', {
      cool: 'mainTripped',
      hot: 'boxHot',
      'not-taken': 'mainTripped',
    }),
    ventedCapacitor: ask('start-capacitance', {
      'as-expected': 'sound',
      low: 'capacitorGone',
      high: 'capacitorShorted',
      open: 'capacitorShorted',
      'not-taken': 'undecided',
    }),

    sound: clears('overloads'),
    mainTripped: claims('main-overload-tripped', 'potential-relay-contact-welded'),
    boxHot: claims('box-overheated', 'main-overload-tripped'),
    boxWet: claims('box-wet'),
    startOpen: claims('start-overload-open'),
    lidNotHome: claims('lid-unseated'),
    burntJoint: claims('lid-contact-burnt', 'box-terminal-loose'),
    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    runCapacitorShorted: claims('run-capacitor-shorted'),
    relayCoilOpen: claims('potential-relay-coil-open'),
    capacitorGone: claims('start-capacitor-open', 'start-capacitor-weak'),
    capacitorShorted: claims('start-capacitor-shorted'),
    motor: handsOver('motor-and-cable'),
    undecided: undecided('overloads'),
  },
});
