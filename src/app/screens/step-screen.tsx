import type { CaseScreenName } from '../hooks/route.ts';
import { setName } from '../hooks/set-name.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { useStep } from '../hooks/use-step.ts';
import { useTexts } from '../words/use-texts.tsx';
import { AskInstallationScreen } from './ask-installation-screen.tsx';
import { CheckScreen } from './check-screen.tsx';
import { ClosedScreen } from './closed-screen.tsx';
import { Frame } from './frame.tsx';
import { NotThisToolScreen } from './not-this-tool-screen.tsx';
import { ProofScreen } from './proof-screen.tsx';
import { RepairScreen } from './repair-screen.tsx';
import { SiteStepsScreen } from './site-steps-screen.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StoppedScreen } from './stopped-screen.tsx';
import { VerdictScreen } from './verdict-screen.tsx';

export type To = (screen: CaseScreenName, about?: readonly string[]) => void;

/** The one thing to do now. */
export function StepScreen({ open, to }: { open: OpenCase; to: To }) {
  const texts = useTexts();
  const step = useStep(open);
  if (step === undefined || open.view === undefined) {
    return <Frame name="waiting" strip={<SiteStrip open={open} />} title={texts.say('working')} />;
  }
  switch (step.kind) {
    case 'site-steps':
      return (
        <SiteStepsScreen
          open={open}
          steps={step.steps}
          checks={step.towards}
          site={open.view.site}
          then={texts.say('site-then', {
            checks: setName(texts, step.towards),
          })}
        />
      );
    case 'check':
      return (
        <CheckScreen open={open} step={step} asLeft={false} onComplete={(checks) => to('judged', checks)} />
      );
    case 'ask-installation':
      return <AskInstallationScreen open={open} field={step.field} options={step.options} to={to} />;
    case 'verdict':
      if (open.view.visit === 'closed') return <ClosedScreen open={open} verdict={step.verdict} owed={[]} />;
      return <VerdictScreen open={open} verdict={step.verdict} />;
    case 'repair':
      return <RepairScreen open={open} repair={step} />;
    case 'proof':
      return <ProofScreen open={open} proof={step} />;
    case 'closed':
      return <ClosedScreen open={open} verdict={step.verdict} owed={step.owed} />;
    case 'stopped':
      return <StoppedScreen open={open} safeState={step.safeState} />;
    case 'not-this-tool':
      return <NotThisToolScreen open={open} exit={step.exit} />;
    default: {
      const never: never = step;
      return never;
    }
  }
}
