import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Pressure goes while nobody uses water. Which way does it leave?
 *
 * Tank and relief valve are looked at first. Then the gauge is watched with the pump off, the house shut
 * away and then open: what falls only with the house open is lost in the house. A check valve above ground
 * hides the well side from the gauge, so there the ear at the casing must do. A wet yard, a spray inside
 * the casing and water falling after a stop each name a place; a leak under water is heard by nobody.
 */
export const leakDown = tree.createMachine({
  id: 'leak-down',
  initial: 'unused',
  states: {
    unused: ask('starts-unused', {
      no: 'stops',
      yes: 'tank',
      'not-taken': 'tank',
    }),
    stops: ask('pump-stops', {
      stops: 'idleAir',
      'never-stops': 'tank',
      'never-starts': 'tight',
      'not-taken': 'tank',
    }),
    idleAir: ask('first-draw-air', {
      none: 'tight',
      air: 'tank',
      'not-taken': 'tight',
    }),
    tank: ask('look-tank', {
      light: 'relief',
      heavy: 'relief',
      'rusted-or-leaking': 'shell',
      'plain-steel': 'relief',
      'not-taken': 'relief',
    }),
    relief: ask('relief-valve', {
      dry: 'valves',
      wet: 'pressure',
      'not-taken': 'valves',
    }),
    pressure: ask('plateau-pressure', {
      'as-expected': 'reliefOpen',
      low: 'reliefOpen',
      high: 'settings',
      'not-taken': 'reliefOpen',
    }),
    valves: ask('look-valves', {
      'all-open': 'isolated',
      'house-valve-shut': 'isolated',
      'tank-valve-shut': 'tankShut',
      'check-above-ground': 'openBehindCheck',
      'switch-far-away': 'isolated',
      'not-taken': 'isolated',
    }),

    isolated: ask('leak-down-isolated', {
      'as-expected': 'open',
      low: 'open',
      high: 'yard',
      'not-taken': 'open',
    }),
    open: ask('leak-down-open', {
      'as-expected': 'tight',
      low: 'tight',
      high: 'indoors',
      'not-taken': 'undecided',
    }),
    openBehindCheck: ask('leak-down-open', {
      'as-expected': 'casingBehindCheck',
      low: 'casingBehindCheck',
      high: 'indoors',
      'not-taken': 'casingBehindCheck',
    }),
    casingBehindCheck: ask('listen-casing', {
      steady: 'afterStopBehindCheck',
      spray: 'sprays',
      gurgle: 'afterStopBehindCheck',
      rumble: 'afterStopBehindCheck',
      'not-taken': 'afterStopBehindCheck',
    }),
    afterStopBehindCheck: ask('listen-after-stop', {
      silent: 'undecided',
      'water-falls': 'inTheWell',
      'not-taken': 'undecided',
    }),
    indoors: ask('leaks-indoors', {
      none: 'houseLeak',
      'toilet-or-tap': 'houseLeak',
      'hose-or-irrigation': 'inUse',
      'softener-draining': 'softener',
      'not-taken': 'houseLeak',
    }),

    yard: ask('wet-ground', {
      no: 'casing',
      yes: 'casingBesideWet',
      'not-taken': 'casing',
    }),
    casing: ask('listen-casing', {
      steady: 'afterStop',
      spray: 'sprays',
      gurgle: 'afterStop',
      rumble: 'afterStop',
      'not-taken': 'afterStop',
    }),
    casingBesideWet: ask('listen-casing', {
      steady: 'buried',
      spray: 'sprays',
      gurgle: 'buried',
      rumble: 'buried',
      'not-taken': 'buried',
    }),
    afterStop: ask('listen-after-stop', {
      silent: 'wellSide',
      'water-falls': 'inTheWell',
      'not-taken': 'wellSide',
    }),

    tight: clears('leak-down'),
    shell: claims('tank-shell-leaks'),
    tankShut: claims('tank-valve-shut'),
    reliefOpen: claims('relief-valve-open'),
    houseLeak: claims('house-leak', 'softener-stuck'),
    inUse: claims('house-leak', 'demand-too-great'),
    softener: claims('softener-stuck'),
    buried: claims('buried-pipe-leaks', 'pitless-leaks'),
    sprays: claims('pitless-leaks', 'drop-pipe-hole', 'drop-pipe-fitting-leaks'),
    inTheWell: claims('check-valve-leaks', 'drop-pipe-hole', 'drop-pipe-fitting-leaks', 'pitless-leaks'),
    wellSide: claims('check-valve-leaks', 'drop-pipe-hole', 'drop-pipe-fitting-leaks', 'buried-pipe-leaks'),
    settings: handsOver('settings-and-gauge'),
    undecided: undecided('leak-down'),
  },
});
