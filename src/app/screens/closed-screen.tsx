import type { Verdict } from '../../diagnosis/types.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { useRoute } from '../hooks/use-route.ts';
import { verdictHeading } from '../hooks/verdict-words.ts';
import { Key } from '../parts/key.tsx';
import { Section } from '../parts/section.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';

interface ClosedProps {
  readonly open: OpenCase;
  readonly verdict: Verdict;
  /** What is still to be done, by name. */
  readonly owed: readonly string[];
}

/** The call is over; what is still owed stands here until it is done. */
export function ClosedScreen({ open, verdict, owed }: ClosedProps) {
  const texts = useTexts();
  const { go } = useRoute();
  const { say } = texts;
  return (
    <Frame
      name="closed"
      strip={<SiteStrip open={open} />}
      title={say('closed-title')}
      lead={say('closed-lead')}
      answer={
        <>
          <p>
            <strong>{verdictHeading(texts, verdict).title}</strong>
          </p>
          {owed.length > 0 && (
            <Section title={say('closed-owed')}>
              <ul>
                {owed.map((one) => (
                  <li key={one}>{texts.name('owed', one)}</li>
                ))}
              </ul>
            </Section>
          )}
          {open.view?.site.disinfection === 'due' && (
            <Key onPress={() => void open.say({ kind: 'site', event: { type: 'disinfected' } })}>
              {say('disinfected')}
            </Key>
          )}
          <StepMenu open={open} />
        </>
      }
      keys={
        <>
          <Key onPress={() => go({ screen: 'cases' })}>{say('to-cases')}</Key>
          <Key main onPress={() => go({ screen: 'report', case: open.id, about: [] })}>
            {say('report')}
          </Key>
        </>
      }
    />
  );
}
