import type { Check } from '../../../../src/schema/check.ts';

/**
 * The checks that the trees were drawn with: what each reads, without its windows and instruments.
 * The content tests hold the list to the catalog; the trees are tested here without it.
 */
export type Reads = Check['reads'];

const volts: Reads = { quantity: 'voltage', unit: 'V' };
const amps: Reads = { quantity: 'current', unit: 'A' };
const ohms: Reads = { quantity: 'resistance', unit: 'ohm' };
const microfarads: Reads = { quantity: 'capacitance', unit: 'uF' };
const answers = (...ids: string[]): Reads => ({ answers: ids });

const reading = (reads: Reads, ids: string): [string, Reads][] =>
  ids
    .trim()
    .split(/\s+/)
    .map((id) => [id, reads]);

export const CHECKS: ReadonlyMap<string, Reads> = new Map([
  ...reading(
    volts,
    `volts-service-pair volts-service-1 volts-service-2 volts-breaker-pair volts-breaker-1 volts-breaker-2
     volts-switch-line volts-switch-load-pair volts-switch-load-1 volts-switch-load-2 volts-pole-1
     volts-pole-2 volts-box-line volts-loop-feed volts-loop-switched volts-loop-sw volts-coil`,
  ),
  ...reading(amps, 'amps-line amps-yellow amps-black amps-red amps-start-line amps-start-red'),
  ...reading(
    ohms,
    `ohms-yellow-black ohms-yellow-red ohms-black-red ohms-sum-test ohms-two-wire insulation-system
     ohms-main-overload ohms-start-overload ohms-relay-coil ohms-relay-contact ohms-sense-coil
     ohms-sense-switch ohms-contactor-coil ohms-contactor-pole-1 ohms-contactor-pole-2
     ohms-switch-pole-1 ohms-switch-pole-2 ohms-breaker-1 ohms-breaker-2 ohms-loop-wires
     ohms-well-yellow-black ohms-well-yellow-red ohms-well-black-red ohms-well-two-wire
     ohms-buried-yellow-black ohms-buried-yellow-red ohms-buried-two-wire insulation-buried
     insulation-downhole insulation-two-wire insulation-downhole-two-wire insulation-buried-two-wire
     ohms-branch-1 ohms-branch-2 ohms-capacitor-case ohms-loop-wire-out ohms-after-cool-yellow-black ohms-after-cool-yellow-red
     ohms-after-cool-black-red ohms-after-cool-two-wire`,
  ),
  ...reading(microfarads, 'start-capacitance run-capacitance'),
  [
    'what-is-seen',
    answers(
      'silent-with-pressure',
      'silent-without-pressure',
      'hums-or-trips',
      'runs-without-water',
      'runs-badly',
      'works-now',
    ),
  ],
  ['breaker-lever', answers('on', 'middle', 'off', 'not-seen')],
  ['gauge-zone', answers('zero', 'below-cut-in', 'between', 'above-cut-out', 'no-gauge')],
  ['house-power', answers('all-works', 'half-dead', 'all-dead')],
  ['standby-position', answers('utility', 'generator', 'between', 'none')],
  ['motor-sound', answers('silence', 'click-only', 'hum-then-quiet', 'steady-hum', 'runs')],
  ['contactor-position', answers('out', 'in', 'buzzing')],
  ['look-switch', answers('clean', 'burnt', 'insects', 'wet', 'cut-off-lever-open')],
  [
    'look-box',
    answers('clean', 'lid-unseated', 'vented-capacitor', 'burnt-blade', 'wet', 'overload-button-out'),
  ],
  ['look-wellhead', answers('dry', 'wet', 'open-joint', 'burnt-joint')],
  ['lid-swap', answers('starts', 'does-not-start')],
  ['tube-clear', answers('clear', 'blocked')],
]);

export const FAULTS: readonly string[] = `
  arrester-failed box-terminal-loose breaker-pole-open breaker-tripped buried-conductor-grounded
  buried-conductor-open buried-conductor-resistive buried-conductors-shorted
  capacitor-leaks-to-case contactor-coil-open contactor-contacts-resistive contactor-jammed
  contactor-pole-open disconnect-burnt disconnect-off downhole-cable-grounded drop-conductor-open
  drop-conductors-shorted generator-single-phase leads-exchanged lid-contact-burnt lid-unseated
  loop-device-open loop-wire-open main-overload-tripped main-turns-shorted motor-drags
  motor-grounded motor-leaks motor-protector-cycling motor-protector-open nothing-wrong
  panel-joint-burnt potential-relay-coil-open potential-relay-contact-open
  potential-relay-contact-welded rotor-locked run-capacitor-open run-capacitor-shorted
  run-capacitor-weak sensing-relay-open sensing-relay-shorted start-capacitor-open
  start-capacitor-shorted start-capacitor-weak start-overload-open start-switch-inside-failed
  start-turns-shorted supply-high supply-joint-loose supply-lost-leg supply-low supply-out
  switch-contacts-open switch-contacts-resistive switch-cut-off-open switch-diaphragm-failed
  switch-frozen switch-insects switch-pole-open switch-tube-blocked transfer-switch-left
  wellhead-splice-open wellhead-splice-resistive winding-main-open winding-start-open`
  .trim()
  .split(/\s+/);
