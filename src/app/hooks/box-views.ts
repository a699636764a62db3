import type { CallView } from '../../../machines/call/types.ts';
import type { Reading } from '../../schema/case.ts';
import { formatReading } from '../format/amount.ts';
import type { Lead } from '../parts/lead-chip.tsx';
import type { ReadingBoxView } from '../parts/reading-boxes.tsx';
import type { Texts } from '../words/texts.ts';
import { sharedWords } from './set-name.ts';
import type { ReadingBox, ReadingSet } from './use-reading-set.ts';
import { windowWords } from './wording.ts';

/** The boxes of a set as they are drawn: short names, what is typed or read, else what is expected. */
export function boxViews(texts: Texts, view: CallView | undefined, set: ReadingSet): ReadingBoxView[] {
  const names = set.boxes.map((box) => texts.check(box.check).name);
  return set.boxes.map((box, index) => {
    const leads = leadsOf(box.check);
    const window = view?.windows[box.check];
    const expected =
      window === undefined || windowWords(texts, window) === ''
        ? undefined
        : `${texts.say('expect')} ${windowWords(texts, window)}`;
    return {
      id: box.check,
      name: columnName(texts, box.check, names, index),
      leads,
      active: box.active,
      ...(expected === undefined ? {} : { expected }),
      ...shownIn(texts, box, set.typed),
    };
  });
}

function shownIn(
  texts: Texts,
  box: ReadingBox,
  typed: string,
): Pick<ReadingBoxView, 'value' | 'sign' | 'outcome'> {
  if (box.active && (typed !== '' || box.reading === undefined)) return { value: typed };
  return box.reading === undefined ? {} : readInto(texts, box.check, box.reading);
}

function readInto(
  texts: Texts,
  check: string,
  reading: Reading,
): Pick<ReadingBoxView, 'value' | 'sign' | 'outcome'> {
  if ('value' in reading) {
    const { figure, sign } = formatReading(...reading.value);
    return { value: figure, sign };
  }
  const outcome = 'open' in reading ? 'open' : 'unstable' in reading ? 'unstable' : 'not-taken';
  return 'answer' in reading
    ? { value: texts.answer(check, reading.answer) }
    : { value: texts.name('outcomes', outcome), outcome };
}

/**
 * The name of one of several readings, as short as a column needs: its leads, else what tells it apart.
 *
 * @param names full names of all, in order
 */
export function columnName(texts: Texts, check: string, names: readonly string[], index: number): string {
  const leads = leadsOf(check);
  if (names.length > 1 && leads.length > 0)
    return leads.map((lead) => letterOf(texts, lead, leads.length)).join('–');
  return shortNames(names)[index] ?? '';
}

const COLOURS = ['yellow', 'black', 'red'] as const satisfies readonly Lead[];

/** Leads that a check names, in the order of the box. */
export function leadsOf(check: string): (typeof COLOURS)[number][] {
  const words = check.split('-');
  return COLOURS.filter((colour) => words.includes(colour));
}

/** Two leads are named by their letters, one by its word. */
function letterOf(texts: Texts, lead: (typeof COLOURS)[number], count: number): string {
  const word = texts.say(`lead-${lead}`);
  return count > 1 ? word.charAt(0).toUpperCase() : word;
}

/** What tells the names of a set apart: the words after those that all share. */
function shortNames(names: readonly string[]): string[] {
  if (names.length < 2) return [...names];
  const shared = sharedWords(names);
  return names.map((name) => name.split(' ').slice(shared).join(' ') || name);
}
