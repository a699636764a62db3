import { namesIn } from '../../src/diagnosis/belief/hypotheses.ts';
import type { System } from '../../src/diagnosis/system.ts';
import type { MeterClass } from '../../src/diagnosis/windows/meter.ts';
import type { Check } from '../../src/schema/check.ts';

/**
 * Does a check exist on this installation? It does when every node and part that it names is there;
 * nothing else says which box has which checks.
 */
export function checksOn(system: System, checks: readonly Check[]): Check[] {
  const choice = system.choices[0];
  if (choice === undefined) return [];
  const names = namesIn(choice.input.pieces);
  return checks.filter(
    (check) =>
      placesOf(check).every((name) => names.has(name)) &&
      (check.needs ?? []).every((name) => names.has(name)) &&
      !(check.without ?? []).some((name) => names.has(name)) &&
      !(check.notPlugApart === true && choice.box.plugApart),
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
