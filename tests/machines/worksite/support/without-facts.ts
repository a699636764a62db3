import type { SiteFacts } from '../../../../machines/worksite/site.ts';

/**
 * One state of each group that agrees in everything but the facts left out. Whoever reads one of
 * those gets an error, so a walk over the groups is a walk over all states.
 */
export function withoutFacts(sites: readonly SiteFacts[], left: readonly (keyof SiteFacts)[]): SiteFacts[] {
  const groups = new Map<string, SiteFacts>();
  const withheld = refusing(left);
  for (const site of sites) {
    const kept = Object.entries(site).filter(([name]) => !left.some((one) => one === name));
    const key = JSON.stringify(kept);
    if (!groups.has(key)) groups.set(key, Object.assign(Object.create(withheld), Object.fromEntries(kept)));
  }
  return [...groups.values()];
}

/** An object on which each of the facts can only be read with an error. */
function refusing(left: readonly (keyof SiteFacts)[]): object {
  const refuse = (fact: string) => ({
    get(): never {
      throw new Error(`tests: ${fact} was read, though states that differ in it count as one`);
    },
  });
  return Object.defineProperties({}, Object.fromEntries(left.map((fact) => [fact, refuse(fact)])));
}
