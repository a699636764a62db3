import { type Reading, reading } from '../../schema/case.ts';
import type { Check } from '../../schema/check.ts';
import { unitsOf } from '../../units/units.ts';

type NumberReads = Extract<Check['reads'], { unit: string }>;

/** Units that a meter shows for each quantity, smallest first; their order on the pad never changes. */
const SHOWN: Readonly<Record<NumberReads['quantity'], readonly string[]>> = {
  resistance: ['ohm', 'kohm', 'Mohm'],
  voltage: ['mV', 'V'],
  current: ['mA', 'A'],
  capacitance: ['nF', 'uF'],
  power: ['W', 'kW'],
  pressure: ['psi'],
  pressureRate: ['psi/min'],
  flow: ['gpm'],
  volume: ['gal'],
  length: ['ft'],
  speed: ['ft/min'],
  time: ['s', 'min'],
};

/** The unit keys of a check: those a meter may show for its quantity. */
export function unitsFor(reads: NumberReads): readonly string[] {
  const known: readonly string[] = unitsOf(reads.quantity);
  return SHOWN[reads.quantity].filter((unit) => known.includes(unit));
}

/** A number with the unit of the key that entered it; nothing where no reading can be made of it. */
export function readingOf(value: number, unit: string): Reading | undefined {
  const parsed = reading.safeParse({ value: [value, unit] });
  return parsed.success ? parsed.data : undefined;
}
