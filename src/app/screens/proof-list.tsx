import type { SiteView } from '../../../machines/call/types.ts';
import type { JudgedReading, Verdict } from '../../diagnosis/types.ts';
import { readingWords, windowWords } from '../hooks/wording.ts';
import { Row, Rows, Section } from '../parts/section.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface ProofListProps {
  readonly verdict: Verdict;
  readonly done: readonly JudgedReading[];
  readonly site: SiteView | undefined;
}

/** The proof run: empty boxes that readings fill one by one. */
export function ProofList({ verdict, done, site }: ProofListProps) {
  const texts = useTexts();
  const { say } = texts;
  return (
    <Section title={say(done.length > 0 ? 'proof-taken' : 'proof-run')}>
      {verdict.proof.length === 0 && <p>{say('proof-none')}</p>}
      <Rows>
        {verdict.proof.map((window) => {
          const judged = done.find((one) => one.check === window.check);
          return (
            <Row
              key={window.check}
              sign={judged?.outcome ?? 'not-taken'}
              value={
                judged === undefined
                  ? windowWords(texts, window)
                  : readingWords(texts, window.check, judged.reading)
              }
              {...(judged === undefined ? {} : { note: `${say('expected')} ${windowWords(texts, window)}` })}
            >
              {texts.check(window.check).name}
            </Row>
          );
        })}
        {site?.disinfection === 'due' && (
          <Row sign="not-taken" value={say('due')}>
            {say('disinfect')}
          </Row>
        )}
      </Rows>
    </Section>
  );
}
