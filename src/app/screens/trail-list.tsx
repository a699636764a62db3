import type { TrailLine } from '../../schema/case-state.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { useRoute } from '../hooks/use-route.ts';
import { readingWords, trailWords } from '../hooks/wording.ts';
import { OutcomeSign } from '../parts/outcome-sign.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface TrailProps {
  readonly open: OpenCase;
  /** Without what was said about the site and the call. */
  readonly readingsOnly?: boolean;
}

/** All that happened, in order. A reading that stands can be tapped to correct it. */
export function TrailList({ open, readingsOnly = false }: TrailProps) {
  const { say } = useTexts();
  const lines = (open.state?.trail ?? []).filter((line) => !readingsOnly || line.kind === 'answer');
  if (lines.length === 0) return <p>{say('trail-none')}</p>;
  return (
    <ol className="trail">
      {lines.map((line) => (
        <li key={line.event} data-corrected={line.correctedBy !== undefined}>
          {line.kind === 'answer' ? <AnswerLine open={open} line={line} /> : <OtherLine line={line} />}
        </li>
      ))}
    </ol>
  );
}

function AnswerLine({ open, line }: { open: OpenCase; line: TrailLine }) {
  const texts = useTexts();
  const { go } = useRoute();
  const { check = '', reading } = line;
  if (reading === undefined) return null;
  const judged = open.view?.judged.find((one) => one.check === check);
  const words = (
    <>
      {line.correctedBy === undefined && judged !== undefined && <OutcomeSign outcome={judged.outcome} />}
      <span>{texts.check(check).name}</span>
      <strong>{readingWords(texts, check, reading)}</strong>
    </>
  );
  if (line.correctedBy !== undefined) {
    return (
      <p className="trail-line">
        <s>{words}</s> <span className="second-voice">{texts.say('trail-corrected')}</span>
      </p>
    );
  }
  return (
    <button
      type="button"
      className="trail-line"
      onClick={() => go({ screen: 'reading', case: open.id, about: [check] })}
    >
      {words}
      {line.asLeft === true && <span className="second-voice">{texts.say('trail-as-left')}</span>}
    </button>
  );
}

function OtherLine({ line }: { line: TrailLine }) {
  const texts = useTexts();
  return <p className="trail-line second-voice">{trailWords(texts, line)}</p>;
}
