import type { SiteView } from '../../../machines/call/types.ts';
import type { Texts } from '../words/texts.ts';
import type { UiKey } from '../words/ui-key.ts';

/** What the strip says: a word of state, and one line of what else is so. */
export interface StripWords {
  readonly word: SiteView['word'];
  readonly title: string;
  readonly line: string;
}

const TITLES: Readonly<Record<SiteView['word'], UiKey>> = {
  live: 'strip-live',
  locked: 'strip-locked',
  'not-bled': 'strip-not-bled',
  proved: 'strip-proved',
};

/** @param site absent while nothing is known: then everything counts as live */
export function stripWords(texts: Texts, site: SiteView | undefined): StripWords {
  if (site === undefined)
    return { word: 'live', title: texts.say('strip-live'), line: texts.say('strip-nothing-opened') };
  const title = titleOf(site);
  return { word: site.word, title: texts.say(title), line: lineOf(texts, site).join(' · ') };
}

/** Not the place of a step, but dead elsewhere: then the word says no more than that it is locked. */
function titleOf(site: SiteView): UiKey {
  if (site.word === 'live' && site.supply === 'off') return 'strip-off';
  const isAway = site.word === 'locked' && site.here === undefined;
  return isAway && Object.values(site.places).includes('proved') ? 'strip-locked-away' : TITLES[site.word];
}

function placesThat(texts: Texts, site: SiteView, wanted: string): string {
  const found = Object.entries(site.places).filter(([, state]) => state === wanted);
  return found.map(([place]) => texts.name('places', place)).join(', ');
}

function lineOf(texts: Texts, site: SiteView): string[] {
  const { say, name } = texts;
  if (site.lapsed) return [say('strip-lapsed')];
  const words: string[] = [];
  const provedAway = placesThat(texts, site, 'proved');
  const open = Object.entries(site.places).filter(([, state]) => state !== 'closed');
  if (site.word === 'proved')
    words.push(...(site.here === undefined ? [] : [name('places', site.here)]), say('strip-proved-line'));
  if (site.word === 'locked') {
    words.push(
      site.here !== undefined || provedAway === ''
        ? say('strip-locked-line')
        : say('strip-proved-at', { places: provedAway }),
    );
  }
  if (site.word === 'not-bled') words.push(say('strip-not-bled-line'));
  if (site.word === 'live') {
    words.push(
      open.length === 0
        ? say('strip-nothing-opened')
        : say('strip-open', { places: open.map(([place]) => name('places', place)).join(', ') }),
    );
  }
  if (site.word === 'proved' && site.charge === 'bled') words.push(say('strip-bled'));
  if (site.leads !== 'connected') words.push(say(site.leads === 'lifted' ? 'strip-lifted' : 'strip-split'));
  if (site.disinfection === 'due') words.push(say('strip-disinfection-due'));
  return words;
}
