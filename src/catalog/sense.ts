import type { Catalog, Problem } from './catalog.ts';
import { evidencedRecords, evidenceProblems } from './evidence.ts';
import { motorProblems } from './motor-sense.ts';
import { reachProblems } from './reach.ts';

/** Third ring: records that are well formed and refer to each other may still make no sense. */
export function senseProblems(catalog: Catalog): Problem[] {
  return [
    ...motorProblems(catalog),
    ...evidenceProblems(catalog),
    ...reachProblems(catalog),
    ...callerProblems(catalog),
    ...makerProblems(catalog),
  ];
}

/** Where a caller may look: nothing there is opened and nothing touched. */
const CALLER_LOOKS: readonly string[] = ['phone', 'house', 'tank', 'panel', 'site'];

/** A caller looks, listens and reads; nothing else is his. */
function callerProblems(catalog: Catalog): Problem[] {
  return Object.values(catalog.checks)
    .filter((check) => check.who === 'caller')
    .filter(({ at, site, hazards }) => {
      const isLook = 'look' in at && CALLER_LOOKS.includes(at.look);
      return !isLook || site.cover !== 'any' || site.leads !== 'any' || hazards.length > 0;
    })
    .map((check) => ({
      at: `checks/${check.id} › who`,
      message: 'a caller only looks, listens and reads, with every cover on',
      hint: `ask at least a technician, or make it a look at ${CALLER_LOOKS.join(', ')}`,
    }));
}

/** A maker's name stands in the citation of a source and nowhere else. */
function makerProblems(catalog: Catalog): Problem[] {
  const makers = new Set(Object.values(catalog.sources).flatMap((source) => source.makers ?? []));
  const patterns = [...makers].map((maker) => ({
    maker,
    pattern: new RegExp(`\\b${escaped(maker)}\\b`, 'i'),
  }));
  return textsOf(catalog).flatMap(({ at, text }) =>
    patterns
      .filter(({ pattern }) => pattern.test(text))
      .map(({ maker }) => ({
        at,
        message: `names the maker ${maker}`,
        hint: 'a maker is named only in content/sources',
      })),
  );
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

function textsOf(catalog: Catalog): { at: string; text: string }[] {
  const records = evidencedRecords(catalog).map(({ at, record }) => ({ at, text: JSON.stringify(record) }));
  const words = Object.values(catalog.words).flatMap(
    ({ language, checks, faults, actions, siteSteps, names }) =>
      Object.entries({ checks, faults, actions, 'site-steps': siteSteps, names }).flatMap(([kind, table]) =>
        Object.values(table).map((record) => ({
          at: `words/${language}/${kind}/${record.id}`,
          text: JSON.stringify(record),
        })),
      ),
  );
  return [...records, ...words];
}
