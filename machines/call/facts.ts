import type { SiteEvent } from '../../src/schema/case.ts';
import type { Check, SiteFact } from '../../src/schema/check.ts';
import type { Readings } from './readings.ts';

/**
 * What readings tell the interlock, as content says it: that insulation is good, that somebody has
 * reset the breaker, that the windings have been read. A reading that was not taken tells nothing.
 */
export interface ReadingFacts {
  /** Facts that are events of the worksite machine. */
  readonly events: readonly SiteEvent[];
  readonly windingOhmsRead: boolean;
  readonly overloadRead: boolean;
  readonly breakerTripped: boolean;
}

const EVENTS: readonly SiteFact[] = ['insulation-good', 'insulation-bad', 'no-reset-made', 'reset-used'];

export function readingFacts(checks: readonly Check[], readings: Readings): ReadingFacts {
  const facts = new Set(checks.flatMap((check) => factsOf(check, readings)));
  return {
    events: EVENTS.filter((fact) => facts.has(fact)).map((type) => ({ type })),
    windingOhmsRead: facts.has('winding-ohms-read'),
    overloadRead: facts.has('overload-read'),
    breakerTripped: facts.has('breaker-tripped'),
  };
}

function factsOf(check: Check, { outcomeOf }: Readings): SiteFact[] {
  const outcome = outcomeOf(check.id);
  if (outcome === undefined || !isRead(outcome)) return [];
  return (check.says ?? []).flatMap(({ fact, outcomes }) =>
    outcomes === undefined || outcomes.includes(outcome) ? [fact] : [],
  );
}

/** A reading was really taken. */
export function isRead(outcome: string | undefined): boolean {
  return outcome !== undefined && outcome !== 'not-taken' && outcome !== 'unstable';
}
