import type { RecordedEvent } from './recorded.ts';
import type { StoredRow } from './shelf.ts';
import { readRows, type StoredCase } from './stored-case.ts';

/** One case in the list, made anew from its events each time. */
export interface CaseSummary {
  readonly case: string;
  readonly site: string | undefined;
  readonly startedAt: string | undefined;
  readonly lastAt: string | undefined;
  readonly readings: number;
  /** Type of the last visit event: tells a closed case. */
  readonly lastVisit: string | undefined;
  readonly damaged: number;
}

/** Newest first, by the last time that any event carries; cases without a time come last. */
export function summaries(rows: readonly StoredRow[]): CaseSummary[] {
  const byCase = new Map<string, StoredRow[]>();
  for (const row of rows) {
    const own = byCase.get(row.case);
    if (own === undefined) byCase.set(row.case, [row]);
    else own.push(row);
  }
  const all = [...byCase].map(([caseId, own]) => summary(readRows(caseId, own)));
  return all.sort(
    (one, other) => compare(other.lastAt ?? '', one.lastAt ?? '') || compare(one.case, other.case),
  );
}

function summary({ case: caseId, events, problems }: StoredCase): CaseSummary {
  const times = events.flatMap(({ at }) => (at === undefined ? [] : [new Date(at).toISOString()])).sort();
  return {
    case: caseId,
    site: events.findLast(isNamed)?.site,
    startedAt: times[0],
    lastAt: times.at(-1),
    readings: events.filter(({ kind }) => kind === 'answer').length,
    lastVisit: events.findLast(isVisit)?.type,
    damaged: problems.length,
  };
}

type Opened = Extract<RecordedEvent, { kind: 'opened' }>;
const isNamed = (event: RecordedEvent): event is Opened =>
  event.kind === 'opened' && event.site !== undefined;
const isVisit = (event: RecordedEvent): event is Extract<RecordedEvent, { kind: 'visit' }> =>
  event.kind === 'visit';
const compare = (one: string, other: string): number => (one < other ? -1 : Number(one > other));
