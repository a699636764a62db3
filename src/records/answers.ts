import type { Person } from '../schema/basics.ts';
import type { CaseState, StandingAnswer } from '../schema/case-state.ts';
import { answerFits, type Known } from './fits.ts';
import type { RecordedEvent } from './recorded.ts';

type AnswerEvent = Extract<RecordedEvent, { kind: 'answer' }>;

/** An answer with the place in the order that it speaks for: its own, or that of what it corrects. */
interface Placed {
  readonly answer: AnswerEvent;
  readonly by: Person;
  readonly place: number;
  readonly corrects: readonly string[];
}

export interface AnswersNow {
  readonly standing: readonly { readonly answer: StandingAnswer; readonly asLeft: boolean }[];
  /** Replaced answer → the answer that stands in its place. */
  readonly replaced: ReadonlyMap<string, string>;
}

/**
 * Which reading of each check stands?
 *
 * A correction takes the place of the answer that it names, check and all (a reading typed in under
 * the wrong check moves). Of several answers to one check the last place stands: a reading taken
 * again replaces the one before. What was found and what was left are kept apart.
 *
 * @param counting events in order, withdrawn ones left out
 */
export function standingAnswers(
  counting: readonly RecordedEvent[],
  checks: Known['checks'] | undefined,
): AnswersNow {
  const { live, replaced } = afterCorrections(counting);
  const latest = new Map<string, Placed>();
  const usable = live.filter(
    ({ answer }) => checks === undefined || answerFits(answer, checks, '').length === 0,
  );
  for (const placed of usable.sort((one, other) => one.place - other.place)) {
    const key = `${placed.answer.check} ${placed.answer.asLeft ?? false}`;
    const before = latest.get(key);
    if (before !== undefined) replaced.set(before.answer.id, placed.answer.id);
    latest.set(key, before === undefined ? placed : { ...placed, corrects: lineage(before, placed) });
  }
  const standing = [...latest.values()].sort((one, other) => one.place - other.place);
  return { standing: standing.map(standingAnswer), replaced };
}

/** Answers that no correction replaced, and who replaced the others. */
function afterCorrections(counting: readonly RecordedEvent[]) {
  const live = new Map<string, Placed>();
  const replaced = new Map<string, string>();
  let by: Person = 'caller';
  for (const [place, event] of counting.entries()) {
    if (event.kind === 'person') by = event.role;
    if (event.kind !== 'answer') continue;
    const target = event.corrects === undefined ? undefined : live.get(latestOf(event.corrects, replaced));
    if (target === undefined) {
      live.set(event.id, { answer: event, by, place, corrects: [] });
      continue;
    }
    live.delete(target.answer.id);
    replaced.set(target.answer.id, event.id);
    const corrects = [...target.corrects, target.answer.id];
    live.set(event.id, { answer: event, by, place: target.place, corrects });
  }
  return { live: [...live.values()], replaced };
}

/** Two corrections of one answer make a chain: the second corrects the first. */
function latestOf(id: string, replaced: ReadonlyMap<string, string>): string {
  let last = id;
  for (let next = replaced.get(last); next !== undefined; next = replaced.get(last)) last = next;
  return last;
}

const lineage = (before: Placed, now: Placed): readonly string[] => [
  ...before.corrects,
  before.answer.id,
  ...now.corrects,
];

function standingAnswer({ answer, by, corrects }: Placed): AnswersNow['standing'][number] {
  const { id, check, reading, at } = answer;
  return { answer: { event: id, check, reading, at, by, corrects }, asLeft: answer.asLeft ?? false };
}

/** What was found is evidence; what was left is the next visit's baseline. */
export function splitAnswers(standing: AnswersNow['standing']): Pick<CaseState, 'answers' | 'asLeft'> {
  const of = (asLeft: boolean) => standing.filter((one) => one.asLeft === asLeft).map(({ answer }) => answer);
  return { answers: of(false), asLeft: of(true) };
}
