import type { Problem } from '../catalog/catalog.ts';
import { type CaseEventInput, eventId, event as eventShape } from '../schema/case.ts';
import { eventIdOf, highestSequence, inOrder, LAST_SEQUENCE } from './event-id.ts';
import type { EventDraft, RecordedEvent } from './recorded.ts';
import { shapeProblems } from './shape-problems.ts';
import type { StoredRow } from './shelf.ts';

/** What a storage holds of a case: the events that can be read, and what is wrong with the others. */
export interface StoredCase {
  readonly case: string;
  readonly events: readonly RecordedEvent[];
  /** Damaged events: reported here, left where they lie, not used. */
  readonly problems: readonly Problem[];
}

export function readRows(caseId: string, rows: readonly StoredRow[]): StoredCase {
  const events: RecordedEvent[] = [];
  const problems: Problem[] = [];
  for (const { id, event } of rows) {
    if (isRecorded(event, caseId, id)) events.push(event);
    else problems.push(...damage(id, event));
  }
  return { case: caseId, events: inOrder(events), problems };
}

function isRecorded(event: unknown, caseId: string, id: string): event is RecordedEvent {
  return isEvent(event) && event.id === id && eventId.safeParse(id).success && id.startsWith(`${caseId}:`);
}

const isEvent = (row: unknown): row is CaseEventInput => eventShape.safeParse(row).success;

function damage(id: string, event: unknown): Problem[] {
  const [first] = shapeProblems(eventShape.safeParse(event).error?.issues ?? [], event);
  const message = first === undefined ? 'its id does not fit its case' : `${first.at}: ${first.message}`;
  return [
    {
      at: `stored event ${id}`,
      message: `is damaged (${message})`,
      hint: 'It is kept and not used. Enter the reading again if it matters.',
    },
  ];
}

interface Stamp {
  readonly case: string;
  readonly device: string;
  readonly at: string;
}

/**
 * Drafts with their ids: sequence = 1 + the highest that this device knows, damaged events included,
 * so that no id is ever used twice.
 *
 * @throws when a draft is no event: a screen built it wrongly
 */
export function numberDrafts(
  present: readonly { readonly id: string }[],
  drafts: readonly EventDraft[],
  stamp: Stamp,
): RecordedEvent[] {
  const ids = present.map(({ id }) => id).filter((id) => eventId.safeParse(id).success);
  const highest = highestSequence(ids);
  if (highest + drafts.length > LAST_SEQUENCE || ids.length + drafts.length > EVENTS_MOST) {
    throw new Error(`records: case ${stamp.case} is full at ${ids.length} events; start a new case`);
  }
  return drafts.map((draft, index) => {
    const id = eventIdOf({ case: stamp.case, sequence: highest + index + 1, device: stamp.device });
    const event: RecordedEvent = { ...draft, id, at: stamp.at };
    const [problem] = shapeProblems(eventShape.safeParse(event).error?.issues ?? [], event);
    if (problem !== undefined) throw new Error(`records: ${problem.at}: ${problem.message}. ${problem.hint}`);
    return event;
  });
}

/** A case file holds no more, so a case that grew further could not be handed over. */
const EVENTS_MOST = 5000;

export const rowOf = (caseId: string, event: RecordedEvent): StoredRow => ({
  id: event.id,
  case: caseId,
  event,
});
