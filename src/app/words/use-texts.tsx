import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import type { Catalog } from '../../catalog/catalog.ts';
import { type Texts, textsOf } from './texts.ts';

interface Languages {
  readonly texts: Texts;
  readonly languages: readonly string[];
  choose(language: string): void;
}

const Context = createContext<Languages | undefined>(undefined);
const KEPT_AS = 'ohmwell-language';

/** Gives the screens their texts, in the language last chosen on this device. */
export function TextsOf({ catalog, children }: { catalog: Catalog; children: ReactNode }) {
  const languages = Object.keys(catalog.words);
  const [language, setLanguage] = useState(() => kept(languages));
  const texts = useMemo(() => {
    const words = catalog.words[language];
    if (words === undefined)
      throw new Error(`words: no language "${language}"; add content/words/${language}`);
    return textsOf(words);
  }, [catalog, language]);
  const choose = (chosen: string): void => {
    window.localStorage.setItem(KEPT_AS, chosen);
    document.documentElement.lang = chosen;
    setLanguage(chosen);
  };
  return <Context value={{ texts, languages, choose }}>{children}</Context>;
}

export function useTexts(): Texts {
  return useLanguages().texts;
}

export function useLanguages(): Languages {
  const found = useContext(Context);
  if (found === undefined) throw new Error('words: a screen stands outside TextsOf; wrap it');
  return found;
}

/** English where nothing, or a language that is gone, was kept. */
function kept(languages: readonly string[]): string {
  const last = readKept();
  return (
    languages.find((one) => one === last) ?? languages.find((one) => one === 'en') ?? languages[0] ?? 'en'
  );
}

/** A browser that refuses storage refuses this too: then nothing was kept. */
function readKept(): string | null {
  try {
    return window.localStorage.getItem(KEPT_AS);
  } catch (refused) {
    if (refused instanceof DOMException) return null;
    throw refused;
  }
}
