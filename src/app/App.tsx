import { use, useMemo } from 'react';
import type { CaseStore } from '../records/store.ts';
import type { Presence } from './hooks/presence.ts';
import { ServicesOf } from './hooks/services.tsx';
import { useRoute } from './hooks/use-route.ts';
import { BadContent } from './screens/bad-content.tsx';
import { CaseScreen } from './screens/case-screen.tsx';
import { CasesScreen } from './screens/cases-screen.tsx';
import { StartScreen } from './screens/start-screen.tsx';
import { TextsOf } from './words/use-texts.tsx';
import type { Engine } from './worker/protocol.ts';

interface AppProps {
  readonly engine: Engine;
  readonly store: Promise<CaseStore>;
  readonly presence: Presence;
  /** Changes over to a newer version of the app; absent where there is none. */
  readonly update: (() => void) | undefined;
}

/** Waits for the content and the kept cases, then shows the place that the address names. */
export function App({ engine, store, presence, update }: AppProps) {
  const loaded = use(engine.loaded);
  const kept = use(store);
  const services = useMemo(
    () => (loaded.kind === 'ready' ? { catalog: loaded.catalog, engine, store: kept, presence } : undefined),
    [loaded, engine, kept, presence],
  );
  if (services === undefined || loaded.kind !== 'ready') {
    return <BadContent problems={loaded.kind === 'ready' ? [] : loaded.problems} store={kept} />;
  }
  return (
    <ServicesOf services={services}>
      <TextsOf catalog={loaded.catalog}>
        <Screens update={update} />
      </TextsOf>
    </ServicesOf>
  );
}

function Screens({ update }: { update: (() => void) | undefined }) {
  const { route, go } = useRoute();
  switch (route.screen) {
    case 'cases':
      return <CasesScreen go={go} update={update} />;
    case 'start':
      return <StartScreen go={go} />;
    default:
      return <CaseScreen key={route.case} route={route} go={go} />;
  }
}
