import { useState } from 'react';
import type { SiteStepView, SiteView } from '../../../machines/call/types.ts';
import { formatMinutes } from '../format/time.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { answerEvent, answerOf } from '../hooks/use-reading-set.ts';
import { HoldKey } from '../parts/hold-key.tsx';
import { Key } from '../parts/key.tsx';
import type { Texts } from '../words/texts.ts';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { NotTaken } from './not-taken.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';

interface SiteStepsProps {
  readonly open: OpenCase;
  readonly steps: readonly SiteStepView[];
  /** What the steps lead to: these checks, and in words. */
  readonly checks: readonly string[];
  readonly then: string;
  readonly site: SiteView;
}

/** The steps that make the site what the next check needs: the first large, the rest in order. */
export function SiteStepsScreen({ open, steps, checks, then, site }: SiteStepsProps) {
  const texts = useTexts();
  const [asksWhy, setAsksWhy] = useState(false);
  const [first, ...rest] = steps;
  if (first === undefined) return null;
  const { say } = texts;
  return (
    <Frame
      name={`site ${first.step} ${first.place ?? ''}`}
      strip={<SiteStrip open={open} />}
      title={withPlace(texts, first)}
      beside={say('site-minutes', { minutes: formatMinutes(first.minutes) })}
      lead={first.who === 'qualified' ? say('site-qualified') : undefined}
      answer={
        <>
          {site.lapsed && <p className="caution">{say('site-lapsed')}</p>}
          {first.mindSecondSource === true && <p className="caution">{say('site-second-source')}</p>}
          <StepLines lines={first.lines} />
          <h2 className="small-heading">{say('site-after')}</h2>
          <ol className="steps-after">
            {rest.map((step) => (
              <li key={`${step.step} ${step.place ?? ''}`}>{withPlace(texts, step)}</li>
            ))}
            <li className="steps-then">{then}</li>
          </ol>
          <StepMenu open={open} />
        </>
      }
      hands={
        asksWhy && (
          <NotTaken
            onBack={() => setAsksWhy(false)}
            onReason={(reason) => {
              setAsksWhy(false);
              void open.say(
                ...checks.map((check) =>
                  answerEvent(
                    check,
                    { notTaken: reason },
                    { asLeft: false, before: answerOf(open.state, check, false) },
                  ),
                ),
              );
            }}
          />
        )
      }
      keys={
        !asksWhy && (
          <>
            {checks.length > 0 && <Key onPress={() => setAsksWhy(true)}>{say('cannot-do')}</Key>}
            <DoneKey open={open} step={first} />
          </>
        )
      }
    />
  );
}

/** What one press confirms: each instruction with how it is done and what shows that it is. */
function StepLines({ lines }: { lines: readonly string[] }) {
  const texts = useTexts();
  return (
    <ol className="step-lines" data-single={lines.length === 1}>
      {lines.map((line) => {
        const { ask, how, shows } = texts.siteStep(line);
        return (
          <li key={line}>
            <p className="step-ask">{ask}</p>
            <ul className="how-lines">
              {how.map((one) => (
                <li key={one}>{one}</li>
              ))}
            </ul>
            {shows !== '' && (
              <p className="shows">
                <strong>{texts.say('site-shows')}:</strong> {shows}
              </p>
            )}
          </li>
        );
      })}
    </ol>
  );
}

/** Not pressed twice: while the engine looks at the last press, the next one is not taken. */
function DoneKey({ open, step }: { open: OpenCase; step: SiteStepView }) {
  const { say } = useTexts();
  const done = (): void => {
    if (!open.waiting) void open.say({ kind: 'site', event: step.says });
  };
  return step.hold ? (
    <HoldKey hint={say('site-hold-how')} onHeld={done}>
      {say('site-hold')}
    </HoldKey>
  ) : (
    <Key main onPress={done}>
      {say('site-done')}
    </Key>
  );
}

function withPlace(texts: Texts, step: SiteStepView): string {
  const { name } = texts.siteStep(step.step);
  return step.place === undefined ? name : `${name} · ${texts.name('places', step.place)}`;
}
