import type { Judgement } from '../schema/smaller.ts';

/**
 * The engine's numbers that are judgement, read from content by name.
 *
 * They stand in content/judgements, one idea a record, each with its source. A missing one is a
 * mistake of the content and stops the engine with its name.
 */
export type Judgements = Readonly<Record<string, Judgement>>;

/** @throws when the record is missing or holds a table instead of a number */
export function figure(judgements: Judgements, id: string): number {
  const value = judgements[id]?.value;
  if (typeof value !== 'number') {
    throw new Error(`diagnosis: judgement ${id} is not a number; add content/judgements/${id}.json`);
  }
  return value;
}

/** @throws when the record is missing or holds a number instead of a table */
export function figures(judgements: Judgements, id: string): Readonly<Record<string, number>> {
  const value = judgements[id]?.value;
  if (value === undefined || typeof value === 'number') {
    throw new Error(`diagnosis: judgement ${id} is not a table; add content/judgements/${id}.json`);
  }
  return value;
}

/** One entry of a table of figures. */
export function figureOf(judgements: Judgements, id: string, key: string): number {
  const value = figures(judgements, id)[key];
  if (value === undefined) {
    throw new Error(
      `diagnosis: judgement ${id} has no entry ${key}; add it to content/judgements/${id}.json`,
    );
  }
  return value;
}
