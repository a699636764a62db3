import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Leads and starting parts are proved, and it still stands and hums. Is it bound?
 *
 * Nothing else may hang on the circuit and stop it. The start is watched once more by clamp or by watch;
 * current that stays at its locked value is a rotor that cannot turn, current that is too low asks for the
 * volts first. Before anything is pulled the pump may be jogged backwards, a few short times and by
 * agreement: sand lets go that way. Where it does not, sand and a seized bearing are told apart on the
 * ground, and with two leads so is the start switch inside.
 */
export const boundPump = tree.createMachine({
  id: 'bound-pump',
  initial: 'branchOne',
  states: {
    branchOne: ask('ohms-branch-1', {
      'as-expected': 'branchTwo',
      low: 'circuit',
      high: 'branchTwo',
      open: 'branchTwo',
      'not-taken': 'branchTwo',
    }),
    branchTwo: ask('ohms-branch-2', {
      'as-expected': 'line',
      low: 'circuit',
      high: 'line',
      open: 'line',
      'not-taken': 'line',
    }),
    line: ask('amps-start-line', {
      'as-expected': 'length',
      low: 'volts',
      high: 'length',
      none: 'undecided',
      'not-taken': 'length',
    }),
    volts: ask('volts-switch-start', {
      'as-expected': 'length',
      low: 'supply',
      high: 'length',
      none: 'supply',
      'not-taken': 'length',
      'not-here': 'boxVolts',
    }),
    boxVolts: ask('volts-box-start', {
      'as-expected': 'length',
      low: 'supply',
      high: 'length',
      none: 'supply',
      'not-taken': 'length',
    }),
    length: ask('start-length', {
      quick: 'turns',
      slow: 'supply',
      never: 'backwards',
      'not-taken': 'backwards',
    }),
    backwards: ask('reverse-bump', {
      frees: 'freed',
      'stays-bound': 'bound',
      'not-taken': 'bound',
      'not-here': 'boundOrSwitch',
    }),

    turns: clears('bound-pump'),
    circuit: handsOver('pump-circuit'),
    supply: handsOver('supply-at-start'),
    freed: claims('pump-sand-locked', 'rotor-locked'),
    bound: claims('rotor-locked', 'pump-sand-locked', 'pump-stages-melted'),
    boundOrSwitch: claims(
      'start-switch-inside-failed',
      'winding-start-open',
      'rotor-locked',
      'pump-sand-locked',
      'pump-stages-melted',
    ),
    undecided: undecided('bound-pump'),
  },
});
