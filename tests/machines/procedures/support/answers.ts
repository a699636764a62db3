import type { Answers } from '../../../../machines/procedures/fold.ts';

/** Answers from a plain list; a check that is named in `lacking` does not exist here. */
export function given(outcomes: Readonly<Record<string, string>>, lacking: readonly string[] = []): Answers {
  return {
    outcomeOf: (check) => outcomes[check],
    applies: (check) => !lacking.includes(check),
  };
}

/** Checks that are missing where the motor has two wires and no box. */
export const NO_BOX: readonly string[] = [
  'volts-box-line',
  'look-box',
  'lid-swap',
  'start-capacitance',
  'run-capacitance',
  'ohms-capacitor-case',
  'ohms-sense-coil',
  'ohms-sense-switch',
  'ohms-relay-contact',
  'ohms-relay-coil',
  'ohms-main-overload',
  'ohms-start-overload',
  'amps-yellow',
  'amps-black',
  'amps-red',
  'amps-start-red',
  'ohms-yellow-black',
  'ohms-yellow-red',
  'ohms-black-red',
  'insulation-system',
  'insulation-downhole',
  'insulation-buried',
  'ohms-well-yellow-black',
  'ohms-well-yellow-red',
  'ohms-well-black-red',
  'ohms-buried-yellow-black',
  'ohms-buried-yellow-red',
  'ohms-after-cool-yellow-black',
  'ohms-after-cool-yellow-red',
  'ohms-after-cool-black-red',
  'ohms-bleed',
  'ohms-lid-1',
  'ohms-lid-2',
  'box-temperature',
  'terminals-tug',
  'capacitor-kick',
  'run-capacitor-in-service',
  'start-capacitor-in-service',
  'volts-relay-coil',
  'volts-well-pair',
  'volts-box-start',
  'reverse-bump',
];

/** Checks that are missing where there is no contactor and no control loop. */
export const NO_CONTACTOR: readonly string[] = [
  'contactor-position',
  'volts-coil',
  'volts-loop-feed',
  'volts-loop-switched',
  'volts-loop-sw',
  'ohms-contactor-coil',
  'ohms-contactor-pole-1',
  'ohms-contactor-pole-2',
  'ohms-loop-wires',
  'ohms-loop-wire-out',
  'ohms-contactor-rest-1',
  'ohms-contactor-rest-2',
  'volts-contactor-pole-1',
  'volts-contactor-pole-2',
];

/** Checks that are missing where the motor has three wires. */
export const THREE_WIRE: readonly string[] = [
  'ohms-two-wire',
  'insulation-two-wire',
  'ohms-well-two-wire',
  'ohms-buried-two-wire',
  'insulation-buried-two-wire',
  'insulation-downhole-two-wire',
  'ohms-after-cool-two-wire',
];

/** Checks that are missing where one pole of the switch sits in the control loop. */
export const SWITCH_IN_LOOP: readonly string[] = [
  'volts-switch-line',
  'volts-switch-load-pair',
  'volts-switch-load-1',
  'volts-switch-load-2',
  'volts-pole-2',
  'ohms-switch-pole-2',
];

export const SENSING_RELAY: readonly string[] = [
  'ohms-relay-contact',
  'ohms-relay-coil',
  'run-capacitance',
  'ohms-capacitor-case',
  'ohms-main-overload',
  'ohms-start-overload',
  'volts-box-line',
];

export const POTENTIAL_RELAY: readonly string[] = [
  'ohms-sense-coil',
  'ohms-sense-switch',
  'lid-swap',
  'ohms-lid-1',
  'ohms-lid-2',
];

/** Checks that are missing where no fitting is there that would bring them. */
export const NO_FITTINGS: readonly string[] = [
  'ohms-fuse-1',
  'ohms-fuse-2',
  'device-bypass',
  'device-sensor',
  'device-output',
  'device-input-volts',
  'device-cooling',
  'drive-output-ohms',
  'generator-volts',
  'airline-level',
  'ohms-neutral-ground',
];
