import type { OpenCase } from '../hooks/use-case.ts';
import { HoldKey } from '../parts/hold-key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';

/** The call stands still: how to leave the site safe, and a held press to go on. */
export function StoppedScreen({ open, safeState }: { open: OpenCase; safeState: readonly string[] }) {
  const texts = useTexts();
  const { say } = texts;
  return (
    <Frame
      name="stopped"
      strip={<SiteStrip open={open} />}
      title={say('stopped-title')}
      lead={say('stopped-lead')}
      answer={
        <>
          <ol className="safe-state">
            {safeState.map((line) => (
              <li key={line}>{texts.name('safe-state', line)}</li>
            ))}
          </ol>
          <p>{say('stopped-refer')}</p>
          <StepMenu open={open} />
        </>
      }
      keys={
        <HoldKey
          hint={say('site-hold-how')}
          onHeld={() => void open.say({ kind: 'site', event: { type: 'resume' } })}
        >
          {say('stopped-resume')}
        </HoldKey>
      }
    />
  );
}
