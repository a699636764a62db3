import type { CallView } from '../../../machines/call/types.ts';
import { listSuspects } from '../hooks/suspects.ts';
import { readingWords } from '../hooks/wording.ts';
import { useTexts } from '../words/use-texts.tsx';

/** Each fault that is out of the running, with the reading that put it there. */
export function RuledOutList({ view }: { view: CallView }) {
  const texts = useTexts();
  const { ruledOut } = listSuspects(view);
  return (
    <section className="block">
      <h2 className="small-heading">{texts.say('ruled-out-by')}</h2>
      {ruledOut.length === 0 && <p>{texts.say('ruled-out-none')}</p>}
      <ul className="ruled-out">
        {ruledOut.map((suspect) => (
          <li key={`${suspect.fault} ${suspect.variant}`}>
            <span className="struck" aria-hidden="true" />
            <span>
              {texts.faultName(suspect.fault, suspect.variant)}:{' '}
              <Reason view={view} check={suspect.ruledOutBy ?? ''} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Reason({ view, check }: { view: CallView; check: string }) {
  const texts = useTexts();
  const judged = view.judged.find((one) => one.check === check);
  if (judged === undefined) return <span className="second-voice">{texts.check(check).name}</span>;
  const reading = readingWords(texts, check, judged.reading);
  return (
    <span className="second-voice">
      {texts.check(check).name}, {reading}
    </span>
  );
}
