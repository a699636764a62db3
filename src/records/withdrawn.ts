import type { RecordedEvent } from './recorded.ts';

/**
 * Which events count no longer, and by which step back?
 *
 * Only an earlier event can be withdrawn. A step back that was itself withdrawn withdraws nothing,
 * so the list is read from its end.
 *
 * @param ordered in the order of the case
 * @returns withdrawn id → id of the event that withdrew it
 */
export function withdrawnIn(ordered: readonly RecordedEvent[]): Map<string, string> {
  const place = new Map(ordered.map(({ id }, index) => [id, index]));
  const withdrawn = new Map<string, string>();
  for (let index = ordered.length - 1; index >= 0; index--) {
    const event = ordered[index]!;
    if (event.kind !== 'visit' || withdrawn.has(event.id)) continue;
    for (const id of event.withdraws ?? []) {
      if ((place.get(id) ?? index) < index) withdrawn.set(id, event.id);
    }
  }
  return withdrawn;
}
