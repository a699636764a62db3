/**
 * Who wrote an event and when in the order of the case: `case:000007:device`.
 *
 * The id alone orders events: by sequence, then by device, so that every device folds the same
 * events into the same state. Clocks are shown and never sorted by.
 */
export interface EventIdParts {
  readonly case: string;
  readonly sequence: number;
  readonly device: string;
}

/** Device of events that were written by hand, without ids. */
export const FILE_DEVICE = 'file';

/** The last sequence that an id has room for. */
export const LAST_SEQUENCE = 999_999;

/**
 * @throws when the text is no event id: ids are checked where they come in
 *
 * @example
 * idParts('larch-hollow-1:000012:k3').sequence // => 12
 */
export function idParts(id: string): EventIdParts {
  const [caseId, digits, device] = id.split(':');
  const sequence = Number(digits);
  if (caseId === undefined || device === undefined || !Number.isInteger(sequence)) {
    throw new Error(`records: ${id} is no event id; write case:000001:device`);
  }
  return { case: caseId, sequence, device };
}

/**
 * @example
 * eventIdOf({ case: 'a', sequence: 3, device: 'file' }) // => 'a:000003:file'
 */
export function eventIdOf({ case: caseId, sequence, device }: EventIdParts): string {
  return `${caseId}:${String(sequence).padStart(6, '0')}:${device}`;
}

/** The highest sequence of some ids, 0 when there are none: the next event takes one more. */
export function highestSequence(ids: Iterable<string>): number {
  let highest = 0;
  for (const id of ids) highest = Math.max(highest, idParts(id).sequence);
  return highest;
}

/** Events in the one order of the case; of two with the same id the first is kept. */
export function inOrder<T extends { readonly id: string }>(events: readonly T[]): T[] {
  const seen = new Set<string>();
  const once = events.filter(({ id }) => !seen.has(id) && seen.add(id));
  return once
    .map((event) => ({ event, key: idParts(event.id) }))
    .sort(byKey)
    .map(({ event }) => event);
}

function byKey(one: { key: EventIdParts }, other: { key: EventIdParts }): number {
  if (one.key.sequence !== other.key.sequence) return one.key.sequence - other.key.sequence;
  if (one.key.device === other.key.device) return 0;
  return one.key.device < other.key.device ? -1 : 1;
}
