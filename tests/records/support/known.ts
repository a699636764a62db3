import type { Known } from '../../../src/records/fits.ts';

const ohms = { reads: { quantity: 'resistance', unit: 'ohm' } } as const;

/** The few ids that the tests of this folder speak of. */
export const KNOWN: Known = {
  checks: {
    'what-is-seen': {
      reads: { answers: ['silent-with-pressure', 'silent-without-pressure', 'hums-or-trips'] },
    },
    'ohms-yellow-black': ohms,
    'ohms-yellow-red': ohms,
    'ohms-black-red': ohms,
    'volts-service-pair': { reads: { quantity: 'voltage', unit: 'V' } },
    'start-capacitance': { reads: { quantity: 'capacitance', unit: 'uF' } },
  },
  instruments: { 'ohm-meter': {}, voltmeter: {} },
  circumstances: { 'after-a-storm': {} },
  motors: { '3-wire-1-hp-230': {}, '3-wire-1.5-hp-230': {} },
  boxes: { 'start-and-run-small': {}, 'none-2-wire': {} },
  fittings: {},
  conductors: { 'copper-12': {}, 'copper-10': {} },
};
