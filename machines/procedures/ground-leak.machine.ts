import { ask, claims, clears, tree, undecided } from './ask.ts';

/**
 * Insulation reads low with the leads lifted. Where does it leak: buried run, splice or below?
 *
 * The well head is looked at, then opened and read both ways. A leak that is gone once the splice is open
 * and dry was the splice. Below the splice nothing at the surface tells cable, motor splice and motor
 * apart. How hard it leaks decides what is done: ohms that trip are pulled, kilo-ohms under a motor that
 * runs are watched.
 */
export const groundLeak = tree.createMachine({
  id: 'ground-leak',
  initial: 'system',
  states: {
    system: ask('insulation-system', {
      'as-expected': 'tight',
      low: 'look',
      high: 'tight',
      open: 'tight',
      'not-taken': 'undecided',
      'not-here': 'twoLead',
    }),
    twoLead: ask('insulation-two-wire', {
      'as-expected': 'tight',
      low: 'look',
      high: 'tight',
      open: 'tight',
      'not-taken': 'undecided',
    }),
    look: ask('look-wellhead', {
      dry: 'below',
      wet: 'belowWet',
      'open-joint': 'below',
      'burnt-joint': 'below',
      pinched: 'pinched',
      'not-taken': 'below',
    }),
    belowWet: ask('insulation-downhole', {
      'as-expected': 'splice',
      low: 'downhole',
      high: 'splice',
      open: 'splice',
      'not-taken': 'undecided',
      'not-here': 'belowWetTwoLead',
    }),
    belowWetTwoLead: ask('insulation-downhole-two-wire', {
      'as-expected': 'splice',
      low: 'downhole',
      high: 'splice',
      open: 'splice',
      'not-taken': 'undecided',
    }),
    below: ask('insulation-downhole', {
      'as-expected': 'run',
      low: 'downhole',
      high: 'run',
      open: 'run',
      'not-taken': 'run',
      'not-here': 'belowTwoLead',
    }),
    belowTwoLead: ask('insulation-downhole-two-wire', {
      'as-expected': 'runTwoLead',
      low: 'downhole',
      high: 'runTwoLead',
      open: 'runTwoLead',
      'not-taken': 'runTwoLead',
    }),
    run: ask('insulation-buried', {
      'as-expected': 'splice',
      low: 'buried',
      high: 'splice',
      open: 'splice',
      'not-taken': 'undecided',
    }),
    runTwoLead: ask('insulation-buried-two-wire', {
      'as-expected': 'splice',
      low: 'buried',
      high: 'splice',
      open: 'splice',
      'not-taken': 'undecided',
    }),

    tight: clears('ground-leak'),
    splice: claims('wellhead-splice-wet', 'wellhead-splice-leaks', 'cable-pinched'),
    pinched: claims('cable-pinched'),
    buried: claims('buried-conductor-grounded', 'cable-leaks'),
    downhole: claims(
      'motor-grounded',
      'downhole-cable-grounded',
      'motor-splice-wet',
      'winding-burnt',
      'motor-leaks',
      'cable-leaks',
      'insulation-ageing',
    ),
    undecided: undecided('ground-leak'),
  },
});
