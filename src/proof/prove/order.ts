import type { CallView } from '../../../machines/call/types.ts';
import type { Catalog } from '../../catalog/catalog.ts';
import type { CaseState } from '../../schema/case-state.ts';
import type { Check } from '../../schema/check.ts';
import type { Order } from './jobs.ts';
import { randomFrom } from './random.ts';

/**
 * The yardsticks: the same belief, the same verdict rule, the same interlock; only the order of the checks
 * is another. Each names the check that it wants next, as a technician may on screen, and the engine leads
 * the way there. It stops when the engine would stop.
 */
export type Wants = (view: CallView, state: CaseState, refused: ReadonlySet<string>) => string | undefined;

export interface Yardstick {
  readonly order: Exclude<Order, 'engine'>;
  /** A competent sequence of checks, for the order of that name. */
  readonly sequence: readonly string[];
  readonly seed: number;
}

export function wantsOf(catalog: Catalog, { order, sequence, seed }: Yardstick): Wants {
  const ids = orderOf(catalog, { order, sequence, seed });
  return (view, state, refused) => {
    const answered = new Set(state.answers.map((one) => one.check));
    const isOpen = (id: string): boolean =>
      view.windows[id] !== undefined && !answered.has(id) && !refused.has(id) && isAsked(catalog, id);
    for (const id of ids.filter(isOpen)) {
      const due = firstDue(catalog, { view, answered }, id);
      if (due !== undefined && isOpen(due)) return due;
    }
    return undefined;
  };
}

function orderOf(catalog: Catalog, { order, sequence, seed }: Yardstick): string[] {
  const all = Object.values(catalog.checks);
  const filed = [
    ...all.filter((check) => check.opening === true),
    ...all.filter((check) => check.opening !== true),
  ].map((check) => check.id);
  if (order === 'catalogue') return filed;
  if (order === 'sequence') return [...sequence, ...filed.filter((id) => !sequence.includes(id))];
  const random = randomFrom(seed);
  return filed
    .map((id) => ({ id, at: random.next() }))
    .sort((one, other) => one.at - other.at)
    .map(({ id }) => id);
}

/** What follows from other readings is never asked. */
const isAsked = (catalog: Catalog, id: string): boolean => {
  const check = catalog.checks[id];
  return check !== undefined && !('sumTest' in check.predict);
};

interface Standing {
  readonly view: CallView;
  readonly answered: ReadonlySet<string>;
}

/** The check, or the first unanswered one of those that must stand before it. */
function firstDue(
  catalog: Catalog,
  at: Standing,
  id: string,
  passed: readonly string[] = [],
): string | undefined {
  const check = catalog.checks[id];
  if (check === undefined || passed.includes(id)) return undefined;
  const before = forerunners(catalog, check, at.view).find((one) => !at.answered.has(one));
  return before === undefined ? id : firstDue(catalog, at, before, [...passed, id]);
}

function forerunners(catalog: Catalog, check: Check, view: CallView): string[] {
  const outcomeOf = (id: string) => view.judged.find((one) => one.check === id)?.outcome;
  const names = (check.after ?? []).flatMap((one) => {
    if (typeof one === 'string') return [one];
    const outcome = outcomeOf(one.seen.check);
    return outcome !== undefined && one.seen.answers.includes(outcome) ? one.checks : [];
  });
  return names.flatMap((name) =>
    Object.values(catalog.checks)
      .filter((one) => (one.id === name || one.set === name) && view.windows[one.id] !== undefined)
      .map((one) => one.id),
  );
}
