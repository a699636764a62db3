import type { Words } from '../../catalog/catalog.ts';
import type { ActionWords, CheckWords, FaultWords, SiteStepWords } from '../../schema/words.ts';
import type { UiKey } from './ui-key.ts';

/** What goes into the {gaps} of a text. */
export type Fill = Readonly<Record<string, string | number>>;

/**
 * The texts of one language, looked up by id.
 *
 * A text of the screens that is missing is a programmer's mistake and throws. A record without words
 * shows its id: a technician can still act on "ohms-yellow-black", not on an empty line.
 */
export interface Texts {
  readonly language: string;
  say(key: UiKey, fill?: Fill): string;
  check(id: string): CheckWords;
  fault(id: string): FaultWords;
  /** "Splice open at the well head, yellow". */
  faultName(id: string, variant: string): string;
  /** A suspect written as "fault variant", as the evidence names it. */
  suspect(key: string): string;
  action(id: string): ActionWords;
  siteStep(id: string): SiteStepWords;
  /** Name of a small thing in a list of names; its id, spaced, where the list lacks it. */
  name(list: string, id: string): string;
  /** An answer, worded by its check, else by the list of outcomes. */
  answer(check: string, answer: string): string;
}

export function textsOf(words: Words): Texts {
  const ui = uiTexts(words);
  const fault = (id: string): FaultWords =>
    words.faults[id] ?? { id, name: spaced(id), technician: '', customer: '', rootCauses: [], overturn: '' };
  const check = (id: string): CheckWords =>
    words.checks[id] ?? { id, name: spaced(id), ask: spaced(id), how: [spaced(id)] };
  const name = (list: string, id: string): string => words.names[list]?.texts[id] ?? spaced(id);
  const named = (id: string, variant: string): string => {
    const said = fault(id).variants?.[variant];
    return said === undefined || said === '' ? fault(id).name : `${fault(id).name}, ${said}`;
  };
  return {
    language: words.language,
    say: (key, fill = {}) => filled(ui[key], key, fill),
    check,
    fault,
    faultName: named,
    suspect: (key) => {
      const [id = key, variant = ''] = key.split(' ');
      return named(id, variant);
    },
    action: (id) => words.actions[id] ?? { id, name: spaced(id), steps: [spaced(id)] },
    siteStep: (id) =>
      words.siteSteps[id] ?? { id, name: spaced(id), ask: spaced(id), how: [spaced(id)], shows: '' },
    name,
    answer: (id, answer) => check(id).answers?.[answer] ?? name('outcomes', answer),
  };
}

function uiTexts(words: Words): Readonly<Record<string, string>> {
  return Object.assign(
    {},
    ...Object.values(words.names)
      .filter(({ id }) => id.startsWith('ui-'))
      .map(({ texts }) => texts),
  );
}

function filled(text: string | undefined, key: string, fill: Fill): string {
  if (text === undefined)
    throw new Error(`words: no text "${key}"; add it to content/words/en/names/ui-*.json`);
  return text.replace(/\{(\w+)\}/g, (gap, name: string) => String(fill[name] ?? gap));
}

const spaced = (id: string): string => id.replaceAll('-', ' ');
