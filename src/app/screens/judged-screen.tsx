import { useState } from 'react';
import type { JudgedReading } from '../../diagnosis/types.ts';
import { judgedHeading, ruledOutWords } from '../hooks/judged-words.ts';
import { nextWords } from '../hooks/next-words.ts';
import { leadersOf, ruledOutBy } from '../hooks/suspects.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { OutcomeSign } from '../parts/outcome-sign.tsx';
import { Section } from '../parts/section.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { JudgedReadings } from './judged-readings.tsx';
import { OtherChecks } from './other-checks.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';
import type { To } from './step-screen.tsx';

interface JudgedProps {
  readonly open: OpenCase;
  readonly checks: readonly string[];
  readonly to: To;
}

/** The reading against its window, what it rules out, who leads now, what comes next. */
export function JudgedScreen({ open, checks, to }: JudgedProps) {
  const texts = useTexts();
  const { say } = texts;
  const { view } = open;
  const [showsOthers, setShowsOthers] = useState(false);
  if (view === undefined || open.waiting) {
    return <Frame name="judging" strip={<SiteStrip open={open} />} title={say('working')} />;
  }
  const judged = checks.flatMap((check) => view.judged.find((one) => one.check === check) ?? []);
  const { title, lead } = judgedHeading(texts, judged);
  const ruledOut = ruledOutBy(view, checks);
  const others = view.next.kind === 'check' ? view.next.others : [];
  return (
    <Frame
      name={`judged ${checks.join(' ')}`}
      strip={<SiteStrip open={open} />}
      title={title}
      lead={lead}
      beside={<Signs judged={judged} />}
      first="work"
      work={<JudgedReadings view={view} judged={judged} />}
      answer={
        <>
          {view.surprise !== undefined && checks.includes(view.surprise) && (
            <p className="caution">{say('surprise')}</p>
          )}
          <p>
            <strong>{say('ruled-out')}</strong>{' '}
            {ruledOutWords(
              texts,
              ruledOut.map((fault) => texts.fault(fault).name),
            )}
          </p>
          <p>
            <strong>{say('leads-now')}</strong>{' '}
            {leadersOf(view)
              .map((one) => texts.faultName(one.fault, one.variant))
              .join(', ')}
          </p>
          <NextBlock open={open} />
          {showsOthers && <OtherChecks open={open} others={others} onAsked={() => to('step')} />}
          <StepMenu open={open} />
        </>
      }
      keys={
        <>
          <Key onPress={() => to('reading', [checks[0] ?? ''])}>{say('correct')}</Key>
          {others.length > 0 && (
            <Key pressed={showsOthers} onPress={() => setShowsOthers(!showsOthers)}>
              {say('others')}
            </Key>
          )}
          <Key main onPress={() => to('step')}>
            {say('go-on')}
          </Key>
        </>
      }
    />
  );
}

function Signs({ judged }: { judged: readonly JudgedReading[] }) {
  const [first] = judged;
  return first === undefined ? null : <OutcomeSign outcome={first.outcome} />;
}

function NextBlock({ open }: { open: OpenCase }) {
  const texts = useTexts();
  if (open.view === undefined) return null;
  const { what, why } = nextWords(texts, open.view);
  return (
    <Section title={texts.say('next', { what })} heavy>
      {why !== '' && <p>{why}</p>}
    </Section>
  );
}
