import type { Catalog } from '../../catalog/catalog.ts';
import { hypothesesOf } from '../../diagnosis/belief/hypotheses.ts';
import { figures } from '../../diagnosis/judgements.ts';
import { resolveSystem } from '../../diagnosis/system.ts';
import type { Fault } from '../../schema/fault.ts';
import { installation as installationShape } from '../../schema/installation.ts';
import type { Judgement } from '../../schema/smaller.ts';
import { of } from '../../units/units.ts';
import { installationRows, type Row } from './matrix.ts';

/**
 * Faults that look alike, and a world in which nothing but the order of the checks matters.
 *
 * In that world only the faults of one set exist, each at the middle of its severity; what is unknown of
 * the installation hardly varies; people and signs are sure. What is left to compare is how many minutes
 * it takes to tell them apart.
 */
export interface ConfusionSet {
  readonly id: string;
  readonly faults: readonly string[];
}

export const CONFUSION_SETS: readonly ConfusionSet[] = [
  {
    id: 'silent',
    faults: [
      ...['switch-contacts-open', 'switch-pole-open', 'switch-tube-blocked', 'switch-cut-off-open'],
      ...['breaker-pole-open', 'disconnect-off', 'transfer-switch-left', 'loop-wire-open'],
      ...['motor-protector-open', 'buried-conductor-open'],
    ],
  },
  {
    id: 'full-volts-no-amps',
    faults: [
      ...['buried-conductor-open', 'drop-conductor-open', 'wellhead-splice-open', 'winding-main-open'],
      ...['motor-protector-open', 'motor-protector-cycling', 'lid-unseated', 'main-overload-tripped'],
    ],
  },
  {
    id: 'hums-and-trips',
    faults: [
      ...['start-capacitor-open', 'start-capacitor-shorted', 'sensing-relay-open'],
      ...['potential-relay-contact-open', 'winding-start-open', 'leads-exchanged', 'rotor-locked'],
      ...['motor-drags', 'supply-low', 'start-switch-inside-failed'],
    ],
  },
  {
    id: 'trips-at-once',
    faults: [
      ...['motor-grounded', 'main-turns-shorted', 'buried-conductor-grounded', 'drop-conductors-shorted'],
      ...['wellhead-splice-wet', 'capacitor-leaks-to-case', 'arrester-failed'],
    ],
  },
  {
    id: 'works-stops-works',
    faults: [
      ...['motor-protector-cycling', 'switch-contacts-resistive', 'supply-joint-loose'],
      'main-overload-tripped',
    ],
  },
  {
    id: 'amps-creep-up',
    faults: ['run-capacitor-open', 'motor-drags', 'main-turns-shorted', 'supply-low'],
  },
];

/** The installation on which most of the set can occur; of several the most usual. */
export function rowFor(catalog: Catalog, set: ConfusionSet): Row {
  const counted = installationRows(catalog).map((row) => {
    const system = resolveSystem(catalog, installationShape.parse(row.installation));
    const there = new Set(hypothesesOf(catalog, system).map(({ fault }) => fault.id));
    return { row, members: set.faults.filter((fault) => there.has(fault)).length };
  });
  const best = counted.sort(
    (one, other) => other.members - one.members || other.row.weight - one.row.weight,
  )[0];
  if (best === undefined) throw new Error('prove: no installation to play; mend the matrix');
  return best.row;
}

const SPREAD_SHARE = 0.1;
const SURE = 0.999;

export function pinned(catalog: Catalog, set: ConfusionSet): Catalog {
  const spreads = Object.fromEntries(
    Object.entries(figures(catalog.judgements, 'spreads')).map(([name, one]) => [name, SPREAD_SHARE * one]),
  );
  const words = { never: 1 - SURE, seldom: 1 - SURE, even: 0.5, usually: SURE, always: SURE };
  const values: Readonly<Record<string, Judgement['value']>> = {
    spreads,
    'frequency-words': words,
    'sound-shows-expected': SURE,
  };
  return {
    ...catalog,
    version: `${catalog.version} ${set.id}`,
    faults: Object.fromEntries(
      Object.entries(catalog.faults)
        .filter(([id]) => set.faults.includes(id))
        .map(([id, fault]) => [id, pinnedFault(fault)]),
    ),
    judgements: Object.fromEntries(
      Object.entries(catalog.judgements).map(([id, one]) => [id, { ...one, value: values[id] ?? one.value }]),
    ),
    instruments: Object.fromEntries(
      Object.entries(catalog.instruments).map(([id, { reliability: _, ...rest }]) => [id, rest]),
    ),
  };
}

const SURELY: readonly string[] = ['usually', 'always'];
const NARROW = 0.001;

/** One severity, and of its signs only those that it usually shows. */
function pinnedFault(fault: Fault): Fault {
  const signs = (fault.signs ?? []).filter((sign) => SURELY.includes(sign.how));
  const { severity } = fault;
  if (severity === undefined) return { ...fault, signs };
  const { low, high } = severity.span;
  const middle = severity.scale === 'log' ? Math.sqrt(low * high) : (low + high) / 2;
  const span = { low: of(middle * (1 - NARROW), 'ratio'), high: of(middle * (1 + NARROW), 'ratio') };
  return {
    ...fault,
    signs,
    severity: { span: middle < 0 ? { low: span.high, high: span.low } : span, scale: 'linear', strata: 1 },
  };
}
