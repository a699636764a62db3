import type { NextStep } from '../../../machines/call/types.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { RepairSection } from './repair-section.tsx';
import { SiteStepsScreen } from './site-steps-screen.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';

type Repair = Extract<NextStep, { kind: 'repair' }>;

/** The site is made safe for the hands first; then the work, step by step; then it is said to be done. */
export function RepairScreen({ open, repair }: { open: OpenCase; repair: Repair }) {
  const texts = useTexts();
  const { say } = texts;
  const { verdict, steps, refer } = repair;
  const name = texts.action(verdict.action).name;
  if (open.view === undefined) return null;
  if (steps.length > 0) {
    return (
      <SiteStepsScreen
        open={open}
        steps={steps}
        checks={[]}
        site={open.view.site}
        then={say('site-then', { checks: name })}
      />
    );
  }
  return (
    <Frame
      name={`repair ${verdict.action}`}
      strip={<SiteStrip open={open} />}
      title={name}
      lead={refer === undefined ? undefined : say('repair-refer', { person: texts.name('persons', refer) })}
      answer={
        <>
          <RepairSection verdict={verdict} work={refer === undefined} />
          <StepMenu open={open} />
        </>
      }
      keys={
        <>
          <Key onPress={() => void open.say({ kind: 'visit', type: 'went-back' })}>
            {say('back-to-verdict')}
          </Key>
          {refer === undefined && (
            <Key
              main
              onPress={() => void open.say({ kind: 'visit', type: 'repaired', note: verdict.action })}
            >
              {say('repaired')}
            </Key>
          )}
        </>
      }
    />
  );
}
