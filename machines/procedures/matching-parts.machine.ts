import { ask, claims, clears, tree, undecided } from './ask.ts';

/**
 * Do the parts belong together? Label against label before any of them is called bad.
 *
 * Horsepower, volts and leads of the motor against box, capacitors, breaker, switch and cable. A part that
 * does not belong explains readings that no broken part does. A pump that was too small from the first day
 * is believed only with a flow that says so.
 */
export const matchingParts = tree.createMachine({
  id: 'matching-parts',
  initial: 'labels',
  states: {
    labels: ask('look-match', {
      match: 'sound',
      'wrong-box': 'box',
      'wrong-breaker': 'breaker',
      'wrong-switch': 'switch',
      'wrong-motor-volts': 'volts',
      'thin-cable': 'cable',
      'wrong-pump': 'flow',
      'not-taken': 'undecided',
    }),
    flow: ask('flow-at-high-pressure', {
      'as-expected': 'sound',
      low: 'pump',
      high: 'sound',
      'not-taken': 'undecided',
    }),

    sound: clears('matching-parts'),
    box: claims('box-wrong', 'potential-relay-wrong'),
    breaker: claims('breaker-wrong-size'),
    switch: claims('switch-wrong-type'),
    volts: claims('motor-wrong-volts'),
    cable: claims('cable-too-thin'),
    pump: claims('pump-too-small'),
    undecided: undecided('matching-parts'),
  },
});
