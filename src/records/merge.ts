import { inOrder } from './event-id.ts';
import type { RecordedEvent } from './recorded.ts';
import { sameContent } from './same-content.ts';

/** An event that two devices hold with different content. */
export interface Conflict {
  readonly id: string;
  readonly ours: RecordedEvent;
  readonly theirs: RecordedEvent;
}

export interface Merged {
  readonly events: readonly RecordedEvent[];
  /** Theirs that we did not have. */
  readonly added: readonly RecordedEvent[];
  readonly conflicts: readonly Conflict[];
}

/**
 * Two sets of events of one case become one: the union by id, in the order of the case.
 *
 * Events never change, so taking the same file in twice, or files in another order, ends in the same
 * case. Same id with other content is a fault of somebody's device: reported, ours kept.
 */
export function mergeEvents(ours: readonly RecordedEvent[], theirs: readonly RecordedEvent[]): Merged {
  const mine = new Map(inOrder(ours).map((event) => [event.id, event]));
  const added: RecordedEvent[] = [];
  const conflicts: Conflict[] = [];
  for (const event of inOrder(theirs)) {
    const own = mine.get(event.id);
    if (own === undefined) added.push(event);
    else if (!sameContent(own, event)) conflicts.push({ id: event.id, ours: own, theirs: event });
  }
  return { events: inOrder([...mine.values(), ...added]), added, conflicts };
}
