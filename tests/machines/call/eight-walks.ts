import type { Truth } from '../../journeys/truth.ts';

/**
 * Eight calls as a master technician would walk them, each on a site of its own: what is there, what is
 * wrong, and how many readings he would take (a set counts once).
 *
 * Source: common practice; the readings follow from the plant.
 */
export interface MasterWalk {
  readonly truth: Truth;
  readonly readings: number;
}

const supply: Truth['installation']['supply'] = { volts: [242, 'V'] };
const cable = (buried: number, drop: number): Pick<Truth['installation'], 'buried' | 'drop'> => ({
  buried: { conductor: 'copper-10', length: [buried, 'ft'] },
  drop: { conductor: 'copper-12', length: [drop, 'ft'] },
});

const twoWire: Truth['installation'] = {
  supply,
  ...cable(0, 190),
  family: 'no-box',
  box: 'none-2-wire',
  motor: '2-wire-0.75hp-230v',
  cutIn: [30, 'psi'],
  cutOut: [50, 'psi'],
  tank: { volume: [44, 'gal'] },
};
const startOnly: Truth['installation'] = {
  ...twoWire,
  ...cable(0, 250),
  family: 'start-only',
  box: 'start-only-current-relay',
  motor: '3-wire-1hp-230v-start-only',
};
const startAndRun: Truth['installation'] = {
  ...twoWire,
  ...cable(40, 220),
  family: 'start-and-run',
  box: 'start-and-run-main-overload-in-line',
  motor: '3-wire-1.5hp-230v-start-and-run',
};
const contactor: Truth['installation'] = {
  ...twoWire,
  ...cable(40, 220),
  family: 'contactor',
  box: 'contactor-loop-fed-from-l2',
  motor: '3-wire-3hp-230v-start-and-run',
  cutIn: [40, 'psi'],
  cutOut: [60, 'psi'],
};

export const MASTER_WALKS = {
  'silent, one switch pole open': {
    truth: { installation: twoWire, fault: 'switch-pole-open', variant: 'pole-2' },
    readings: 10,
  },
  'silent after an outage, low-pressure cut-off': {
    truth: {
      installation: { ...contactor, fittings: { 'low-pressure-cut-off': true } },
      fault: 'switch-cut-off-open',
      variant: 'tripped',
    },
    readings: 9,
  },
  'hums, goes quiet, hums again': {
    truth: { installation: startOnly, fault: 'start-capacitor-open', variant: 'open' },
    readings: 6,
  },
  'trips at once since the rain': {
    truth: { installation: startAndRun, fault: 'wellhead-splice-wet', variant: 'black', severity: 0.55 },
    readings: 7,
  },
  'clicks on and off': {
    truth: { installation: twoWire, fault: 'tank-waterlogged', variant: 'torn', severity: 0.08 },
    readings: 4,
  },
  'stops after twelve minutes': {
    truth: { installation: startAndRun, fault: 'run-capacitor-open', variant: 'open' },
    readings: 7,
  },
  'weak for weeks, never stops': {
    truth: {
      installation: { ...startOnly, well: { staticLevel: [80, 'ft'] } },
      fault: 'drop-pipe-hole',
      variant: 'upper',
      severity: 0.00018,
    },
    readings: 8,
  },
  'water for a while, then air, then none': {
    truth: {
      installation: {
        ...contactor,
        well: { staticLevel: [110, 'ft'], intake: [260, 'ft'], casing: [6, 'in'] },
      },
      fault: 'well-yield-low',
      variant: 'yield',
      severity: 0.07,
    },
    readings: 5,
  },
} as const satisfies Record<string, MasterWalk>;
