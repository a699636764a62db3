import type { Catalog, Problem, Words } from './catalog.ts';

/**
 * Second ring, words: in every language each record that a person meets has its text, each closed
 * answer and each variant a name, and no text is left over from a record that is gone.
 */
export function wordProblems(catalog: Catalog, words: Words): Problem[] {
  return [
    ...recordTexts(catalog, words),
    ...smallNames(catalog, words),
    ...answerTexts(catalog, words),
    ...variantTexts(catalog, words),
  ];
}

type Ids = Readonly<Record<string, unknown>>;

function recordTexts({ checks, faults, actions, siteSteps }: Catalog, words: Words): Problem[] {
  return [
    ...paired(words, { folder: 'checks', records: checks, texts: words.checks }),
    ...paired(words, { folder: 'faults', records: faults, texts: words.faults }),
    ...paired(words, { folder: 'actions', records: actions, texts: words.actions }),
    ...paired(words, { folder: 'site-steps', records: siteSteps, texts: words.siteSteps }),
  ];
}

function paired({ language }: Words, pair: { folder: string; records: Ids; texts: Ids }): Problem[] {
  const { folder, records, texts } = pair;
  const at = (id: string): string => `words/${language}/${folder}/${id}`;
  const lacking = Object.keys(records).filter((id) => !Object.hasOwn(texts, id));
  const stale = Object.keys(texts).filter((id) => !Object.hasOwn(records, id));
  return [
    ...lacking.map((id) => ({ at: at(id), message: 'has no words', hint: `write content/${at(id)}.json` })),
    ...stale.map((id) => ({
      at: at(id),
      message: 'words for a record that does not exist',
      hint: `remove them, or add content/${folder}/${id}.json`,
    })),
  ];
}

/** Small records are only named: one text each, in one list a kind. */
function smallNames(catalog: Catalog, words: Words): Problem[] {
  const { boxes, circumstances, fittings, hazards, instruments, parts, rules } = catalog;
  return Object.entries({ boxes, circumstances, fittings, hazards, instruments, parts, rules }).flatMap(
    ([list, records]) => {
      const texts = words.names[list]?.texts ?? {};
      return Object.keys(records)
        .filter((id) => !Object.hasOwn(texts, id))
        .map((id) => ({
          at: `words/${words.language}/names/${list} › texts`,
          message: `no name for ${id}`,
          hint: 'add it',
        }));
    },
  );
}

function answerTexts({ checks }: Catalog, words: Words): Problem[] {
  return Object.values(checks).flatMap(({ id, reads }) => {
    const texts = words.checks[id]?.answers ?? {};
    return ('answers' in reads ? reads.answers : [])
      .filter((answer) => !Object.hasOwn(texts, answer))
      .map((answer) => ({
        at: `words/${words.language}/checks/${id} › answers`,
        message: `no text for ${answer}`,
        hint: 'add it',
      }));
  });
}

/** Where a fault has one variant its name says all; where it has more, each needs its own. */
function variantTexts({ faults }: Catalog, words: Words): Problem[] {
  return Object.values(faults)
    .filter(({ variants }) => variants.length > 1)
    .flatMap(({ id, variants }) => {
      const texts = words.faults[id]?.variants ?? {};
      return variants
        .filter((variant) => !Object.hasOwn(texts, variant.id))
        .map((variant) => ({
          at: `words/${words.language}/faults/${id} › variants`,
          message: `no text for ${variant.id}`,
          hint: 'add it',
        }));
    });
}
