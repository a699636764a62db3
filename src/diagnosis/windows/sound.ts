import { setUp } from '../../plant/plant.ts';
import type { PlantInput, PlantReading, Spreads, Unknowns } from '../../plant/types.ts';
import type { Check } from '../../schema/check.ts';
import { requestOf } from '../belief/channel.ts';

/** What a sound installation reads: the same plant, nothing injected. */
export function sound(
  input: PlantInput,
  spreads: Spreads,
  check: Check,
  unknowns: Unknowns = {},
): PlantReading {
  return setUp(input, spreads).state({ edits: [], severity: undefined }, unknowns).read(requestOf(check));
}

/** The value of a sound reading in SI, or nothing where the plant gives none. */
export function soundValue(
  input: PlantInput,
  spreads: Spreads,
  check: Check,
  unknowns: Unknowns = {},
): number | undefined {
  const reading = sound(input, spreads, check, unknowns);
  return reading.kind === 'value' ? reading.value : undefined;
}
