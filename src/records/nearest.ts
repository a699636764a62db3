/**
 * Which known id was meant? The one that takes the fewest single-letter changes.
 *
 * Candidates that would take more than two changes in five letters are no suggestion at all.
 *
 * @source method: Wagner and Fischer, The String-to-String Correction Problem (1974)
 *
 * @example
 * nearest('ohms-yelow-black', ['ohms-yellow-black', 'amps-line']) // => 'ohms-yellow-black'
 */
export function nearest(wanted: string, known: Iterable<string>): string | undefined {
  const typed = wanted.slice(0, LONGEST);
  let best: string | undefined;
  let fewest = Math.max(1, Math.floor(typed.length * 0.4)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - typed.length) >= fewest) continue;
    const changes = editDistance(typed, candidate);
    if (changes < fewest) [best, fewest] = [candidate, changes];
  }
  return best;
}

/** Ids are short; what is longer than this is not a typing mistake. */
const LONGEST = 80;

/**
 * Letters to insert, delete or replace so as to turn one word into the other.
 *
 * @example
 * editDistance('sitting', 'kitten') // => 3
 */
export function editDistance(one: string, other: string): number {
  let before = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row++) {
    const now = [row];
    for (let column = 1; column <= other.length; column++) {
      const replace = before[column - 1]! + (one[row - 1] === other[column - 1] ? 0 : 1);
      now.push(Math.min(replace, before[column]! + 1, now[column - 1]! + 1));
    }
    before = now;
  }
  return before[other.length]!;
}

/** `Did you mean "…"? `, to stand before another sentence, or nothing. */
export function didYouMean(wanted: string, known: Iterable<string>): string {
  const meant = nearest(wanted, known);
  return meant === undefined ? '' : `Did you mean "${meant}"? `;
}
