import { useState } from 'react';
import type { Person } from '../../schema/basics.ts';
import { newCaseId } from '../hooks/new-case-id.ts';
import type { Route } from '../hooks/route.ts';
import { useServices } from '../hooks/services.tsx';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { PersonKeys } from './person-keys.tsx';

/** Opens a case: the name of the site, and who is there, which decides what may be asked. */
export function StartScreen({ go }: { go: (route: Route) => void }) {
  const { say } = useTexts();
  const { store } = useServices();
  const [site, setSite] = useState('');
  const [role, setRole] = useState<Person>();
  const start = async (): Promise<void> => {
    if (role === undefined) return;
    const name = site.trim();
    const id = newCaseId(name, crypto.getRandomValues(new Uint8Array(4)));
    await store.append(id, [
      name === '' ? { kind: 'opened' } : { kind: 'opened', site: name },
      { kind: 'person', role },
    ]);
    go({ screen: 'seen', case: id, about: [] });
  };
  return (
    <Frame
      name="start"
      title={say('where')}
      answer={
        <>
          <label className="field">
            <span>{say('site-name')}</span>
            <input
              value={site}
              maxLength={80}
              autoComplete="off"
              onChange={(event) => setSite(event.target.value)}
            />
          </label>
          <PersonKeys chosen={role} onChoose={setRole} />
        </>
      }
      keys={
        <>
          <Key onPress={() => go({ screen: 'cases' })}>{say('back')}</Key>
          <Key main disabled={role === undefined} onPress={() => void start()}>
            {say('start')}
          </Key>
        </>
      }
    />
  );
}
