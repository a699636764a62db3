import type { EventDraft, RecordedEvent } from '../../../src/records/recorded.ts';

export const CASE = 'larch-hollow-1';

export const idOf = (sequence: number, device = 'us') =>
  `${CASE}:${String(sequence).padStart(6, '0')}:${device}`;

/** Numbers drafts 1, 2, 3 … by one device. */
export function numbered(drafts: readonly EventDraft[], device = 'us'): RecordedEvent[] {
  return drafts.map((draft, index) => ({ ...draft, id: idOf(index + 1, device) }));
}

export const ohms = (
  check: string,
  value: number,
  more: { corrects?: string; asLeft?: true } = {},
): EventDraft => ({
  kind: 'answer',
  check,
  reading: { value: [value, 'ohm'] },
  ...more,
});

export const said = (type: string): EventDraft => ({ kind: 'site', event: { type } });
