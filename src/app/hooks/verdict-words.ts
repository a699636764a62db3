import type { Verdict } from '../../diagnosis/types.ts';
import { inHundred } from '../format/share.ts';
import type { Texts } from '../words/texts.ts';

/** The verdict in a title and one line: what it is, and whether the pump comes up. */
export function verdictHeading(texts: Texts, verdict: Verdict): { title: string; lead: string } {
  const { say } = texts;
  const first = verdict.faults[0];
  const named = first === undefined ? say('verdict-watch') : texts.faultName(first.fault, first.variant);
  switch (verdict.kind) {
    case 'named':
      return { title: named, lead: pullLine(texts, verdict) };
    case 'group':
      return verdict.faults.length > 1
        ? { title: texts.action(verdict.action).name, lead: groupLine(texts, verdict) }
        : { title: say('verdict-likely', { fault: named }), lead: likelyLine(texts, verdict) };
    case 'contradiction':
      return {
        title: say('verdict-contradiction'),
        lead: say('verdict-contradiction-lead', { check: texts.check(verdict.takeAgain ?? '').name }),
      };
    case 'watch':
      return { title: say('verdict-watch'), lead: say('verdict-watch-lead') };
    case 'refer':
      return { title: say('verdict-refer'), lead: say('verdict-refer-lead') };
    case 'normal':
      return { title: say('verdict-normal'), lead: pullLine(texts, verdict) };
    case 'not-this-tool':
      return { title: say('verdict-not-this-tool'), lead: say('verdict-not-this-tool-lead') };
    default: {
      const never: never = verdict.kind;
      return never;
    }
  }
}

/** The same for paper: whether the pump comes up, and no probability. */
export function reportHeading(texts: Texts, verdict: Verdict): { title: string; lead: string } {
  const isRepair = verdict.kind === 'named' || verdict.kind === 'group';
  const heading = verdictHeading(texts, verdict);
  return isRepair ? { ...heading, lead: pullLine(texts, verdict) } : heading;
}

function pullLine(texts: Texts, verdict: Verdict): string {
  if (verdict.verdictClass === 'pull-likely') return texts.say('verdict-pull-likely');
  return texts.say(verdict.verdictClass === 'pull' ? 'verdict-pull' : 'verdict-no-pull');
}

/** One fault, short of what a name needs. */
function likelyLine(texts: Texts, verdict: Verdict): string {
  const count = inHundred(verdict.probability) ?? 0;
  return `${texts.say('verdict-likely-lead', { count })} ${pullLine(texts, verdict)}`;
}

function groupLine(texts: Texts, verdict: Verdict): string {
  const lead = texts.say('verdict-group-lead');
  return verdict.verdictClass === 'pull' ? lead : `${lead} ${pullLine(texts, verdict)}`;
}
