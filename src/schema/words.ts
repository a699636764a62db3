import { z } from 'zod';
import { id, words } from './basics.ts';

const atMost = (count: number) =>
  words.refine((text) => text.split(/\s+/).length <= count, `at most ${count} words: say the rest in "how"`);

/** What a person reads about a check. `ask` is the instruction on the step screen. */
export const checkWords = z.strictObject({
  id,
  /** Short name, sentence case: "Ohms yellow–black". */
  name: atMost(8),
  ask: atMost(20),
  how: z.array(words).min(1),
  /** Text of each closed answer, by answer id. */
  answers: z.record(id, words).optional(),
  /** Names of the two probe points, as printed in the legend. */
  points: z.array(words).optional(),
  /** What can spoil the reading. */
  spoils: z.array(words).optional(),
});
export type CheckWords = z.infer<typeof checkWords>;

export const faultWords = z.strictObject({
  id,
  name: atMost(9),
  /** One sentence for the technician, one for the customer. */
  technician: words,
  customer: words,
  /** Text of each variant: "yellow", "pole 2". Empty where there is one. */
  variants: z.record(id, words).optional(),
  /** What to look for so that it does not come back. */
  rootCauses: z.array(words),
  /** The reading or event that would overturn the verdict. */
  overturn: words,
  caution: words.optional(),
});
export type FaultWords = z.infer<typeof faultWords>;

export const actionWords = z.strictObject({
  id,
  name: atMost(9),
  steps: z.array(words).min(1),
  caution: words.optional(),
});
export type ActionWords = z.infer<typeof actionWords>;

/** A step that makes the site safe: instruction, how, and what shows that it is done. */
export const siteStepWords = z.strictObject({
  id,
  name: atMost(8),
  ask: atMost(20),
  how: z.array(words).min(1),
  shows: words,
});
export type SiteStepWords = z.infer<typeof siteStepWords>;

/** Names of small things: hazards, circumstances, parts, instruments, boxes, places, outcomes. */
export const names = z.strictObject({ id, texts: z.record(words, words) });
export type Names = z.infer<typeof names>;
