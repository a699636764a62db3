import type { Catalog } from '../../catalog/catalog.ts';
import { figure, figureOf } from '../../diagnosis/judgements.ts';
import type { Check } from '../../schema/check.ts';
import type { Fault } from '../../schema/fault.ts';
import type { Random } from './random.ts';

/**
 * What eyes and ears find where the plant has no answer: the fault's own signs by the numbers of the five
 * words, else what the check usually shows, else what is expected of a sound system. What is left over
 * goes to the expected answer where nothing is said of it, else evenly to the answers not spoken of.
 */
export function drawnAnswer(
  catalog: Catalog,
  check: Check,
  drawn: { own: Signs; random: Random; soundStrays: boolean },
): string | undefined {
  const isSpokenOf = drawn.own.length > 0 || (check.usual ?? []).length > 0;
  if (!isSpokenOf && !drawn.soundStrays) return check.expected;
  const shares = sharesOf(catalog, check, drawn.own);
  if (shares === undefined) return undefined;
  const answers = Object.keys(shares);
  return answers[drawn.random.weighted(Object.values(shares))];
}

/** What the fault itself says of a check; nothing where it leaves it to the plant. */
export type Signs = NonNullable<Fault['signs']>;

function sharesOf(catalog: Catalog, check: Check, own: Signs): Readonly<Record<string, number>> | undefined {
  if (!('answers' in check.reads)) return undefined;
  const said = own.length > 0 ? own : (check.usual ?? []);
  const { expected } = check;
  if (said.length === 0 && expected === undefined) return undefined;
  const shares: Record<string, number> = Object.fromEntries(
    said.map(({ answer, how }) => [answer, figureOf(catalog.judgements, 'frequency-words', how)]),
  );
  if (said.length === 0 && expected !== undefined)
    shares[expected] = figure(catalog.judgements, 'sound-shows-expected');
  const unsaid = check.reads.answers.filter((answer) => shares[answer] === undefined);
  const takers = expected !== undefined && unsaid.includes(expected) ? [expected] : unsaid;
  const left = 1 - Object.values(shares).reduce((sum, share) => sum + share, 0);
  for (const answer of takers) shares[answer] = Math.max(0, left) / takers.length;
  return shares;
}

/** Another of the answers, each alike: what somebody says who is mistaken. */
export function mistaken(check: Check, answer: string, random: Random): string {
  const others = 'answers' in check.reads ? check.reads.answers.filter((one) => one !== answer) : [];
  return others.length === 0 ? answer : random.pick(others);
}
