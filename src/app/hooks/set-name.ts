import type { Texts } from '../words/texts.ts';

/** How many leading words all names share. */
export function sharedWords(names: readonly string[]): number {
  const split = names.map((name) => name.split(' '));
  let shared = 0;
  while (split.every((words) => words[shared] !== undefined && words[shared] === split[0]?.[shared]))
    shared++;
  return shared;
}

/** One name for a reading set: what its names share, and how many there are. */
export function setName(texts: Texts, checks: readonly string[]): string {
  const names = checks.map((check) => texts.check(check).name);
  const [first = ''] = names;
  if (names.length < 2) return first;
  const shared = first
    .split(' ')
    .slice(0, sharedWords(names))
    .join(' ')
    .replace(/[ ,;:]+$/, '');
  return texts.say('set-of', { name: shared === '' ? first : shared, count: names.length });
}
