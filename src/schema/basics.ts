import { z } from 'zod';
import { of, type Quantity, type QuantityName, type Range, type UnitName, unitsOf } from '../units/units.ts';

/**
 * The small shapes that every record is made of: ids, quantities as printed, evidence.
 *
 * Content writes `[4.2, "ohm"]` and `[4.2, 5.2, "ohm"]`, exactly as the source prints it; the parsed
 * value is in SI. A volt where an ohm belongs is refused here, in the editor and at load.
 */
export const id = z
  .string()
  .regex(/^[a-z0-9]+(?:[.-][a-z0-9]+)*$/, 'an id is lower-case words joined by hyphens');

/** A name of a place where two parts meet: `box.Y`, `panel.T1`. */
export const node = z.string().regex(/^[a-z]+(?:-[a-z]+)*\.[A-Za-z0-9-]+$/, 'a node is written place.name');

export const words = z.string().min(1);

/** `[value, unit]` → an SI quantity. */
export function quantityOf<Q extends QuantityName>(name: Q) {
  const units = unitsOf(name) as [UnitName, ...UnitName[]];
  return z
    .tuple([z.number(), z.enum(units)])
    .transform(([value, unit]) => of(value, unit) as Quantity<QuantityName> as Quantity<Q>);
}

/** `[low, high, unit]` → an SI range; refuses a range that runs backwards. */
export function rangeOf<Q extends QuantityName>(name: Q) {
  const units = unitsOf(name) as [UnitName, ...UnitName[]];
  return z
    .tuple([z.number(), z.number(), z.enum(units)])
    .refine(([low, high]) => low <= high, 'the range runs backwards: write [low, high, unit]')
    .transform(
      ([low, high, unit]): Range<Q> => ({
        low: of(low, unit) as Quantity<QuantityName> as Quantity<Q>,
        high: of(high, unit) as Quantity<QuantityName> as Quantity<Q>,
      }),
    );
}

/** How well a figure is known: read in its source, remembered, worked out, or common practice. */
export const mark = z.enum(['seen', 'memory', 'derived', 'practice']);
export type Mark = z.infer<typeof mark>;

/**
 * Where figures come from. `of` names the fields that this entry vouches for; without it the entry
 * vouches for the whole record.
 */
export const evidence = z.strictObject({
  source: id,
  where: words,
  mark,
  of: z.array(words).min(1).optional(),
});
export type Evidence = z.infer<typeof evidence>;
export const from = z.array(evidence).min(1);

export const leadColour = z.enum(['yellow', 'black', 'red']);
export type LeadColour = z.infer<typeof leadColour>;

export const boxFamily = z.enum(['no-box', 'start-only', 'start-and-run', 'contactor']);
export type BoxFamily = z.infer<typeof boxFamily>;

/** Places a person can stand and open: the keys of proof of dead. */
export const place = z.enum(['panel', 'switch', 'box', 'well']);
export type Place = z.infer<typeof place>;

export const person = z.enum(['caller', 'trainee-alone', 'trainee-accompanied', 'technician', 'qualified']);
export type Person = z.infer<typeof person>;

/** How often a fault shows an answer; the numbers behind the five words stand once, in content. */
export const frequency = z.enum(['never', 'seldom', 'even', 'usually', 'always']);
export type Frequency = z.infer<typeof frequency>;
