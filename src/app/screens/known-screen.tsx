import { QUESTIONS, type Question } from '../hooks/installation-facts.ts';
import { knownValue } from '../hooks/known-lines.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { QuestionBody } from './question-body.tsx';
import { SiteStrip } from './site-strip.tsx';
import type { To } from './step-screen.tsx';

interface KnownProps {
  readonly open: OpenCase;
  /** The line that is being filled in; none shows them all. */
  readonly question: string | undefined;
  readonly to: To;
}

/** The title block of the case: every line optional, each filled in on a screen of its own. */
export function KnownScreen({ open, question, to }: KnownProps) {
  const asked = QUESTIONS.find((one) => one === question);
  return asked === undefined ? (
    <AllLines open={open} to={to} />
  ) : (
    <OneLine open={open} question={asked} to={to} />
  );
}

function AllLines({ open, to }: { open: OpenCase; to: To }) {
  const texts = useTexts();
  const { catalog } = useServices();
  const { say } = texts;
  const { state } = open;
  if (state === undefined) return null;
  return (
    <Frame
      name="known"
      strip={<SiteStrip open={open} />}
      title={say('known-title')}
      lead={say('known-hint')}
      answer={
        <ul className="known-lines">
          {QUESTIONS.map((one) => (
            <li key={one}>
              <Key onPress={() => to('known', [one])}>
                <span className="block-label">{say(`known-${one}`)}</span>
                <strong>{knownValue(texts, catalog, { state, question: one }) ?? say('unknown')}</strong>
              </Key>
            </li>
          ))}
        </ul>
      }
      keys={
        <Key main onPress={() => to('step')}>
          {say('to-the-step')}
        </Key>
      }
    />
  );
}

function OneLine({ open, question, to }: { open: OpenCase; question: Question; to: To }) {
  const { say } = useTexts();
  const next = QUESTIONS[QUESTIONS.indexOf(question) + 1];
  return (
    <Frame
      name={`known ${question}`}
      strip={<SiteStrip open={open} />}
      title={say(`ask-${question}`)}
      answer={<QuestionBody open={open} question={question} />}
      keys={
        <>
          <Key onPress={() => to('known')}>{say('all-lines')}</Key>
          {next === undefined ? (
            <Key main onPress={() => to('step')}>
              {say('to-the-step')}
            </Key>
          ) : (
            <Key main onPress={() => to('known', [next])}>
              {say('next-question')}
            </Key>
          )}
        </>
      }
    />
  );
}
