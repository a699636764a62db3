import type { TrailLine } from '../schema/case-state.ts';
import type { RecordedEvent } from './recorded.ts';

/**
 * All that happened, in order, corrected and withdrawn events included: the log that a person reads.
 *
 * @param replaced id of an event that stands no longer → the event that took its place or withdrew it
 */
export function trailOf(
  ordered: readonly RecordedEvent[],
  replaced: ReadonlyMap<string, string>,
): TrailLine[] {
  return ordered.map((event) => {
    const correctedBy = replaced.get(event.id);
    return {
      event: event.id,
      at: event.at,
      kind: event.kind,
      ...detail(event),
      ...(correctedBy === undefined ? {} : { correctedBy }),
    };
  });
}

function detail(event: RecordedEvent): Partial<TrailLine> {
  switch (event.kind) {
    case 'answer':
      return {
        check: event.check,
        reading: event.reading,
        ...(event.asLeft === true ? { asLeft: true } : {}),
      };
    case 'opened':
      return event.site === undefined ? {} : { text: event.site };
    case 'person':
      return { text: event.role };
    case 'kit':
      return { text: [event.meter, ...event.instruments].join(' ') };
    case 'installation':
      return { text: [...Object.keys(event.set), ...(event.unknown ?? [])].join(' ') };
    case 'circumstances':
      return { text: event.happened.join(' ') };
    case 'site':
      return { text: [event.event.type, event.event.place].filter((word) => word !== undefined).join(' ') };
    case 'visit':
      return { text: event.note === undefined ? event.type : `${event.type}: ${event.note}` };
    default: {
      const never: never = event;
      return never;
    }
  }
}
