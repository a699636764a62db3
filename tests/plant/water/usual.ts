import type { Drive, WaterInput, WaterMoment, WaterState } from '../../../src/plant/water/types.ts';
import { setUpWater } from '../../../src/plant/water/water.ts';
import { type WaterEdit, type WaterQuestion, waterSystem } from '../../../src/schema/water.ts';
import { of, type UnitName } from '../../../src/units/units.ts';

/** The usual house of the content, and short ways to ask it in printed units. */
const files = import.meta.glob('../../../content/water/*.json', { eager: true, import: 'default' });

export const systems: Readonly<Record<string, WaterInput>> = Object.fromEntries(
  Object.values(files)
    .map((file) => waterSystem.parse(file))
    .map((one) => [one.id, one]),
);
export const usual: WaterInput = systems['usual-house']!;

export interface Faulted {
  readonly edits?: readonly WaterEdit[];
  readonly severity?: number;
  readonly drive?: Drive;
  readonly input?: WaterInput;
}

export function stateOf({ edits = [], severity, drive, input = usual }: Faulted = {}): WaterState {
  return setUpWater(input).state({ edits, severity }, drive);
}

/** The number of a reading in a printed unit; a reading without one fails the test that asked. */
export function number(
  state: WaterState,
  question: WaterQuestion,
  more: { readonly unit: UnitName; readonly moment?: WaterMoment },
): number {
  const got = state.read(question, more.moment);
  if (got.kind !== 'value') throw new Error(`${question}: expected a number, got ${JSON.stringify(got)}`);
  return got.value / of(1, more.unit);
}

export function said(state: WaterState, question: WaterQuestion, moment?: WaterMoment): string {
  const got = state.read(question, moment);
  if (got.kind !== 'answer') throw new Error(`${question}: expected an answer, got ${JSON.stringify(got)}`);
  return got.answer;
}
