import { stripWords } from '../hooks/strip-words.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { useStop } from '../hooks/use-stop.ts';
import { Strip } from '../parts/strip.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** The strip of a case: what the site is in now, and STOP. While nothing is known it says LIVE. */
export function SiteStrip({ open }: { open: OpenCase }) {
  const texts = useTexts();
  const stop = useStop(open);
  const { word, title, line } = stripWords(texts, open.view?.site);
  return <Strip word={word} title={title} line={line} stopText={texts.say('stop')} onStop={stop} />;
}
