import type { Route } from '../hooks/route.ts';
import { useCases } from '../hooks/use-cases.ts';
import { Key } from '../parts/key.tsx';
import { useLanguages, useTexts } from '../words/use-texts.tsx';
import { CaseRow } from './case-row.tsx';
import { Frame } from './frame.tsx';
import { ImportKey } from './import-key.tsx';

interface CasesProps {
  /** Changes over to a newer version; absent where there is none. */
  readonly update: (() => void) | undefined;
  go(route: Route): void;
}

/** The kept cases; here a call is started, a file is opened, and a newer version is taken. */
export function CasesScreen({ update, go }: CasesProps) {
  const { say } = useTexts();
  const { cases, volatile, mayBeCleared, refresh } = useCases();
  return (
    <Frame
      name="cases"
      title={say('cases')}
      answer={
        <>
          {volatile && <p className="caution">{say('not-kept')}</p>}
          {update !== undefined && (
            <p className="update">
              {say('update-ready')} <Key onPress={update}>{say('update-take')}</Key>
            </p>
          )}
          {cases?.length === 0 && <p>{say('no-cases')}</p>}
          <ul className="cases">
            {cases?.map((one) => (
              <CaseRow key={one.case} line={one} go={go} onGone={refresh} />
            ))}
          </ul>
          {mayBeCleared && !volatile && <p className="second-voice">{say('may-be-cleared')}</p>}
          <p className="second-voice duty">{say('duty')}</p>
          <LanguageSwitch />
        </>
      }
      keys={
        <>
          <ImportKey onTaken={refresh} />
          <Key main onPress={() => go({ screen: 'start' })}>
            {say('start-a-call')}
          </Key>
        </>
      }
    />
  );
}

/** In place from the start; it lists whatever languages the content has. */
function LanguageSwitch() {
  const { texts, languages, choose } = useLanguages();
  return (
    <label className="field language">
      <span>{texts.say('language')}</span>
      <select value={texts.language} onChange={(event) => choose(event.target.value)}>
        {languages.map((language) => (
          <option key={language} value={language}>
            {new Intl.DisplayNames([language], { type: 'language' }).of(language) ?? language}
          </option>
        ))}
      </select>
    </label>
  );
}
