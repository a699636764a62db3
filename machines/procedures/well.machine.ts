import { ask, claims, handsOver, tree, undecided } from './ask.ts';

/**
 * Does the well give what the pump takes?
 *
 * A white bucket and an ear at the casing come first; air, sand and rust each point somewhere else. Clear
 * water and steady amps after twenty minutes prove a level without opening the well. Only then the
 * sounder: an air line where there is one, the level at rest, the level while it runs, how fast it comes
 * back. A pump is never blamed while the level is not known, which is why the tree of the pump end comes
 * after this one.
 */
export const well = tree.createMachine({
  id: 'well',
  initial: 'bucket',
  states: {
    bucket: ask('first-bucket', {
      clear: 'trend',
      air: 'casing',
      none: 'casing',
      sand: 'jar',
      rust: 'rustFlow',
      'not-taken': 'casing',
    }),
    trend: ask('amps-after-running', {
      'as-expected': 'levelGood',
      low: 'airLine',
      high: 'highLoad',
      none: 'airLine',
      'not-taken': 'airLine',
    }),
    casing: ask('listen-casing', {
      steady: 'airLine',
      spray: 'afterStop',
      gurgle: 'afterStop',
      rumble: 'highLoad',
      'not-taken': 'airLine',
    }),
    afterStop: ask('listen-after-stop', {
      silent: 'airLine',
      'water-falls': 'holds',
      'not-taken': 'airLine',
    }),
    holds: ask('leak-down-isolated', {
      'as-expected': 'fallsIn',
      low: 'fallsIn',
      high: 'leak',
      'not-taken': 'leak',
    }),

    jar: ask('sand-jar', {
      trace: 'airLine',
      sand: 'depthBesideSand',
      'heavy-sand': 'depthBesideHeavySand',
      'not-taken': 'depthBesideSand',
    }),
    depthBesideSand: ask('total-depth', {
      'as-logged': 'sanding',
      shallower: 'filled',
      'no-log': 'sanding',
      'not-taken': 'sanding',
    }),
    depthBesideHeavySand: ask('total-depth', {
      'as-logged': 'screenBroken',
      shallower: 'filled',
      'no-log': 'screenBroken',
      'not-taken': 'screenBroken',
    }),
    rustFlow: ask('flow-at-low-pressure', {
      'as-expected': 'levelGood',
      low: 'rustPumping',
      high: 'levelGood',
      'not-taken': 'rustPumping',
    }),
    rustPumping: ask('pumping-level', {
      'as-expected': 'slime',
      low: 'slime',
      high: 'yields',
      'not-taken': 'slime',
    }),

    airLine: ask('airline-level', {
      'as-expected': 'pumping',
      low: 'pumping',
      high: 'neighbours',
      'not-taken': 'static',
    }),
    static: ask('static-level', {
      'as-expected': 'pumping',
      low: 'pumping',
      high: 'neighbours',
      'not-taken': 'undecided',
    }),
    neighbours: ask('neighbours-water', {
      fine: 'levelLow',
      'same-trouble': 'levelLow',
      'shared-well': 'drawnByOthers',
      'not-taken': 'levelLow',
    }),
    pumping: ask('pumping-level', {
      'as-expected': 'gas',
      low: 'gas',
      high: 'recovery',
      'not-taken': 'undecided',
    }),
    recovery: ask('recovery-rate', {
      'as-expected': 'takesTooMuch',
      low: 'yields',
      high: 'takesTooMuch',
      'not-taken': 'yields',
    }),
    gas: ask('water-looks', {
      clear: 'levelGood',
      air: 'gassy',
      none: 'levelGood',
      sand: 'levelGood',
      milky: 'gassy',
      rusty: 'levelGood',
      'not-taken': 'levelGood',
    }),

    sanding: claims('well-sanding'),
    screenBroken: claims('well-screen-broken'),
    filled: claims('well-filled-in', 'well-collapsed'),
    slime: claims('well-iron-slime', 'pump-intake-blocked'),
    fallsIn: claims('well-cascades'),
    levelLow: claims('well-level-low', 'well-drawn-by-others'),
    drawnByOthers: claims('well-drawn-by-others'),
    yields: claims('well-yield-low', 'well-screen-clogged'),
    takesTooMuch: claims('well-yield-low', 'well-drawn-by-others', 'demand-too-great'),
    gassy: claims('well-gas', 'tank-air-control-failed'),
    levelGood: handsOver('pump-end'),
    leak: handsOver('leak-down'),
    highLoad: handsOver('high-load'),
    undecided: undecided('well'),
  },
});
