import { endsOfParts, type Interlock, type Work } from '../../../../machines/worksite/work.ts';
import type { Person } from '../../../../src/schema/basics.ts';
import { type Check, check as checkShape } from '../../../../src/schema/check.ts';
import { netlist as netlistShape } from '../../../../src/schema/netlist.ts';
import { hazard as hazardShape } from '../../../../src/schema/smaller.ts';

export const PERSONS: readonly Person[] = [
  'caller',
  'trainee-alone',
  'trainee-accompanied',
  'technician',
  'qualified',
];

/** Hazards of the made-up checks, one for each way that the interlock keeps people away. */
export const INTERLOCKS: Readonly<Record<string, Interlock>> = {
  harmless: 'none',
  'dead-work': 'prove-dead',
  'stored-charge': 'bleed',
  'live-parts': 'energised',
  'test-voltage': 'test-voltage',
  'stored-pressure': 'pressure',
  'open-well': 'well-open',
  'confined-space': 'confined',
};

type Drawn = Omit<Check, 'from' | 'minutes' | 'instrument' | 'hazards'> & { readonly hazards?: string[] };

function drawn(own: Drawn): Check {
  return {
    hazards: [],
    instrument: 'any',
    minutes: { hands: 1, wait: 0 },
    from: [{ source: 'trade-practice', where: 'made up for this test', mark: 'practice' }],
    ...own,
  };
}

const ohms = { reads: { quantity: 'resistance', unit: 'ohm' }, predict: { reads: 'ohms' } } as const;
const volts = { reads: { quantity: 'voltage', unit: 'V' }, predict: { reads: 'volts' } } as const;
const seen = { reads: { answers: ['yes', 'no'] }, predict: { signs: true } } as Pick<
  Check,
  'reads' | 'predict'
>;

const dead = { supply: 'locked', cover: 'open', leads: 'any' } as const;
const live = { supply: 'live', cover: 'open', leads: 'connected' } as const;
const anyState = { supply: 'any', cover: 'any', leads: 'any' } as const;

/** One check of every kind, and records with a mistake that the rules must hold back all the same. */
export const DRAWN_CHECKS: readonly Check[] = [
  drawn({ id: 'look-at-the-gauge', at: { look: 'tank' }, who: 'caller', site: anyState, ...seen }),
  drawn({
    id: 'listen-while-on',
    at: { look: 'tank' },
    who: 'caller',
    site: { ...anyState, supply: 'live' },
    ...seen,
  }),
  drawn({
    id: 'look-with-a-hazard',
    at: { look: 'house' },
    who: 'caller',
    site: anyState,
    hazards: ['harmless'],
    ...seen,
  }),
  drawn({
    id: 'volts-panel',
    at: { between: ['panel.T1', 'panel.T2'] },
    who: 'qualified',
    site: { ...live, place: 'panel' },
    hazards: ['live-parts'],
    ...volts,
  }),
  drawn({
    id: 'volts-loop',
    at: { between: ['switch.T1', 'box.A2'] },
    who: 'qualified',
    site: { ...live, place: 'switch' },
    hazards: ['live-parts'],
    ...volts,
  }),
  drawn({
    id: 'amps-outside',
    at: { clamp: ['box.lead-red'] },
    who: 'qualified',
    site: { ...live, cover: 'any', place: 'box' },
    hazards: ['live-parts'],
    reads: { quantity: 'current', unit: 'A' },
    predict: { reads: 'amps' },
  }),
  drawn({
    id: 'volts-for-a-technician',
    at: { between: ['box.L1', 'box.L2'] },
    who: 'technician',
    site: { ...live, place: 'box' },
    ...volts,
  }),
  drawn({
    id: 'look-outside-live-parts',
    at: { look: 'house' },
    who: 'technician',
    site: anyState,
    hazards: ['live-parts'],
    ...seen,
  }),
  drawn({
    id: 'look-inside-live',
    at: { look: 'box' },
    who: 'technician',
    site: { ...live, place: 'box' },
    ...seen,
  }),
  drawn({
    id: 'look-inside-dead',
    at: { look: 'box' },
    who: 'technician',
    site: { ...dead, place: 'box' },
    ...seen,
  }),
  drawn({
    id: 'look-inside-any',
    at: { look: 'switch' },
    who: 'technician',
    site: { ...anyState, cover: 'open', place: 'switch' },
    ...seen,
  }),
  drawn({
    id: 'hand-inside-any',
    at: { look: 'box' },
    who: 'technician',
    site: { ...anyState, place: 'box' },
    hazards: ['stored-charge'],
    ...seen,
  }),
  drawn({
    id: 'ohms-box',
    at: { between: ['lead.Y', 'lead.B'] },
    who: 'technician',
    site: { ...dead, leads: 'lifted', place: 'box' },
    ...ohms,
  }),
  drawn({
    id: 'ohms-part',
    at: { across: 'box.relay-coil' },
    who: 'trainee-accompanied',
    site: { ...dead, place: 'box' },
    ...ohms,
  }),
  drawn({
    id: 'ohms-connected',
    at: { across: 'switch.pole-1' },
    who: 'technician',
    site: { ...dead, leads: 'connected', place: 'switch' },
    ...ohms,
  }),
  drawn({
    id: 'ohms-of-a-wire',
    at: { across: 'switch.wire-2' },
    who: 'technician',
    site: { ...dead, place: 'switch' },
    ...ohms,
  }),
  drawn({
    id: 'ohms-panel',
    at: { across: 'panel.breaker-1' },
    who: 'qualified',
    site: { ...dead, place: 'panel' },
    ...ohms,
  }),
  drawn({
    id: 'ohms-without-a-lock',
    at: { across: 'box.relay-coil' },
    who: 'technician',
    site: { ...anyState, place: 'box' },
    ...ohms,
  }),
  drawn({
    id: 'ohms-without-a-place',
    at: { between: ['motor.Y', 'motor.C'] },
    who: 'technician',
    site: { ...dead },
    ...ohms,
  }),
  drawn({
    id: 'ohms-while-live',
    at: { across: 'box.relay-coil' },
    who: 'qualified',
    site: { ...live, place: 'box' },
    ...ohms,
  }),
  drawn({
    id: 'ohms-between-places',
    at: { between: ['panel.T1', 'switch.L1'] },
    who: 'technician',
    site: { ...dead, place: 'switch' },
    ...ohms,
  }),
  drawn({
    id: 'ohms-at-the-well',
    at: { between: ['drop.Y', 'drop.B'] },
    who: 'qualified',
    site: { ...dead, leads: 'split', place: 'well' },
    hazards: ['open-well', 'confined-space'],
    ...ohms,
  }),
  drawn({
    id: 'ohms-buried',
    at: { between: ['well.Y', 'well.B'], tie: ['lead.Y', 'lead.B'] },
    who: 'qualified',
    site: { ...dead, leads: 'split', place: 'well' },
    hazards: ['open-well'],
    ...ohms,
  }),
  drawn({
    id: 'ohms-at-the-well-for-a-technician',
    at: { between: ['drop.Y', 'drop.B'] },
    who: 'technician',
    site: { ...dead, leads: 'split', place: 'well' },
    hazards: ['open-well'],
    ...ohms,
  }),
  drawn({
    id: 'sum',
    at: { between: ['lead.Y', 'motor.Y'] },
    who: 'technician',
    site: anyState,
    reads: ohms.reads,
    predict: { sumTest: ['a', 'b', 'c'] },
  }),
  drawn({
    id: 'capacitance',
    at: { across: 'box.start-capacitor' },
    who: 'technician',
    site: { ...dead, place: 'box' },
    reads: { quantity: 'capacitance', unit: 'uF' },
    predict: { reads: 'capacitance' },
  }),
  drawn({
    id: 'insulation',
    at: { tied: ['lead.Y', 'lead.B'], to: 'box.G' },
    who: 'technician',
    site: { ...dead, leads: 'lifted', place: 'box' },
    hazards: ['test-voltage'],
    reads: ohms.reads,
    predict: { reads: 'insulation' },
  }),
  drawn({
    id: 'insulation-connected',
    at: { tied: ['box.Y', 'box.B'], to: 'box.G' },
    who: 'technician',
    site: { ...dead, leads: 'connected', place: 'box' },
    reads: ohms.reads,
    predict: { reads: 'insulation' },
  }),
  drawn({
    id: 'insulation-downhole',
    at: { tied: ['drop.Y', 'drop.B'], to: 'well.G' },
    who: 'qualified',
    site: { ...dead, leads: 'split', place: 'well' },
    hazards: ['test-voltage', 'open-well'],
    reads: ohms.reads,
    predict: { reads: 'insulation' },
  }),
  drawn({
    id: 'tube',
    at: { look: 'switch' },
    who: 'technician',
    site: { ...dead, place: 'switch' },
    hazards: ['stored-pressure'],
    ...seen,
  }),
  drawn({
    id: 'dead-head',
    at: { look: 'tank' },
    who: 'qualified',
    site: { ...anyState, supply: 'live' },
    hazards: ['stored-pressure'],
    reads: { quantity: 'pressure', unit: 'psi' },
    predict: { signs: true },
  }),
  drawn({
    id: 'lid-swap',
    at: { look: 'box' },
    who: 'qualified',
    site: { ...live, cover: 'any', place: 'box' },
    hazards: ['stored-charge', 'live-parts'],
    ...seen,
  }),
  drawn({
    id: 'pumping-level',
    at: { look: 'well' },
    who: 'technician',
    site: { ...live, place: 'well' },
    ...seen,
  }),
  drawn({
    id: 'pit',
    at: { look: 'site' },
    who: 'technician',
    site: anyState,
    hazards: ['confined-space'],
    ...seen,
  }),
  drawn({
    id: 'not-with-a-lid',
    at: { between: ['box.L1', 'box.L2'] },
    who: 'qualified',
    site: { ...live, place: 'box' },
    notPlugApart: true,
    ...volts,
  }),
  drawn({
    id: 'unknown-hazard',
    at: { look: 'tank' },
    who: 'technician',
    site: anyState,
    hazards: ['never-heard-of'],
    ...seen,
  }),
];

const HAZARD_FILES = import.meta.glob('../../../../content/hazards/*.json', {
  eager: true,
  import: 'default',
});
const CHECK_FILES = import.meta.glob('../../../../content/checks/*.json', { eager: true, import: 'default' });

/** The checks that the program really asks, as far as they have been written. */
export const REAL_CHECKS: readonly Check[] = Object.values(CHECK_FILES).map((file) => checkShape.parse(file));
export const REAL_INTERLOCKS: Readonly<Record<string, Interlock>> = Object.fromEntries(
  Object.values(HAZARD_FILES).map((file) => {
    const { id, interlock } = hazardShape.parse(file);
    return [id, interlock];
  }),
);

/** Installations that differ in what the interlock asks of them. */
const NETLIST_FILES = import.meta.glob('../../../../content/netlists/*.json', {
  eager: true,
  import: 'default',
});

/** Ends of every part that content draws, in whatever box. */
const partEnds = endsOfParts(Object.values(NETLIST_FILES).map((file) => netlistShape.parse(file)));

type Kind = Omit<Work, 'interlocks' | 'site' | 'who'>;
export const INSTALLATIONS: readonly [Kind, Kind, Kind] = [
  {
    holdsCapacitor: true,
    plugApart: false,
    leadsAt: 'box',
    secondSource: true,
    deadHead: 'below-ratings',
    partEnds,
  },
  {
    holdsCapacitor: true,
    plugApart: true,
    leadsAt: 'box',
    secondSource: false,
    deadHead: 'above-ratings',
    partEnds,
  },
  { holdsCapacitor: false, plugApart: false, leadsAt: 'switch', secondSource: true, partEnds },
];

/** Checks that the interlock cannot tell apart are asked once. */
export function oneOfEachShape(checks: readonly Check[]): Check[] {
  const shapes = new Map(
    checks.map((one) => [
      JSON.stringify([ends(one), one.site, one.who, one.hazards, one.reads, one.predict, one.notPlugApart]),
      one,
    ]),
  );
  return [...shapes.values()];
}

/** Where it is taken, without the names of the conductors. */
function ends({ at }: Check): string {
  return JSON.stringify(at).replaceAll(/\.[A-Za-z0-9-]+"/g, '"');
}
