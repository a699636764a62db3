import { ask, claims, clears, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * The motor is told to run and does not get going: is it the parts that start it?
 *
 * A motor that makes no sound gets no volts or has no way through; its starting parts are not the
 * reason. Windings and insulation before starting parts, all in one dead round. Then the capacitor, the
 * relay of whichever kind the box has, the run capacitor. A current-sensing relay that reads right
 * may still not fire: a matched lid swapped in proves it, and so proves the motor where that does
 * not start either. A box without such a lid is proved by the start current in red. Parts that are proved
 * leave a pump that is bound.
 */
export const startingParts = tree.createMachine({
  id: 'starting-parts',
  initial: 'partsHere',
  states: {
    partsHere: isHere('start-capacitance', 'listen', 'notReached'),
    listen: ask('motor-sound', {
      silence: 'notReached',
      'click-only': 'notReached',
      'rapid-clicking': 'notReached',
      'hum-then-quiet': 'mainWinding',
      'steady-hum': 'mainWinding',
      runs: 'running',
      'not-taken': 'mainWinding',
    }),
    mainWinding: ask('ohms-yellow-black', {
      'as-expected': 'startWinding',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'startWinding',
      'not-here': 'motor',
    }),
    startWinding: ask('ohms-yellow-red', {
      'as-expected': 'insulation',
      low: 'motor',
      high: 'motor',
      open: 'motor',
      'not-taken': 'insulation',
    }),
    insulation: ask('insulation-system', {
      'as-expected': 'box',
      low: 'motor',
      high: 'box',
      open: 'box',
      'not-taken': 'box',
    }),
    box: ask('look-box', {
      clean: 'capacitor',
      'lid-unseated': 'lidNotHome',
      'vented-capacitor': 'capacitor',
      'burnt-blade': 'burntJoint',
      wet: 'capacitor',
      'overload-button-out': 'overload',
      'not-taken': 'capacitor',
    }),
    capacitor: ask('start-capacitance', {
      'as-expected': 'senseSwitch',
      low: 'capacitorGone',
      high: 'capacitorShorted',
      open: 'capacitorShorted',
      'not-taken': 'senseSwitch',
    }),

    senseSwitch: ask('ohms-sense-switch', {
      'as-expected': 'lid',
      low: 'senseShorted',
      high: 'lid',
      open: 'lid',
      'not-taken': 'lid',
      'not-here': 'relayContact',
    }),
    relayContact: ask('ohms-relay-contact', {
      'as-expected': 'relayCoil',
      low: 'relayCoil',
      high: 'contactOpen',
      open: 'contactOpen',
      'not-taken': 'relayCoil',
    }),
    relayCoil: ask('ohms-relay-coil', {
      'as-expected': 'runCapacitor',
      low: 'runCapacitor',
      high: 'relayCoilOpen',
      open: 'relayCoilOpen',
      'not-taken': 'runCapacitor',
    }),
    runCapacitor: ask('run-capacitance', {
      'as-expected': 'lid',
      low: 'runCapacitorGone',
      high: 'runCapacitorShorted',
      open: 'runCapacitorShorted',
      'not-taken': 'lid',
    }),

    lid: ask('lid-swap', {
      starts: 'lidParts',
      'does-not-start': 'locked',
      'not-taken': 'startRed',
    }),
    startRed: ask('amps-start-red', {
      'as-expected': 'locked',
      low: 'undecided',
      high: 'locked',
      none: 'redNotFed',
      'not-taken': 'undecided',
    }),

    notReached: clears('starting-parts'),
    lidNotHome: claims('lid-unseated'),
    capacitorGone: claims('start-capacitor-open', 'start-capacitor-weak'),
    burntJoint: claims('lid-contact-burnt', 'box-terminal-loose'),
    capacitorShorted: claims('start-capacitor-shorted'),
    senseShorted: claims('sensing-relay-shorted'),
    lidParts: claims('sensing-relay-open', 'start-capacitor-open', 'start-capacitor-weak'),
    contactOpen: claims('potential-relay-contact-open'),
    relayCoilOpen: claims('potential-relay-coil-open'),
    redNotFed: claims('potential-relay-contact-open', 'sensing-relay-open'),
    runCapacitorGone: claims('run-capacitor-open', 'run-capacitor-weak'),
    runCapacitorShorted: claims('run-capacitor-shorted'),
    running: handsOver('running-load'),
    locked: handsOver('bound-pump'),
    motor: handsOver('motor-and-cable'),
    overload: handsOver('overloads'),
    undecided: undecided('starting-parts'),
  },
});
