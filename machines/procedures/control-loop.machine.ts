import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * A contactor that is out: is its coil fed, and if not, where does the loop stop?
 *
 * One probe stays on the line terminal at the coil's far end; the other halves the string from the
 * coil back to the feed. A coil with volts that does not pull in is open or its armature is stuck;
 * only a coil that is fed may be blamed. A contactor that is in is judged by its poles.
 */
export const controlLoop = tree.createMachine({
  id: 'control-loop',
  initial: 'position',
  states: {
    position: ask('contactor-position', {
      out: 'coil',
      in: 'poleOne',
      buzzing: 'buzzingCoil',
      'not-taken': 'deadCoil',
    }),

    coil: ask('volts-coil', {
      'as-expected': 'fedCoil',
      low: 'switchedSide',
      high: 'fedCoil',
      none: 'switchedSide',
      'not-taken': 'switchedSide',
    }),
    fedCoil: ask('ohms-contactor-coil', {
      'as-expected': 'stuck',
      low: 'coilOpen',
      high: 'coilOpen',
      open: 'coilOpen',
      'not-taken': 'coilOrArmature',
    }),
    buzzingCoil: ask('volts-coil', {
      'as-expected': 'stuck',
      low: 'weakSupply',
      high: 'stuck',
      none: 'undecided',
      'not-taken': 'undecided',
    }),

    switchedSide: ask('volts-loop-switched', {
      'as-expected': 'boxSide',
      low: 'feedSide',
      high: 'boxSide',
      none: 'feedSide',
      'not-taken': 'feedSide',
    }),
    boxSide: ask('volts-loop-sw', {
      'as-expected': 'pilotContact',
      low: 'device',
      high: 'pilotContact',
      none: 'device',
      'not-taken': 'device',
    }),
    device: ask('loop-devices', {
      none: 'wireOpen',
      calls: 'wireOpen',
      'holds-off': 'deviceOpen',
      'not-taken': 'loopOpen',
    }),
    pilotContact: ask('ohms-main-overload', {
      'as-expected': 'undecided',
      low: 'undecided',
      high: 'overloadOpen',
      open: 'overloadOpen',
      'not-taken': 'undecided',
    }),
    feedSide: ask('volts-loop-feed', {
      'as-expected': 'switchOpen',
      low: 'line',
      high: 'switchOpen',
      none: 'line',
      'not-taken': 'line',
    }),
    line: ask('volts-box-line', {
      'as-expected': 'wireOpen',
      low: 'weakSupply',
      high: 'wireOpen',
      none: 'weakSupply',
      'not-taken': 'undecided',
    }),

    poleOne: ask('ohms-contactor-pole-1', {
      'as-expected': 'poleTwo',
      low: 'poleTwo',
      high: 'burntContacts',
      open: 'poleOpen',
      'not-taken': 'poleTwoAlone',
    }),
    poleTwo: ask('ohms-contactor-pole-2', {
      'as-expected': 'sound',
      low: 'sound',
      high: 'burntContacts',
      open: 'poleOpen',
      'not-taken': 'undecided',
    }),
    poleTwoAlone: ask('ohms-contactor-pole-2', {
      'as-expected': 'undecided',
      low: 'undecided',
      high: 'burntContacts',
      open: 'poleOpen',
      'not-taken': 'undecided',
    }),

    deadCoil: ask('ohms-contactor-coil', {
      'as-expected': 'deadWires',
      low: 'coilOpen',
      high: 'coilOpen',
      open: 'coilOpen',
      'not-taken': 'deadWires',
    }),
    deadWires: ask('ohms-loop-wires', {
      'as-expected': 'deadWireOut',
      low: 'deadWireOut',
      high: 'wireOpen',
      open: 'wireOpen',
      'not-taken': 'deadWireOut',
    }),
    deadWireOut: ask('ohms-loop-wire-out', {
      'as-expected': 'poleOneUnseen',
      low: 'poleOneUnseen',
      high: 'wireOpen',
      open: 'wireOpen',
      'not-taken': 'poleOneUnseen',
    }),
    poleOneUnseen: ask('ohms-contactor-pole-1', {
      'as-expected': 'poleTwoAlone',
      low: 'poleTwoAlone',
      high: 'burntContacts',
      open: 'poleOpen',
      'not-taken': 'poleTwoAlone',
    }),

    sound: clears('control-loop'),
    coilOpen: claims('contactor-coil-open'),
    stuck: claims('contactor-jammed'),
    coilOrArmature: claims('contactor-coil-open', 'contactor-jammed'),
    poleOpen: claims('contactor-pole-open'),
    burntContacts: claims('contactor-contacts-resistive'),
    wireOpen: claims('loop-wire-open'),
    deviceOpen: claims('loop-device-open'),
    loopOpen: claims('loop-wire-open', 'loop-device-open'),
    overloadOpen: claims('main-overload-tripped'),
    switchOpen: handsOver('pressure-switch'),
    weakSupply: handsOver('supply'),
    undecided: undecided('control-loop'),
  },
});
