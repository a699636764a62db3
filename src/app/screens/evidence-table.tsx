import type { EvidenceLine } from '../../diagnosis/types.ts';
import { ruledOutWords } from '../hooks/judged-words.ts';
import { readingWords, windowWords } from '../hooks/wording.ts';
import { OutcomeSign } from '../parts/outcome-sign.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** What was read against what was expected, heaviest first, each with what it put out of the running. */
export function EvidenceTable({ evidence }: { evidence: readonly EvidenceLine[] }) {
  const texts = useTexts();
  const { say } = texts;
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
          <tr key={line.check}>
            <th scope="row">
              <OutcomeSign outcome={line.outcome} /> {texts.check(line.check).name}
              {line.rulesOut.length > 0 && (
                <span className="second-voice">
                  {say('rules-out', { faults: ruledOutWords(texts, line.rulesOut.map(texts.suspect)) })}
                </span>
              )}
            </th>
            <td className="read">{readingWords(texts, line.check, line.reading)}</td>
            <td>{windowWords(texts, line.window)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
