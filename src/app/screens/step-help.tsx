import { useState } from 'react';
import type { CheckWords } from '../../schema/words.ts';
import { formatMinutes } from '../format/time.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { useSpeech } from '../hooks/use-speech.ts';
import type { CheckStep } from '../hooks/use-step.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { OtherChecks } from './other-checks.tsx';
import { OutcomeTable } from './outcome-table.tsx';

interface HelpProps {
  readonly open: OpenCase;
  readonly step: CheckStep;
  readonly words: CheckWords;
}

type Shown = 'how' | 'why' | 'others';

/** How it is done, why it is asked, what else could be read: one row of keys, one of them open at a time. */
export function StepHelp({ open, step, words }: HelpProps) {
  const texts = useTexts();
  const { say } = texts;
  const [shown, setShown] = useState<Shown>();
  const speak = useSpeech(texts.language);
  const key = (what: Shown, text: string) => (
    <Key small pressed={shown === what} onPress={() => setShown(shown === what ? undefined : what)}>
      {text}
    </Key>
  );
  return (
    <section className="help" data-shown={shown}>
      <div className="key-row">
        {key('how', say('how'))}
        {speak !== undefined && (
          <Key small onPress={() => speak([words.name, words.ask, ...words.how])}>
            {say('read-aloud')}
          </Key>
        )}
        {step.ranked !== undefined && key('why', say('why'))}
        {step.others.length > 0 && key('others', say('others'))}
      </div>
      {shown === 'how' && <How words={words} />}
      {step.ranked !== undefined && <Why step={step} />}
      {shown === 'others' && <OtherChecks open={open} others={step.others} />}
    </section>
  );
}

function How({ words }: { words: CheckWords }) {
  const { say } = useTexts();
  return (
    <>
      <ol className="how-lines">
        {words.how.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      {words.spoils !== undefined && (
        <p>
          <strong>{say('spoils')}:</strong> {words.spoils.join(' · ')}
        </p>
      )}
    </>
  );
}

/** Always open on a wide screen, behind its key on a phone. */
function Why({ step }: { step: CheckStep }) {
  const { say, name } = useTexts();
  const { ranked, procedure } = step;
  if (ranked === undefined) return null;
  return (
    <div className="why-body">
      <p>
        {say('why-line', { minutes: formatMinutes(ranked.minutes) })}{' '}
        {procedure !== undefined && (
          <span className="second-voice">
            {say('why-tree', { procedure: name('procedures', procedure) })}
          </span>
        )}
      </p>
      {ranked.outcomes.length > 0 && <OutcomeTable ranked={ranked} />}
    </div>
  );
}
