import { describe, expect, test } from 'vitest';
import minutes from '../../content/judgements/lapse-minutes.json' with { type: 'json' };
import { foldCase } from '../../src/records/fold.ts';
import { lapseDue, mustLapse } from '../../src/records/lapse.ts';
import type { EventDraft } from '../../src/records/recorded.ts';
import { CASE, numbered, said } from './support/events.ts';

const NOW = new Date('2026-03-01T09:30:00Z');
const moment = (reason: Parameters<typeof mustLapse>[0]['reason'], lastEventAt: string | undefined) => ({
  reason,
  lastEventAt,
  now: NOW,
  lapseMinutes: minutes.value,
});

describe('time away', () => {
  test.each([
    ['a moment', '2026-03-01T09:29:59Z', false],
    ['just under five minutes', '2026-03-01T09:25:00.001Z', false],
    ['five minutes', '2026-03-01T09:25:00Z', true],
    ['days', '2026-02-20T09:30:00Z', true],
    ['a clock that ran backwards', '2026-03-01T09:30:01Z', true],
    ['a time in another zone', '2026-03-01T10:28:00+01:00', false],
    ['no time known', undefined, true],
    ['a time that cannot be read', 'noon', true],
  ])('%s', (_, last, lapses) => {
    expect(mustLapse(moment('time', last))).toBe(lapses);
  });
});

test.each(['hand-over', 'import', 'person', 'withdrawn'] as const)('%s lapses at once', (reason) => {
  expect(mustLapse(moment(reason, NOW.toISOString()))).toBe(true);
});

describe('the event to append', () => {
  const due = (drafts: readonly EventDraft[], last: string) =>
    lapseDue(foldCase(CASE, numbered(drafts)), moment('time', last));
  const LONG_AGO = '2026-03-01T08:00:00Z';

  test('takes back what stands', () => {
    expect(due([said('lock-and-tag')], LONG_AGO)).toEqual({ kind: 'site', event: { type: 'lapsed' } });
  });
  test('is none while nothing is claimed, once lapsed, and within five minutes', () => {
    expect(due([], LONG_AGO)).toBeUndefined();
    expect(due([said('lock-and-tag'), said('lapsed')], LONG_AGO)).toBeUndefined();
    expect(due([said('lock-and-tag')], NOW.toISOString())).toBeUndefined();
  });
});
