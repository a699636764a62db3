import { ask, claims, clears, handsOver, isHere, tree, undecided } from './ask.ts';

/**
 * Volts that look right at rest: do they hold while the motor starts?
 *
 * Where the house stands on a generator or a battery, that is asked first. A dip at the start with good
 * volts at rest is resistance between the pole in the street and the switch: a contact, a joint, or a
 * transformer that is too small, the points of the switch being the cheapest to look at. No dip and a slow
 * start: the loss is behind the switch, in the cable, in the starting capacitor or in the motor.
 */
export const supplyAtStart = tree.createMachine({
  id: 'supply-at-start',
  initial: 'standby',
  states: {
    standby: ask('standby-position', {
      utility: 'start',
      generator: 'generator',
      between: 'start',
      none: 'start',
      'not-taken': 'start',
    }),
    generator: ask('generator-volts', {
      holds: 'length',
      sags: 'weakSet',
      'wrong-frequency': 'weakSet',
      'not-taken': 'startOnStandby',
    }),
    startOnStandby: ask('volts-switch-start', {
      'as-expected': 'length',
      low: 'weakSet',
      high: 'length',
      none: 'weakSet',
      'not-taken': 'undecided',
      'not-here': 'boxStartOnStandby',
    }),
    boxStartOnStandby: ask('volts-box-start', {
      'as-expected': 'length',
      low: 'weakSet',
      high: 'length',
      none: 'weakSet',
      'not-taken': 'undecided',
    }),

    start: ask('volts-switch-start', {
      'as-expected': 'length',
      low: 'atRest',
      high: 'length',
      none: 'supply',
      'not-taken': 'length',
      'not-here': 'boxStart',
    }),
    boxStart: ask('volts-box-start', {
      'as-expected': 'length',
      low: 'atRest',
      high: 'length',
      none: 'supply',
      'not-taken': 'length',
    }),
    atRest: ask('volts-service-pair', {
      'as-expected': 'points',
      low: 'service',
      high: 'points',
      none: 'service',
      'not-taken': 'points',
    }),
    points: ask('look-switch', {
      clean: 'hot',
      burnt: 'switchPoints',
      insects: 'hot',
      wet: 'hot',
      'cut-off-lever-open': 'hot',
      'not-taken': 'hot',
    }),
    hot: ask('hot-spots', {
      none: 'sags',
      'hot-joint': 'joint',
      'not-taken': 'sags',
    }),

    length: ask('start-length', {
      quick: 'sound',
      slow: 'atRestBesideSlow',
      never: 'notStarting',
      'not-taken': 'undecided',
    }),
    atRestBesideSlow: ask('volts-service-pair', {
      'as-expected': 'leads',
      low: 'service',
      high: 'leads',
      none: 'service',
      'not-taken': 'leads',
    }),
    leads: isHere('ohms-two-wire', 'hotBesideSlow', 'red'),
    red: ask('amps-red', {
      'as-expected': 'capacitor',
      low: 'capacitor',
      high: 'heldIn',
      none: 'capacitor',
      'not-taken': 'capacitor',
    }),
    capacitor: ask('start-capacitor-in-service', {
      'as-expected': 'wellPair',
      low: 'capacitorWeak',
      high: 'wellPair',
      open: 'capacitorWeak',
      'not-taken': 'deadCapacitor',
    }),
    deadCapacitor: ask('start-capacitance', {
      'as-expected': 'wellPair',
      low: 'capacitorWeak',
      high: 'wellPair',
      open: 'wellPair',
      'not-taken': 'wellPair',
    }),
    wellPair: ask('volts-well-pair', {
      'as-expected': 'hotBesideSlow',
      low: 'loss',
      high: 'hotBesideSlow',
      none: 'undecided',
      'not-taken': 'hotBesideSlow',
    }),
    hotBesideSlow: ask('hot-spots', {
      none: 'slowMotor',
      'hot-joint': 'joint',
      'not-taken': 'slowMotor',
    }),

    sound: clears('supply-at-start'),
    weakSet: claims('generator-weak', 'battery-supply-island'),
    joint: claims(
      'supply-joint-loose',
      'box-terminal-loose',
      'lid-contact-burnt',
      'disconnect-burnt',
      'panel-joint-burnt',
    ),
    sags: claims('transformer-too-small', 'supply-low'),
    capacitorWeak: claims('start-capacitor-weak'),
    loss: claims('cable-too-thin', 'buried-conductor-resistive', 'wellhead-splice-resistive'),
    switchPoints: handsOver('switch-dead'),
    supply: handsOver('supply'),
    service: handsOver('service'),
    heldIn: handsOver('start-held-in'),
    slowMotor: handsOver('high-load'),
    notStarting: handsOver('starting-parts'),
    undecided: undecided('supply-at-start'),
  },
});
