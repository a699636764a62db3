import type { CaseScreenName, Route } from '../hooks/route.ts';
import { useServices } from '../hooks/services.tsx';
import { type OpenCase, useCase } from '../hooks/use-case.ts';
import { useTexts } from '../words/use-texts.tsx';
import { FirstScreen } from './first-screen.tsx';
import { Frame } from './frame.tsx';
import { JudgedScreen } from './judged-screen.tsx';
import { KnownScreen } from './known-screen.tsx';
import { NoAdvice } from './no-advice.tsx';
import { ReadingScreen } from './reading-screen.tsx';
import { ReportScreen } from './report-screen.tsx';
import { SaveKey } from './save-key.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepScreen } from './step-screen.tsx';
import { SuspectsScreen } from './suspects-screen.tsx';
import { TrailScreen } from './trail-screen.tsx';

interface CaseProps {
  readonly route: Extract<Route, { case: string }>;
  go(route: Route): void;
}

/** A case on screen; said to be busy while the engine looks at what was just told. */
export function CaseScreen({ route, go }: CaseProps) {
  const open = useCase(route.case, route.screen === 'seen' || route.screen === 'known');
  return (
    <div className="case" aria-busy={open.waiting}>
      <NotKept caseId={route.case} />
      <Screen open={open} route={route} go={go} />
    </div>
  );
}

/** Where the browser refuses to store: said on every screen, with the file one tap away. */
function NotKept({ caseId }: { caseId: string }) {
  const { store } = useServices();
  const { say } = useTexts();
  if (!store.volatile) return null;
  return (
    <aside className="standing">
      <p>{say('not-kept')}</p>
      <SaveKey caseId={caseId} />
    </aside>
  );
}

/** One of the screens of a case, or why there is none. STOP goes before everything else. */
function Screen({ open, route, go }: CaseProps & { open: OpenCase }) {
  const { say } = useTexts();
  const to = (screen: CaseScreenName, about: readonly string[] = []): void =>
    go({ screen, case: route.case, about });
  if (open.state === undefined) {
    return <Frame name="waiting" strip={<SiteStrip open={open} />} title={say('working')} />;
  }
  if (open.events.length === 0) return <NoAdvice open={open} title={say('not-found')} />;
  if (open.problem !== undefined && route.screen !== 'report')
    return <NoAdvice open={open} title={say('no-advice')} />;
  if (open.view === undefined && route.screen !== 'seen' && route.screen !== 'known') {
    return <Frame name="waiting" strip={<SiteStrip open={open} />} title={say('working')} />;
  }
  if (open.view?.next.kind === 'stopped') return <StepScreen open={open} to={to} />;
  switch (route.screen) {
    case 'seen':
      return (
        <FirstScreen
          open={open}
          onBegin={() => to('known')}
          onDanger={() => void open.say({ kind: 'site', event: { type: 'stop-unsafe' } })}
        />
      );
    case 'known':
      return <KnownScreen open={open} question={route.about[0]} to={to} />;
    case 'judged':
      return <JudgedScreen open={open} checks={route.about} to={to} />;
    case 'reading':
      return <ReadingScreen open={open} check={route.about[0] ?? ''} to={to} />;
    case 'suspects':
      return <SuspectsScreen open={open} />;
    case 'trail':
      return <TrailScreen open={open} />;
    case 'report':
      return <ReportScreen open={open} to={to} />;
    case 'step':
      return <StepScreen open={open} to={to} />;
    default: {
      const never: never = route.screen;
      return never;
    }
  }
}
