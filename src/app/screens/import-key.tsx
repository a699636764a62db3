import { useRef, useState } from 'react';
import { type Imported, openCaseFile } from '../hooks/case-files.ts';
import { useServices } from '../hooks/services.tsx';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** Opens a case file and joins it to what is kept: nothing here is ever replaced. */
export function ImportKey({ onTaken }: { onTaken(): void }) {
  const { say } = useTexts();
  const { store, catalog } = useServices();
  const input = useRef<HTMLInputElement>(null);
  const [result, setResult] = useState<Imported>();
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    setResult(await openCaseFile(store, catalog, file));
    onTaken();
  };
  return (
    <div className="import">
      <input
        ref={input}
        type="file"
        accept=".json,.txt,application/json,text/plain"
        aria-label={say('open-file')}
        hidden
        onChange={(event) => void take(event.target.files?.[0])}
      />
      {result !== undefined && <ImportResult result={result} />}
      <Key onPress={() => input.current?.click()}>{say('open-file')}</Key>
    </div>
  );
}

function ImportResult({ result }: { result: Imported }) {
  const { say } = useTexts();
  if (result.kind === 'joined') {
    return (
      <p role="status">
        {say('imported', { added: result.added, case: result.case })}
        {result.differing > 0 && ` ${say('imported-differs', { count: result.differing })}`}
      </p>
    );
  }
  return (
    <div role="alert" className="caution">
      <p>{say('import-refused')}</p>
      <ul>
        {result.problems.slice(0, 5).map(({ at, message, hint }) => (
          <li key={`${at} ${message}`}>
            {at}: {message}. {hint}
          </li>
        ))}
      </ul>
    </div>
  );
}
