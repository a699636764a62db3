import type { ExpectedWindow, WindowPart } from '../../diagnosis/types.ts';
import type { Reading } from '../../schema/case.ts';
import type { TrailLine } from '../../schema/case-state.ts';
import { formatIn, formatRange, formatReading } from '../format/amount.ts';
import type { Texts } from '../words/texts.ts';

/**
 * Readings, windows and events in words. A reading is shown as it was typed; what the engine worked
 * out is rounded here and nowhere else.
 */
export function readingWords(texts: Texts, check: string, reading: Reading): string {
  if ('value' in reading) return formatReading(...reading.value).text;
  if ('open' in reading) return texts.name('outcomes', 'open');
  if ('unstable' in reading) return texts.name('outcomes', 'unstable');
  if ('answer' in reading) return texts.answer(check, reading.answer);
  return `${texts.name('outcomes', 'not-taken')}: ${texts.name('not-taken', reading.notTaken)}`;
}

/** "2.4–3.1 Ω", "over 2 MΩ", "open", an answer, or nothing where no window is known. */
export function windowWords(texts: Texts, window: ExpectedWindow): string {
  if (window.kind === 'open') return texts.name('outcomes', 'open');
  if (window.kind === 'answer') return texts.answer(window.check, window.answer ?? '');
  if (window.kind === 'unknown') return '';
  const mark = window.fromMemory ? ' ◇' : '';
  return `${endsWords(texts, window)} ${shownRange(window).sign}${mark}`;
}

/** Both ends, or "over" and "up to" where there is one: no unit. */
export function endsWords(texts: Texts, window: ExpectedWindow): string {
  const { low, high } = shownRange(window);
  if (high === undefined) return texts.say('window-over', { low: low ?? '0' });
  if (low === undefined) return texts.say('window-under', { high });
  return `${low}–${high}`;
}

/** The ends as printed; a low end of nothing is no end. */
function shownRange({ low, high, unit = '' }: ExpectedWindow) {
  return formatRange(
    { ...(low === undefined || low === 0 ? {} : { low }), ...(high === undefined ? {} : { high }) },
    unit,
  );
}

/** An SI amount in a unit: "0.85 Ω". */
export function amountWords(value: number, unit: string): string {
  return formatIn(value, unit).text;
}

/** What a window is made of: "motor table 1.9 to 2.3 Ω ◇, cable 0.75 to 0.89 Ω, meter error −0.3 to 0.3 Ω". */
export function partsWords(texts: Texts, window: ExpectedWindow): string {
  return window.parts.map((part) => partWords(texts, part, window.unit ?? '')).join(', ');
}

function partWords(texts: Texts, part: WindowPart, unit: string): string {
  const isMemory = part.from.some((one) => one.mark === 'memory');
  const name = texts.name('window-parts', part.name);
  const [low, high] = [formatIn(part.low, unit), formatIn(part.high, unit)];
  const text = texts.say('made-of', { name, low: low.figure, high: high.text });
  return isMemory ? `${text} ◇` : text;
}

/** A line of the trail that is no reading. */
export function trailWords(texts: Texts, line: TrailLine): string {
  const text = line.text ?? '';
  const [first = '', second] = text.split(' ');
  switch (line.kind) {
    case 'site':
      return second === undefined
        ? texts.name('site-facts', first)
        : `${texts.name('site-facts', first)}, ${texts.name('places', second)}`;
    case 'visit':
      return visitWords(texts, first.replace(/:$/, ''));
    case 'person':
      return `${texts.say('known-person')}: ${texts.name('persons', text)}`;
    case 'opened':
      return `${texts.say('trail-opened')} ${text}`;
    case 'installation':
      return `${texts.say('known-title')}: ${text
        .split(' ')
        .map((field) => texts.name('fields', field))
        .join(', ')}`;
    case 'kit':
      return texts.say('known-kit');
    case 'circumstances':
      return texts.say('known-happened');
    case 'answer':
      return '';
    default: {
      const never: never = line.kind;
      return never;
    }
  }
}

const ASKED_FOR = 'asked-for.';

function visitWords(texts: Texts, type: string): string {
  if (!type.startsWith(ASKED_FOR)) return texts.name('visit-facts', type);
  return texts.say('trail-asked-for', { check: texts.check(type.slice(ASKED_FOR.length)).name });
}
