import type { ExpectedWindow, JudgedReading } from '../../diagnosis/types.ts';
import { readingWords, windowWords } from '../hooks/wording.ts';
import { OutcomeSign } from '../parts/outcome-sign.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface RowProps {
  readonly judged: JudgedReading;
  readonly window: ExpectedWindow | undefined;
}

/** One reading against its window. */
export function JudgedRow({ judged, window }: RowProps) {
  const texts = useTexts();
  return (
    <section className="judged-row">
      <h2 className="small-heading">
        <OutcomeSign outcome={judged.outcome} /> {texts.check(judged.check).name}
      </h2>
      <p>
        <strong className="value">{readingWords(texts, judged.check, judged.reading)}</strong>{' '}
        {window !== undefined && windowWords(texts, window) !== '' && (
          <span className="second-voice">
            {texts.say('expected')} {windowWords(texts, window)}
          </span>
        )}
      </p>
    </section>
  );
}
