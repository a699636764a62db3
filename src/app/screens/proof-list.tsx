import type { SiteView } from '../../../machines/call/types.ts';
import type { JudgedReading, Verdict } from '../../diagnosis/types.ts';
import { readingWords, windowWords } from '../hooks/wording.ts';
import { OutcomeSign } from '../parts/outcome-sign.tsx';
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
    <section className="block">
      <h2>{say('proof-run')}</h2>
      <ul className="proof">
        {verdict.proof.length === 0 && <li>{say('proof-none')}</li>}
        {verdict.proof.map((window) => {
          const judged = done.find((one) => one.check === window.check);
          return (
            <li key={window.check}>
              <OutcomeSign outcome={judged?.outcome ?? 'not-taken'} />
              <span>{texts.check(window.check).name}</span>
              <strong>
                {judged === undefined
                  ? windowWords(texts, window)
                  : readingWords(texts, window.check, judged.reading)}
              </strong>
            </li>
          );
        })}
        {site?.disinfection === 'due' && (
          <li>
            <OutcomeSign outcome="not-taken" />
            <span>{say('disinfect')}</span>
            <strong>{say('due')}</strong>
          </li>
        )}
      </ul>
    </section>
  );
}
