import type { CallView } from '../../../machines/call/types.ts';
import { partsWords, windowWords } from '../hooks/wording.ts';
import { useTexts } from '../words/use-texts.tsx';

interface WindowProps {
  readonly view: CallView | undefined;
  readonly check: string;
}

/** What this installation should read, before anything is typed, and what that is made of. */
export function WindowOf({ view, check }: WindowProps) {
  const texts = useTexts();
  const { say } = texts;
  const window = view?.windows[check];
  if (window === undefined || window.kind === 'answer') return null;
  if (window.kind === 'unknown') {
    const missing = (window.missing ?? []).map((field) => texts.name('fields', field)).join(', ');
    return (
      <p className="second-voice">
        {missing === '' ? say('no-window-plain') : say('no-window', { missing })}
      </p>
    );
  }
  return (
    <p className="window">
      {say('expect')} <strong>{windowWords(texts, window)}</strong>{' '}
      <span className="second-voice">{partsWords(texts, window)}</span>
    </p>
  );
}
