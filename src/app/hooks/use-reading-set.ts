import { useState } from 'react';
import type { Catalog } from '../../catalog/catalog.ts';
import type { EventDraft } from '../../records/recorded.ts';
import type { Reading } from '../../schema/case.ts';
import type { CaseState, StandingAnswer } from '../../schema/case-state.ts';
import type { OpenCase } from './use-case.ts';

/** One box of a reading set: what was read for it, if anything. */
export interface ReadingBox {
  readonly check: string;
  readonly reading: Reading | undefined;
  readonly active: boolean;
}

export interface ReadingSet {
  readonly boxes: readonly ReadingBox[];
  readonly active: string | undefined;
  readonly typed: string;
  type(text: string): void;
  choose(check: string): void;
  /** Stores a reading for the active box; the next empty box becomes active by itself. */
  give(reading: Reading): Promise<void>;
}

interface SetProps {
  readonly open: OpenCase;
  /** All checks of the screen, in order. */
  readonly checks: readonly string[];
  readonly asLeft: boolean;
  /** Called once every box holds a reading. */
  onComplete(checks: readonly string[]): void;
}

/**
 * The boxes of the checks on screen. A reading is stored the moment its unit key is pressed, so a
 * page that is killed in the middle of a set comes back with the boxes filled.
 */
export function useReadingSet({ open, checks, asLeft, onComplete }: SetProps): ReadingSet {
  const [chosen, setChosen] = useState<string>();
  const [typed, setTyped] = useState('');
  const given = (check: string): StandingAnswer | undefined => answerOf(open.state, check, asLeft);
  const empty = checks.filter((check) => given(check) === undefined);
  const active = chosen !== undefined && checks.includes(chosen) ? chosen : (empty[0] ?? checks[0]);
  const give = async (reading: Reading): Promise<void> => {
    if (active === undefined) return;
    const stored = await open.say(answerEvent(active, reading, { asLeft, before: given(active) }));
    if (!stored) return;
    setTyped('');
    setChosen(undefined);
    if (empty.every((check) => check === active)) onComplete(checks);
  };
  return {
    boxes: checks.map((check) => ({ check, reading: given(check)?.reading, active: check === active })),
    active,
    typed,
    type: setTyped,
    choose: (check) => {
      setTyped('');
      setChosen(check);
    },
    give,
  };
}

/** The reading that stands for a check, as found or as left. */
export function answerOf(
  state: CaseState | undefined,
  check: string,
  asLeft: boolean,
): StandingAnswer | undefined {
  return (asLeft ? state?.asLeft : state?.answers)?.find((one) => one.check === check);
}

interface Context {
  readonly asLeft: boolean;
  readonly before: StandingAnswer | undefined;
}

/** A reading given for a check that has one corrects it: both stay in the trail. */
export function answerEvent(check: string, reading: Reading, { asLeft, before }: Context): EventDraft {
  return {
    kind: 'answer',
    check,
    reading,
    ...(before === undefined ? {} : { corrects: before.event }),
    ...(asLeft ? { asLeft: true } : {}),
  };
}

/**
 * All checks that share the screen of these: the whole set where it was begun, so that boxes filled
 * before a reload are seen again.
 *
 * @param exists ids of checks that this installation has
 */
export function wholeSet(
  catalog: Catalog,
  checks: readonly string[],
  exists: (check: string) => boolean,
): string[] {
  const set = checks[0] === undefined ? undefined : catalog.checks[checks[0]]?.set;
  if (set === undefined) return [...checks];
  const members = Object.values(catalog.checks)
    .filter((one) => one.set === set && (exists(one.id) || checks.includes(one.id)))
    .map((one) => one.id);
  return inSetOrder(members);
}

/** Yellow before black before red, pair before its legs: the order of the boxes. */
function inSetOrder(checks: readonly string[]): string[] {
  const rank = (id: string): string =>
    id.replaceAll('yellow', '1').replaceAll('black', '2').replaceAll('red', '3').replaceAll('pair', '0');
  return [...checks].sort((one, other) => (rank(one) < rank(other) ? -1 : 1));
}
