import { z } from 'zod';
import { boxFamily, frequency, from, id, node, person, place, rangeOf, words } from './basics.ts';
import { waterEdit } from './water.ts';

/**
 * One edit of a sound installation. `severity` stands for a value drawn from the fault's own span.
 * The plant has one interpreter for these; it never sees a fault id.
 */
export const edit = z.union([
  /** The part conducts nothing; `untilCool`: only while it is hot, a protector that closes again. */
  z.strictObject({ edit: z.literal('open'), part: node, untilCool: z.literal(true).optional() }),
  /** The part conducts whatever it is told, through (almost) nothing. */
  z.strictObject({ edit: z.literal('short'), part: node }),
  /** A moving contact stays as it is: made or apart. */
  z.strictObject({ edit: z.literal('stick'), part: node, state: z.enum(['made', 'apart']) }),
  /** Extra resistance in series with the part: the severity. */
  z.strictObject({ edit: z.literal('series'), part: node }),
  /** A path between two nodes: the severity; `untilSplit`: inside a splice, gone once it is open and dry. */
  z.strictObject({
    edit: z.literal('leak'),
    nodes: z.tuple([node, node]),
    untilSplit: z.literal(true).optional(),
  }),
  /** The part's value times the severity: microfarads, or the turns that still work. */
  z.strictObject({ edit: z.literal('scale'), part: node }),
  /** Two lead terminals exchange the leads they hold. */
  z.strictObject({ edit: z.literal('exchange'), parts: z.tuple([node, node]) }),
  /** Supply volts of a leg, or of both, times the severity. */
  z.strictObject({ edit: z.literal('supply'), leg: z.enum(['both', 'L1', 'L2']) }),
  /** The shaft: cannot turn, turns hard (times the severity), or turns free. */
  z.strictObject({ edit: z.literal('shaft'), state: z.enum(['locked', 'drag', 'free']) }),
  /** The switch is not told to call, or always told, whatever the pressure. */
  z.strictObject({ edit: z.literal('command'), calling: z.boolean() }),
]);
export type Edit = z.infer<typeof edit>;

const severity = z.strictObject({
  span: z.union([
    rangeOf('resistance'),
    rangeOf('ratio'),
    rangeOf('pressure'),
    rangeOf('flow'),
    rangeOf('length'),
  ]),
  scale: z.enum(['log', 'linear']),
  /** Pieces of the span that belief holds apart. */
  strata: z.number().int().min(1).max(6),
});

const variant = z.strictObject({
  id,
  /** The lead, pole or winding it is about, as the words name it. */
  edits: z.array(edit),
  /** What it does to the water side. */
  water: z.array(waterEdit).optional(),
  /** Parts that must exist (or must not) beside those that it edits. */
  needs: z.array(node).optional(),
  without: z.array(node).optional(),
  share: z.number().positive().optional(),
});

/**
 * One thing that can be wrong: how it is put into the plant, how likely it is, and what to do.
 *
 * It can occur wherever every part that it edits exists. What the plant cannot express it carries as
 * signs; a sign also stands where the plant would predict the check.
 */
export const fault = z.strictObject({
  id,
  area: z.enum([
    'supply',
    'pressure-switch',
    'control-loop',
    'starting-parts',
    'box',
    'cable',
    'motor',
    'pump',
    'pipe',
    'well',
    'tank',
    'drive',
    'house',
  ]),
  families: z.array(boxFamily).optional(),
  /** It can occur only where this fitting is there. */
  fitting: id.optional(),
  variants: z.array(variant).min(1),
  severity: severity.optional(),
  signs: z.array(z.strictObject({ check: id, answer: id, how: frequency })).optional(),
  prior: z.strictObject({
    weight: z.number().positive(),
    times: z.array(z.strictObject({ circumstance: id, factor: z.number().positive() })).optional(),
  }),
  tendsToCause: z.array(id).optional(),
  action: id,
  /** Where the lid pulls apart its parts are renewed together. */
  actionInPlugApart: id.optional(),
  verdict: z.enum(['surface', 'house-side', 'supply', 'well-side', 'buried-line', 'pull', 'watch', 'normal']),
  /** Faults that are kept together on purpose because nothing at the surface tells them apart. */
  together: id.optional(),
  from,
  note: words.optional(),
});
export type Fault = z.infer<typeof fault>;

/** A repair: faults that share one share the decision, so belief is judged by these. */
export const action = z.strictObject({
  id,
  who: person,
  minutes: z.strictObject({ low: z.number().nonnegative(), high: z.number().nonnegative() }),
  parts: z.array(id),
  pull: z.boolean(),
  /** Where the hands go: locked out and proved dead there before the work is shown. Absent: no hand inside. */
  place: place.optional(),
  /** Checks that prove the repair, in order. */
  proof: z.array(id),
  from,
  note: words.optional(),
});
export type Action = z.infer<typeof action>;
