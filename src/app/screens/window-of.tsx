import type { CallView } from '../../../machines/call/types.ts';
import { windowWords } from '../hooks/wording.ts';
import { WindowScale } from '../parts/window-scale.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface WindowProps {
  readonly view: CallView | undefined;
  readonly check: string;
}

/** What this installation should read, before anything is typed; the answer of a look is not told. */
export function WindowOf({ view, check }: WindowProps) {
  const texts = useTexts();
  const { say, name } = texts;
  const window = view?.windows[check];
  if (window === undefined || window.kind === 'answer') return null;
  const missing = (window.missing ?? []).map((field) => name('fields', field)).join(', ');
  const words = {
    title: say('expect'),
    sentence: `${say('expect')} ${windowWords(texts, window)}`,
    open: name('outcomes', 'open'),
    answer: '',
    unknown: missing === '' ? say('no-window-plain') : say('no-window', { missing }),
    over: say('word-over'),
    upTo: say('word-up-to'),
    part: (part: string) => name('window-parts', part),
    fromMemory: say('from-memory-short'),
  };
  return <WindowScale window={window} words={words} />;
}
