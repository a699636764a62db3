import { StrictMode, Suspense } from 'react';
import { createRoot } from 'react-dom/client';
import { openStore } from '../records/store.ts';
import './styles/tokens.css';
import { App } from './App.tsx';
import { trackPresence } from './hooks/presence.ts';
import { useUpdate } from './hooks/use-update.ts';
import { FAILURE } from './words/failure.ts';
import { channelOf, connectEngine } from './worker/engine-client.ts';

const root = document.getElementById('root');
if (root === null) throw new Error('app: index.html has no element "root"');

const worker = new Worker(new URL('./worker/engine.worker.ts', import.meta.url), { type: 'module' });
const engine = connectEngine(channelOf(worker));
const store = openStore();
const presence = trackPresence(() => Date.now());

function Root() {
  const update = useUpdate();
  return (
    <Suspense fallback={<h1 className="opening">{FAILURE.opening}</h1>}>
      <App engine={engine} store={store} presence={presence} update={update} />
    </Suspense>
  );
}

createRoot(root).render(
  <StrictMode>
    <Root />
  </StrictMode>,
);
