import { useEffect } from 'react';

/** Reads a text aloud where the device can; undefined where it cannot, and then no key is shown. */
export function useSpeech(language: string): ((lines: readonly string[]) => void) | undefined {
  const speech = typeof window.speechSynthesis === 'undefined' ? undefined : window.speechSynthesis;
  useEffect(() => () => speech?.cancel(), [speech]);
  if (speech === undefined) return undefined;
  return (lines) => {
    if (speech.speaking) {
      speech.cancel();
      return;
    }
    for (const line of lines) {
      const utterance = new SpeechSynthesisUtterance(line);
      utterance.lang = language;
      speech.speak(utterance);
    }
  };
}
