import type { CallView } from '../../../machines/call/types.ts';
import { formatMinutes } from '../format/time.ts';
import type { Texts } from '../words/texts.ts';
import { setName } from './set-name.ts';

/** What comes next and why, in a heading and a line. */
export function nextWords(texts: Texts, view: CallView): { what: string; why: string } {
  const { say } = texts;
  const { next } = view;
  switch (next.kind) {
    case 'check':
      return {
        what: setName(
          texts,
          next.checks.map((one) => one.check),
        ),
        why: whyLine(texts, next.ranked?.minutes),
      };
    case 'site-steps':
      return {
        what: say('next-safe', { what: setName(texts, next.towards) }),
        why: whyLine(texts, next.ranked?.minutes),
      };
    case 'ask-installation':
      return { what: say('next-ask'), why: '' };
    case 'verdict':
      return { what: say('next-verdict'), why: '' };
    case 'repair':
      return { what: texts.action(next.verdict.action).name, why: '' };
    case 'proof':
      return { what: say('proof-title'), why: '' };
    case 'closed':
      return { what: say('closed-title'), why: '' };
    case 'stopped':
      return { what: say('stopped-title'), why: '' };
    case 'not-this-tool':
      return { what: say('verdict-not-this-tool'), why: '' };
    default: {
      const never: never = next;
      return never;
    }
  }
}

function whyLine(texts: Texts, minutes: number | undefined): string {
  return minutes === undefined ? '' : texts.say('why-line', { minutes: formatMinutes(minutes) });
}
