/**
 * Are two JSON values the same, whatever the order of their fields? A field that is undefined counts
 * as absent, as it does once written.
 */
export function sameContent(one: unknown, other: unknown): boolean {
  if (Object.is(one, other) || (one === 0 && other === 0)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const mine = definedEntries(one);
  const theirs = new Map(definedEntries(other));
  return (
    mine.length === theirs.size &&
    mine.every(([key, value]) => theirs.has(key) && sameContent(value, theirs.get(key)))
  );
}

const definedEntries = (value: object): [string, unknown][] =>
  Object.entries(value).filter(([, inner]) => inner !== undefined);
