import { setUp } from '../../../src/plant/plant.ts';
import type { Mode, PlantReading, PlantState, ReadingSite, Unknowns } from '../../../src/plant/types.ts';
import type { CheckPoint, Prediction } from '../../../src/schema/check.ts';
import type { Edit } from '../../../src/schema/fault.ts';
import { input, type Setting, spreads } from './inputs.ts';

export const RUN: ReadingSite = { powered: true, calling: true, leads: 'connected' };
export const IDLE: ReadingSite = { powered: true, calling: false, leads: 'connected' };
export const OFF: ReadingSite = { powered: false, calling: false, leads: 'connected' };
export const LIFTED: ReadingSite = { powered: false, calling: false, leads: 'lifted' };
export const SPLIT: ReadingSite = { powered: false, calling: false, leads: 'split' };

/** A plant of a setting with these edits in it. */
export function faulted(
  setting: Setting,
  edits: readonly Edit[] = [],
  more: { readonly severity?: number; readonly unknowns?: Unknowns; readonly forced?: Mode } = {},
): PlantState {
  const plant = setUp(input(setting), spreads);
  return plant.state({ edits, severity: more.severity }, more.unknowns ?? {}, more.forced);
}

type Reads = Extract<Prediction, { reads: string }>['reads'];

export function reading(state: PlantState, reads: Reads, at: CheckPoint, site: ReadingSite): PlantReading {
  return state.read({ at, predict: { reads }, site });
}

/** The number of a reading; a reading without one fails the test that asked. */
export function number(state: PlantState, reads: Reads, at: CheckPoint, site: ReadingSite): number {
  const got = reading(state, reads, at, site);
  if (got.kind !== 'value') throw new Error(`expected a number, got ${JSON.stringify(got)}`);
  return got.value;
}

export function said(
  state: PlantState,
  rule: Extract<Prediction, { rule: string }>['rule'],
  site = RUN,
): string {
  const got = state.read({ at: { look: 'site' }, predict: { rule }, site });
  if (got.kind !== 'answer') throw new Error(`expected an answer, got ${JSON.stringify(got)}`);
  return got.answer;
}
