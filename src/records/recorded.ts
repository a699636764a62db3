import type { CaseEventInput } from '../schema/case.ts';

/**
 * An event as it is stored, sent and written: quantities keep their printed units, the id is always
 * there. Nothing in SI is ever stored, so a file reads back exactly as it was typed.
 */
export type RecordedEvent = CaseEventInput & { readonly id: string };

/** `Omit` for each member of a union apart, so that the kinds stay told apart. */
type Without<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;

/** An event before the store has given it an id and a time. */
export type EventDraft = Without<CaseEventInput, 'id' | 'at'>;

/** A case as a file holds it, every event with its id. */
export interface RecordedCase {
  readonly case: string;
  readonly events: readonly RecordedEvent[];
}
