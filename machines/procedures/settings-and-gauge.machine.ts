import { ask, claims, clears, handsOver, tree, undecided } from './ask.ts';

/**
 * Is the pressure what the gauge says, and does the switch know it?
 *
 * The gauge against a known one first: every other pressure is read on it. A pump that never starts or
 * never stops: is the pressure at the switch the pressure in the pipe? Where it is, the switch does not
 * act on it, or its points or the contactor have welded. A pump that starts and stops: note the gauge at
 * both clicks. A gauge that plunges before the switch clicks is the charge of the tank, not the switch.
 */
export const settingsAndGauge = tree.createMachine({
  id: 'settings-and-gauge',
  initial: 'compare',
  states: {
    compare: ask('gauge-compare', {
      agree: 'stops',
      off: 'gaugeOff',
      stuck: 'tubeBesideStuck',
      'not-taken': 'stops',
    }),
    tubeBesideStuck: ask('tube-pressure', {
      agree: 'gaugeStuck',
      differs: 'tubeBlocked',
      'not-taken': 'undecided',
    }),
    stops: ask('pump-stops', {
      stops: 'cutIn',
      'never-stops': 'plateau',
      'never-starts': 'tubeAtRest',
      'not-taken': 'cutIn',
    }),

    tubeAtRest: ask('tube-pressure', {
      agree: 'travelAtRest',
      differs: 'freeze',
      'not-taken': 'travelAtRest',
    }),
    travelAtRest: ask('switch-travel', {
      crisp: 'sound',
      slack: 'noThrust',
      'not-taken': 'undecided',
    }),
    freeze: ask('look-freeze', {
      'above-freezing': 'tubeBlocked',
      frozen: 'tubeFrozen',
      'not-taken': 'tubeBlocked',
    }),

    plateau: ask('plateau-pressure', {
      'as-expected': 'tubeRunning',
      low: 'weak',
      high: 'tubeRunning',
      'not-taken': 'tubeRunning',
    }),
    tubeRunning: ask('tube-pressure', {
      agree: 'restOne',
      differs: 'freeze',
      'not-taken': 'restOne',
    }),
    restOne: ask('ohms-contactor-rest-1', {
      'as-expected': 'restTwo',
      low: 'contactorWelded',
      high: 'restTwo',
      open: 'restTwo',
      'not-taken': 'look',
    }),
    restTwo: ask('ohms-contactor-rest-2', {
      'as-expected': 'look',
      low: 'contactorWelded',
      high: 'look',
      open: 'look',
      'not-taken': 'look',
    }),
    look: ask('look-switch', {
      clean: 'travelMade',
      burnt: 'doesNotOpen',
      insects: 'insects',
      wet: 'noThrust',
      'cut-off-lever-open': 'undecided',
      'not-taken': 'travelMade',
    }),
    travelMade: ask('switch-travel', {
      crisp: 'setTooHigh',
      slack: 'doesNotOpen',
      'not-taken': 'undecided',
    }),

    cutIn: ask('cut-in-pressure', {
      'as-expected': 'cutOut',
      low: 'precharge',
      high: 'cutOutBesideOff',
      'not-taken': 'cutOut',
    }),
    precharge: ask('precharge', {
      'as-expected': 'cutOutBesideOff',
      low: 'cutOutBesideOff',
      high: 'chargedTooHigh',
      'not-taken': 'cutOutBesideOff',
    }),
    cutOutBesideOff: ask('cut-out-pressure', {
      'as-expected': 'narrow',
      low: 'narrow',
      high: 'setTooHigh',
      'not-taken': 'narrow',
    }),
    cutOut: ask('cut-out-pressure', {
      'as-expected': 'sound',
      low: 'narrow',
      high: 'setTooHigh',
      'not-taken': 'sound',
    }),

    sound: clears('settings-and-gauge'),
    gaugeOff: claims('gauge-off'),
    gaugeStuck: claims('gauge-stuck'),
    tubeBlocked: claims('switch-tube-blocked', 'switch-tube-blocked-low'),
    tubeFrozen: claims('switch-frozen'),
    noThrust: claims('switch-diaphragm-failed', 'switch-spring-broken'),
    contactorWelded: claims('contactor-welded'),
    doesNotOpen: claims('switch-contacts-welded', 'switch-diaphragm-failed'),
    insects: claims('switch-insects'),
    setTooHigh: claims('switch-cut-out-too-high', 'switch-misadjusted', 'drive-sensor-failed'),
    narrow: claims('switch-differential-lost', 'switch-misadjusted'),
    chargedTooHigh: claims('tank-precharge-high'),
    weak: handsOver('delivery'),
    undecided: undecided('settings-and-gauge'),
  },
});
