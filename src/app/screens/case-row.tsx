import { useState } from 'react';
import type { CaseSummary } from '../../records/summary.ts';
import { formatDayAndTime } from '../format/time.ts';
import type { Route } from '../hooks/route.ts';
import { useServices } from '../hooks/services.tsx';
import { CLOSED } from '../hooks/visit-facts.ts';
import { HoldKey } from '../parts/hold-key.tsx';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { SaveKey } from './save-key.tsx';

interface RowProps {
  readonly line: CaseSummary;
  go(route: Route): void;
  onGone(): void;
}

/** One case: tap to go on with it; its file and its end are behind "More". */
export function CaseRow({ line, go, onGone }: RowProps) {
  const { say, language } = useTexts();
  const [more, setMore] = useState(false);
  const count = say(line.readings === 1 ? 'reading-count' : 'readings-count', { count: line.readings });
  const state = say(line.lastVisit === CLOSED ? 'case-closed' : 'case-open');
  return (
    <li className="case-row">
      <div className="case-row-keys">
        <Key onPress={() => go({ screen: 'step', case: line.case, about: [] })}>
          <strong>{line.site ?? say('no-name')}</strong>
          <span className="second-voice">
            {[formatDayAndTime(language, line.lastAt), count, state].filter((one) => one !== '').join(' · ')}
          </span>
        </Key>
        <Key small pressed={more} onPress={() => setMore(!more)}>
          {say('more')}
        </Key>
      </div>
      {more && <MoreOf line={line} onGone={onGone} />}
    </li>
  );
}

function MoreOf({ line, onGone }: { line: CaseSummary; onGone(): void }) {
  const { say } = useTexts();
  const { store } = useServices();
  const [asks, setAsks] = useState(false);
  return (
    <div className="case-row-more">
      <SaveKey caseId={line.case} />
      {!asks && <Key onPress={() => setAsks(true)}>{say('delete-case')}</Key>}
      {asks && (
        <>
          <p>{say('delete-asks', { site: line.site ?? line.case })}</p>
          <Key onPress={() => setAsks(false)}>{say('keep-it')}</Key>
          <HoldKey hint={say('site-hold-how')} onHeld={() => void store.forget(line.case).then(onGone)}>
            {say('delete-held')}
          </HoldKey>
        </>
      )}
    </div>
  );
}
