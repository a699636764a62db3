import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { answerOf, useReadingSet } from '../hooks/use-reading-set.ts';
import { readingWords } from '../hooks/wording.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { AnswerHands } from './answer-hands.tsx';
import { Frame } from './frame.tsx';
import { SiteStrip } from './site-strip.tsx';
import type { To } from './step-screen.tsx';

interface ReadingProps {
  readonly open: OpenCase;
  readonly check: string;
  readonly to: To;
}

/**
 * Corrects a reading that was typed wrongly. It gives no instruction, because the site may no longer
 * be in the state that the reading was taken in: the old value stays in the trail.
 */
export function ReadingScreen({ open, check, to }: ReadingProps) {
  const texts = useTexts();
  const { catalog } = useServices();
  const asLeft = open.view?.next.kind === 'proof' && answerOf(open.state, check, true) !== undefined;
  const set = useReadingSet({
    open,
    checks: [check],
    asLeft,
    onComplete: () => (asLeft ? to('step') : to('judged', [check])),
  });
  const before = answerOf(open.state, check, asLeft);
  if (catalog.checks[check] === undefined) return null;
  return (
    <Frame
      name={`reading ${check}`}
      strip={<SiteStrip open={open} />}
      title={texts.say('correct-title', { check: texts.check(check).name })}
      lead={
        before !== undefined &&
        texts.say('correct-was', { reading: readingWords(texts, check, before.reading) })
      }
      hands={<AnswerHands open={open} set={set} />}
      keys={<Key onPress={() => to('step')}>{texts.say('back')}</Key>}
    />
  );
}
