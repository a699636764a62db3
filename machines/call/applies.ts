import { namesIn } from '../../src/diagnosis/belief/hypotheses.ts';
import type { System, SystemChoice } from '../../src/diagnosis/system.ts';
import type { MeterClass } from '../../src/diagnosis/windows/meter.ts';
import type { Check } from '../../src/schema/check.ts';

/**
 * Does a check exist on this installation? It does when every node and part that it names is there;
 * nothing else says which box has which checks. While the box is not known for certain, a check is
 * offered when it exists on most of what it could be; what is not there cannot be read, and is said so.
 */
export function checksOn(system: System, checks: readonly Check[]): Check[] {
  const { choices } = system;
  const named = choices.map((choice) => ({
    weight: choice.weight,
    names: namesIn(choice.input.pieces),
    fittings: choice.fittings,
  }));
  const mayPullApart = choices.some((choice) => choice.box.plugApart);
  return checks.filter((check) => {
    if (check.notPlugApart === true && mayPullApart) return false;
    const share = named.reduce((sum, one) => (isThere(check, one) ? sum + one.weight : sum), 0);
    return share >= MOST;
  });
}

const MOST = 0.5;

interface There {
  readonly names: ReadonlySet<string>;
  readonly fittings: SystemChoice['fittings'];
}

function isThere(check: Check, { names, fittings }: There): boolean {
  if (check.fitting !== undefined && (fittings[check.fitting]?.chance ?? 0) <= 0) return false;
  return (
    [...placesOf(check), ...(check.needs ?? [])].every((name) => names.has(name)) &&
    !(check.without ?? []).some((name) => names.has(name))
  );
}

/** Can it be done with what is at hand? A kit that nobody has named counts as complete. */
export function isAtHand(
  check: Check,
  kit: { instruments: readonly string[]; meter: MeterClass; senses: ReadonlySet<string> },
): boolean {
  if (check.benchOnly === true && kit.meter !== 'bench') return false;
  return (
    kit.instruments.length === 0 ||
    kit.senses.has(check.instrument) ||
    kit.instruments.includes(check.instrument)
  );
}

/** The nodes and parts that a check touches. */
export function placesOf(check: Check): readonly string[] {
  const { at } = check;
  if ('between' in at) return [...at.between, ...(at.tie ?? [])];
  if ('across' in at) return [at.across];
  if ('clamp' in at) return at.clamp;
  if ('tied' in at) return [...at.tied, at.to];
  return [];
}
