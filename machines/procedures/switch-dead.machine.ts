import { ask, claims, clears, tree, undecided } from './ask.ts';

/**
 * The pressure switch may not be probed live: what does it show dead?
 *
 * Cover off and locked out: insects, water, a cut-off lever, burnt points. Then ohms across each pole with
 * the lever made, one against the other; then whether the lever snaps, and whether the tube is clear.
 */
export const switchDead = tree.createMachine({
  id: 'switch-dead',
  initial: 'look',
  states: {
    look: ask('look-switch', {
      clean: 'poleOne',
      burnt: 'poleOne',
      insects: 'insects',
      wet: 'wet',
      'cut-off-lever-open': 'cutOff',
      'not-taken': 'poleOne',
    }),
    poleOne: ask('ohms-switch-pole-1', {
      'as-expected': 'poleTwo',
      low: 'poleTwo',
      high: 'burntPoints',
      open: 'poleTwoBesideOpen',
      'not-taken': 'tubeUnproved',
    }),
    poleTwo: ask('ohms-switch-pole-2', {
      'as-expected': 'tube',
      low: 'tube',
      high: 'burntPoints',
      open: 'onePoleOpen',
      'not-taken': 'tubeUnproved',
      'not-here': 'tube',
    }),
    poleTwoBesideOpen: ask('ohms-switch-pole-2', {
      'as-expected': 'onePoleOpen',
      low: 'onePoleOpen',
      high: 'contactsOpen',
      open: 'contactsOpen',
      'not-taken': 'onePoleOpen',
      'not-here': 'contactsOpen',
    }),
    tube: ask('tube-clear', {
      clear: 'travel',
      blocked: 'tubeBlocked',
      'not-taken': 'travel',
    }),
    travel: ask('switch-travel', {
      crisp: 'sound',
      slack: 'noThrust',
      'not-taken': 'undecided',
    }),
    tubeUnproved: ask('tube-clear', {
      clear: 'undecided',
      blocked: 'tubeBlocked',
      'not-taken': 'undecided',
    }),

    sound: clears('switch-dead'),
    onePoleOpen: claims('switch-pole-open'),
    contactsOpen: claims('switch-contacts-open'),
    burntPoints: claims('switch-contacts-resistive'),
    insects: claims('switch-insects'),
    wet: claims('switch-wet', 'switch-diaphragm-failed'),
    cutOff: claims('switch-cut-off-open'),
    tubeBlocked: claims('switch-tube-blocked', 'switch-tube-blocked-low', 'switch-frozen'),
    noThrust: claims('switch-diaphragm-failed', 'switch-spring-broken'),
    undecided: undecided('switch-dead'),
  },
});
