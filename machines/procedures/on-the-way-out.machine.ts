import { ask, claims, handsOver, tree } from './ask.ts';

/**
 * Everything electrical reads right now. What is on its way out, and what comes only at times?
 *
 * Meter leads that cannot be trusted, a loose screw, a bleed resistor that no longer bleeds, a lid or a
 * contactor whose contacts are going, a box that stands in the sun, and what has moved since the last
 * visit. A warm run shows a joint that the cold round did not. A logger for a day is the last word.
 */
export const onTheWayOut = tree.createMachine({
  id: 'on-the-way-out',
  initial: 'meterLeads',
  states: {
    meterLeads: ask('lead-null', {
      'steady-low': 'screws',
      'high-or-unsteady': 'meter',
      'not-taken': 'screws',
    }),
    screws: ask('terminals-tug', {
      tight: 'bleed',
      loose: 'looseScrew',
      'not-taken': 'bleed',
    }),
    bleed: ask('ohms-bleed', {
      'as-expected': 'lidOne',
      low: 'lidOne',
      high: 'bleedOpen',
      open: 'bleedOpen',
      'not-taken': 'lidOne',
    }),
    lidOne: ask('ohms-lid-1', {
      'as-expected': 'lidTwo',
      low: 'lidTwo',
      high: 'lidBurnt',
      open: 'lidBurnt',
      'not-taken': 'lidTwo',
    }),
    lidTwo: ask('ohms-lid-2', {
      'as-expected': 'restOne',
      low: 'restOne',
      high: 'lidBurnt',
      open: 'lidBurnt',
      'not-taken': 'restOne',
    }),
    restOne: ask('ohms-contactor-rest-1', {
      'as-expected': 'restTwo',
      low: 'poleWelded',
      high: 'restTwo',
      open: 'restTwo',
      'not-taken': 'restTwo',
    }),
    restTwo: ask('ohms-contactor-rest-2', {
      'as-expected': 'boxHeat',
      low: 'poleWelded',
      high: 'boxHeat',
      open: 'boxHeat',
      'not-taken': 'boxHeat',
    }),
    boxHeat: ask('box-temperature', {
      cool: 'loads',
      hot: 'hotBox',
      'not-taken': 'loads',
    }),
    loads: ask('other-loads', {
      'pump-only': 'record',
      'heater-or-tape': 'circuit',
      other: 'circuit',
      'not-taken': 'record',
    }),
    record: ask('record-trend', {
      'no-record': 'dropOne',
      same: 'dropOne',
      'flow-down': 'well',
      'insulation-down': 'leak',
      'amps-up': 'highLoad',
      'level-down': 'well',
      'not-taken': 'dropOne',
    }),
    dropOne: ask('volts-contactor-pole-1', {
      'as-expected': 'dropTwo',
      low: 'dropTwo',
      high: 'dropTwoBesideHigh',
      none: 'dropTwo',
      'not-taken': 'dropTwo',
    }),
    dropTwo: ask('volts-contactor-pole-2', {
      'as-expected': 'joints',
      low: 'joints',
      high: 'contactsBurnt',
      none: 'joints',
      'not-taken': 'joints',
    }),
    dropTwoBesideHigh: ask('volts-contactor-pole-2', {
      'as-expected': 'contactsBurnt',
      low: 'contactsBurnt',
      high: 'joints',
      none: 'contactsBurnt',
      'not-taken': 'contactsBurnt',
    }),
    joints: ask('hot-spots', {
      none: 'logger',
      'hot-joint': 'hotJoint',
      'not-taken': 'logger',
    }),
    logger: ask('log-a-day', {
      steady: 'sound',
      'volts-dip': 'dips',
      'stops-and-returns': 'stopsAtTimes',
      'not-taken': 'sound',
    }),

    meter: claims('meter-wrong'),
    looseScrew: claims('box-terminal-loose'),
    bleedOpen: claims('bleed-resistor-open'),
    lidBurnt: claims('lid-contact-burnt'),
    contactsBurnt: claims('contactor-contacts-resistive'),
    poleWelded: claims('contactor-welded'),
    hotBox: claims('box-overheated'),
    hotJoint: claims(
      'supply-joint-loose',
      'box-terminal-loose',
      'switch-contacts-resistive',
      'disconnect-burnt',
      'lid-contact-burnt',
      'panel-joint-burnt',
      'breaker-weak',
    ),
    dips: claims('supply-low', 'transformer-too-small', 'generator-weak', 'supply-joint-loose'),
    stopsAtTimes: claims('motor-protector-cycling', 'box-overheated', 'breaker-weak'),
    circuit: handsOver('pump-circuit'),
    sound: handsOver('water-round'),
    well: handsOver('well'),
    leak: handsOver('ground-leak'),
    highLoad: handsOver('high-load'),
  },
});
