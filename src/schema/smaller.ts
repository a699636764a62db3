import { z } from 'zod';
import { from, id, words } from './basics.ts';

/** A place where figures were read. The only record that may name a maker. */
export const source = z.strictObject({
  id,
  title: words,
  kind: z.enum(['table', 'standard', 'book', 'manual', 'article', 'practice', 'model', 'page']),
  year: z.number().int().optional(),
  address: words.optional(),
  note: words.optional(),
});
export type Source = z.infer<typeof source>;

/** Something that happened and makes some faults more likely. */
export const circumstance = z.strictObject({ id, from, note: words.optional() });
export type Circumstance = z.infer<typeof circumstance>;

export const hazard = z.strictObject({
  id,
  /** What keeps people away from it: a rule of the interlock, by name. */
  interlock: z.enum(['none', 'prove-dead', 'bleed', 'energised', 'test-voltage', 'pressure', 'well-open', 'confined']),
  from,
  note: words.optional(),
});
export type Hazard = z.infer<typeof hazard>;

export const sparePart = z.strictObject({ id, from, note: words.optional() });
export type SparePart = z.infer<typeof sparePart>;

/** Numbers of the engine that are judgement: they stand here once, each with its source. */
export const judgement = z.strictObject({
  id,
  value: z.union([z.number(), z.record(z.string(), z.number())]),
  from,
  note: words.optional(),
});
export type Judgement = z.infer<typeof judgement>;

/** Minutes and persons of the steps that make a site safe. */
export const siteStep = z.strictObject({
  id,
  minutes: z.number().nonnegative(),
  from,
  note: words.optional(),
});
export type SiteStepRecord = z.infer<typeof siteStep>;
