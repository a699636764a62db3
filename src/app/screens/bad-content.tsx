import type { Problem } from '../../catalog/catalog.ts';
import type { CaseStore } from '../../records/store.ts';
import { saveAll } from '../hooks/case-files.ts';
import { Key } from '../parts/key.tsx';
import { FAILURE } from '../words/failure.ts';

/**
 * The content failed its check: no engine, no words. What the person still needs stands here: that
 * nothing may be trusted, that the readings are kept, and a way to take them along.
 */
export function BadContent({ problems, store }: { problems: readonly Problem[]; store: CaseStore }) {
  return (
    <main className="frame-main bad-content">
      <h1>{FAILURE.title}</h1>
      <p>{FAILURE.advice}</p>
      <p>{FAILURE.kept}</p>
      <ul>
        {problems.slice(0, 20).map(({ at, message, hint }) => (
          <li key={`${at} ${message}`}>
            {at}: {message}. {hint}
          </li>
        ))}
      </ul>
      <Key main onPress={() => void saveAll(store)}>
        {FAILURE.save}
      </Key>
    </main>
  );
}
