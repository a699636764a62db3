import { Fragment } from 'react';
import type { EvidenceLine } from '../../diagnosis/types.ts';
import { ruledOutWords } from '../hooks/judged-words.ts';
import { readingWords, windowWords } from '../hooks/wording.ts';
import { OutcomeSign } from '../parts/outcome-sign.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** What was read against what was expected, heaviest first, each with what it put out of the running. */
export function EvidenceTable({ evidence }: { evidence: readonly EvidenceLine[] }) {
  const { say } = useTexts();
  return (
    <table className="evidence">
      <thead>
        <tr>
          <th scope="col">{say('proved-by')}</th>
          <th scope="col">{say('col-read')}</th>
          <th scope="col">{say('col-expected')}</th>
        </tr>
      </thead>
      <tbody>
        {evidence.map((line) => (
          <Fragment key={line.check}>
            <EvidenceRow line={line} />
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}

function EvidenceRow({ line }: { line: EvidenceLine }) {
  const texts = useTexts();
  const rules = line.rulesOut.length > 0;
  return (
    <>
      <tr data-note={rules}>
        <th scope="row">
          <OutcomeSign outcome={line.outcome} /> {texts.check(line.check).name}
        </th>
        <td className="read">{readingWords(texts, line.check, line.reading)}</td>
        <td>{windowWords(texts, line.window)}</td>
      </tr>
      {rules && (
        <tr>
          <td className="evidence-note second-voice" colSpan={3}>
            {texts.say('rules-out', { faults: ruledOutWords(texts, line.rulesOut.map(texts.suspect)) })}
          </td>
        </tr>
      )}
    </>
  );
}
