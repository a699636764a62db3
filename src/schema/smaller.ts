import { z } from 'zod';
import { from, id, quantityOf, words } from './basics.ts';

/** A place where figures were read. The only record that may name a maker. */
export const source = z.strictObject({
  id,
  title: words,
  kind: z.enum(['table', 'standard', 'book', 'manual', 'article', 'practice', 'model', 'page']),
  year: z.number().int().optional(),
  /** Names that may stand nowhere but here. */
  makers: z.array(words).optional(),
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
  interlock: z.enum([
    'none',
    'prove-dead',
    'bleed',
    'energised',
    'test-voltage',
    'pressure',
    'well-open',
    'confined',
  ]),
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

/**
 * A hard rule of the verdict: what must have been read before a repair may be named, whatever the
 * probability. It holds for the actions that it lists, or for every action that pulls the pump.
 */
export const hardRule = z.strictObject({
  id,
  when: z.union([z.strictObject({ pull: z.literal(true) }), z.strictObject({ faults: z.array(id).min(1) })]),
  /** One reading of each group must stand; a group lists checks that serve as well as each other. */
  needs: z.array(z.array(id).min(1)).min(1),
  /** Only these outcomes of the reading count. */
  outcomes: z.array(id).min(1).optional(),
  /** Only a reading that raised the odds of the verdict counts. */
  mustRaiseOdds: z.literal(true).optional(),
  /** Not asked where the buried run is nothing: the box end is then the well-head end. */
  unlessNoBuriedRun: z.literal(true).optional(),
  from,
  note: words.optional(),
});
export type HardRule = z.infer<typeof hardRule>;

/** Minutes and persons of the steps that make a site safe. */
export const siteStep = z.strictObject({
  id,
  minutes: z.number().nonnegative(),
  from,
  note: words.optional(),
});
export type SiteStepRecord = z.infer<typeof siteStep>;

/**
 * Something that some installations have and others lack: fuses, a ground-fault breaker, a float in
 * the loop, a filter. It may swap pieces of the netlist for others; faults and checks may ask for it.
 */
export const fitting = z.strictObject({
  id,
  /** Chance that it is there when nobody has said. */
  usual: z.number().min(0).max(1),
  /** Pieces by id, each with the piece that stands in its place. */
  replaces: z.record(id, id).optional(),
  /** It comes with motors of this rating, said or not. */
  motorVolts: quantityOf('voltage').optional(),
  from,
  note: words.optional(),
});
export type Fitting = z.infer<typeof fitting>;

/** Checks in a fixed order, as somebody without the tool would take them: a yardstick for the sweep. */
export const sequence = z.strictObject({
  id,
  checks: z.array(id).min(2),
  /** Check → the one that takes its place on installations without the first. */
  instead: z.record(id, id).optional(),
  from,
  note: words.optional(),
});
export type Sequence = z.infer<typeof sequence>;

/** Figures that nobody has measured and that matter: what hangs on them, and the cheapest way to measure them. */
export const calibration = z.strictObject({
  id,
  /** Folder of content; some records and some fields of it, or all. */
  figures: z.array(z.strictObject({ in: id, ids: z.array(id).optional(), field: words.optional() })).min(1),
  effect: words,
  settle: words,
  from,
  note: words.optional(),
});
export type Calibration = z.infer<typeof calibration>;
