import type { JudgedReading } from '../../diagnosis/types.ts';
import type { Texts } from '../words/texts.ts';
import { amountWords } from './wording.ts';

/** The outcome in words: "Ohms yellow–black: high", and by how much. */
export function judgedHeading(
  texts: Texts,
  judged: readonly JudgedReading[],
): { title: string; lead: string } {
  const odd = judged.filter((one) => one.outcome !== 'as-expected');
  const [first] = odd.length > 0 ? odd : judged;
  if (first === undefined) return { title: texts.say('working'), lead: '' };
  if (odd.length === 0 && judged.length > 1) {
    return { title: texts.say('judged-all'), lead: '' };
  }
  return {
    title: `${texts.check(first.check).name}: ${texts.answer(first.check, first.outcome)}`,
    lead: [byWords(texts, first), ...odd.slice(1).map((one) => oddWords(texts, one))]
      .filter((one) => one !== '')
      .join(' · '),
  };
}

function oddWords(texts: Texts, judged: JudgedReading): string {
  return `${texts.check(judged.check).name}: ${texts.answer(judged.check, judged.outcome)}`;
}

function byWords(texts: Texts, judged: JudgedReading): string {
  const { by, reading } = judged;
  if (by === undefined || !('value' in reading)) return '';
  return texts.say('judged-by', { amount: amountWords(by, reading.value[1]) });
}

const NAMED_MOST = 3;

/** The first few by name, the rest by their count: the whole list stands with the suspects. */
export function ruledOutWords(texts: Texts, names: readonly string[]): string {
  if (names.length === 0) return texts.say('rules-out-nothing');
  const named = names.slice(0, NAMED_MOST);
  const rest = names.length - named.length;
  return [named.join(', '), ...(rest > 0 ? [texts.say('and-more', { count: rest })] : [])].join(' ');
}
