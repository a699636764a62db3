import { useState } from 'react';
import { useSpeech } from '../hooks/use-speech.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface HowProps {
  readonly lines: readonly string[];
  readonly language: string;
  /** Open from the start: a site step is read in full before it is done. */
  readonly started?: boolean;
}

/** How it is done, step by step; read aloud where the device can. */
export function HowList({ lines, language, started = false }: HowProps) {
  const { say } = useTexts();
  const [shown, setShown] = useState(started);
  const speak = useSpeech(language);
  return (
    <section className="how">
      <div className="how-keys">
        {!started && (
          <Key small pressed={shown} onPress={() => setShown(!shown)}>
            {say(shown ? 'how-hide' : 'how')}
          </Key>
        )}
        {speak !== undefined && (
          <Key small onPress={() => speak(lines)}>
            {say('read-aloud')}
          </Key>
        )}
      </div>
      {shown && (
        <ol className="how-lines">
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      )}
    </section>
  );
}
