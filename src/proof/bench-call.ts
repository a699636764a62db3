import { viewCall } from '../../machines/call/call.ts';
import type { Catalog } from '../catalog/catalog.ts';
import { readCaseText } from '../records/case-file.ts';
import { foldCase } from '../records/fold.ts';
import type { CaseState } from '../schema/case-state.ts';
import { millisecondsOf, quantile } from './clock.ts';

/**
 * How long does a technician wait: for the first recommendation of a call, and for each one after?
 *
 * A call is played to its end on a few sites that differ, so that no model is known beforehand. The
 * first call of all warms the engine up and does not count.
 */
export interface CallSpeed {
  readonly firstRecommendationMs: number;
  readonly nextCheckMs: { readonly median: number; readonly p95: number };
}

/** A start-and-run box whose start capacitor has gone, reading by reading. */
const READINGS: readonly { check: string; reading: object }[] = [
  { check: 'what-is-seen', reading: { answer: 'hums-or-trips' } },
  { check: 'breaker-lever', reading: { answer: 'on' } },
  { check: 'motor-sound', reading: { answer: 'hum-then-quiet' } },
  { check: 'ohms-yellow-black', reading: { value: [2.7, 'ohm'] } },
  { check: 'ohms-yellow-red', reading: { value: [9.2, 'ohm'] } },
  { check: 'ohms-black-red', reading: { value: [11.1, 'ohm'] } },
  { check: 'insulation-system', reading: { value: [20, 'Mohm'] } },
  { check: 'start-capacitance', reading: { value: [0.4, 'uF'] } },
];
/** Answered before anything is recommended. */
const OPENING = 1;

export function callSpeed(catalog: Catalog, sites: number): CallSpeed {
  const first: number[] = [];
  const next: number[] = [];
  for (let site = 0; site <= sites; site++) {
    for (let count = OPENING; count <= READINGS.length; count++) {
      const state = stateAfter(catalog, site, count);
      const took = millisecondsOf(() => viewCall(catalog, state));
      if (site > 0) (count === OPENING ? first : next).push(took);
    }
  }
  return {
    firstRecommendationMs: quantile(first, 0.5),
    nextCheckMs: { median: quantile(next, 0.5), p95: quantile(next, 0.95) },
  };
}

function stateAfter(catalog: Catalog, site: number, count: number): CaseState {
  const installation = {
    box: 'start-and-run-main-overload-in-line',
    motor: '3-wire-1.5hp-230v-start-and-run',
    buried: { conductor: 'copper-12', length: [50, 'ft'] },
    drop: { conductor: 'copper-12', length: [200 + site, 'ft'] },
  };
  const events = [
    { kind: 'person', role: 'qualified' },
    { kind: 'installation', set: installation },
    ...READINGS.slice(0, count).map((one) => ({ kind: 'answer', ...one })),
  ];
  const text = JSON.stringify({ format: 'ohmwell-case', version: 1, case: 'larch-hollow-bench', events });
  const read = readCaseText(text, { known: catalog });
  if ('problems' in read)
    throw new Error(`proof: the case of the bench is wrong: ${JSON.stringify(read.problems)}`);
  return foldCase(read.ok.case, read.ok.events, catalog.checks);
}
