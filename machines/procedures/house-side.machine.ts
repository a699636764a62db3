import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Is it the well at all, or the house?
 *
 * Pressure on the gauge and none at the taps: something between is shut, frozen or blocked. No pressure on
 * the gauge: the house is shut off with its own valve, and a tank that then fills has proved pump, pipe and
 * well in five minutes. What is left is a leak, or more water taken than the well and the pump can give.
 */
export const houseSide = tree.createMachine({
  id: 'house-side',
  initial: 'taps',
  states: {
    taps: ask('water-anywhere', {
      none: 'zoneBesideNone',
      weak: 'zone',
      pulsing: 'zone',
      normal: 'use',
      'one-place-only': 'valves',
      'comes-and-goes': 'use',
      'not-taken': 'zone',
    }),
    zone: ask('gauge-zone', {
      zero: 'indoors',
      'below-cut-in': 'indoors',
      between: 'valves',
      'above-cut-out': 'valves',
      'no-gauge': 'valves',
      'not-taken': 'valves',
    }),

    zoneBesideNone: ask('gauge-zone', {
      zero: 'indoors',
      'below-cut-in': 'indoors',
      between: 'valvesBesideNone',
      'above-cut-out': 'valvesBesideNone',
      'no-gauge': 'valves',
      'not-taken': 'valves',
    }),
    valvesBesideNone: ask('look-valves', {
      'all-open': 'freezeBesideNone',
      'house-valve-shut': 'valveShut',
      'tank-valve-shut': 'freezeBesideNone',
      'check-above-ground': 'freezeBesideNone',
      'switch-far-away': 'freezeBesideNone',
      'not-taken': 'freezeBesideNone',
    }),
    freezeBesideNone: ask('look-freeze', {
      'above-freezing': 'ageBesideNone',
      frozen: 'frozen',
      'not-taken': 'ageBesideNone',
    }),
    ageBesideNone: ask('filter-age', {
      fresh: 'pastFilter',
      overdue: 'filter',
      none: 'pastFilter',
      'not-taken': 'pastFilter',
    }),

    valves: ask('look-valves', {
      'all-open': 'freeze',
      'house-valve-shut': 'valveShut',
      'tank-valve-shut': 'tankShut',
      'check-above-ground': 'freeze',
      'switch-far-away': 'freeze',
      'not-taken': 'freeze',
    }),
    freeze: ask('look-freeze', {
      'above-freezing': 'drop',
      frozen: 'frozen',
      'not-taken': 'drop',
    }),
    drop: ask('filter-drop', {
      'as-expected': 'isolate',
      low: 'isolate',
      high: 'age',
      'not-taken': 'ageUnread',
    }),
    age: ask('filter-age', {
      fresh: 'pastFilter',
      overdue: 'filter',
      none: 'pastFilter',
      'not-taken': 'pastFilter',
    }),
    ageUnread: ask('filter-age', {
      fresh: 'isolate',
      overdue: 'filter',
      none: 'isolate',
      'not-taken': 'isolate',
    }),

    indoors: ask('leaks-indoors', {
      none: 'isolate',
      'toilet-or-tap': 'isolateBesideLeak',
      'hose-or-irrigation': 'flow',
      'softener-draining': 'softener',
      'not-taken': 'isolate',
    }),
    isolateBesideLeak: ask('isolate-house', {
      fills: 'houseLeak',
      'still-low': 'wellSide',
      'never-runs': 'sound',
      'not-taken': 'houseLeak',
    }),
    isolate: ask('isolate-house', {
      fills: 'flow',
      'still-low': 'wellSide',
      'never-runs': 'sound',
      'not-taken': 'undecided',
    }),
    flow: ask('house-flow', {
      within: 'leak',
      above: 'demand',
      'not-taken': 'leak',
    }),
    use: ask('house-flow', {
      within: 'sound',
      above: 'demand',
      'not-taken': 'sound',
    }),

    valveShut: claims('house-valve-shut', 'softener-stuck'),
    tankShut: claims('tank-valve-shut'),
    frozen: claims('line-frozen', 'heat-tape-failed'),
    filter: claims('filter-clogged'),
    pastFilter: claims('filter-clogged', 'softener-stuck', 'backflow-valve-stuck'),
    softener: claims('softener-stuck'),
    houseLeak: claims('house-leak'),
    demand: claims('demand-too-great'),
    leak: handsOver('leak-down'),
    wellSide: handsOver('delivery'),
    sound: clears('house-side'),
    undecided: undecided('house-side'),
  },
});
