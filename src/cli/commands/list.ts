import type { Catalog, Words } from '../../catalog/catalog.ts';
import { didYouMean } from '../../records/nearest.ts';
import { type Answer, type Around, type Command, type Given, usageError } from '../command.ts';
import { quantity } from '../print.ts';

/** What the content holds, by kind: the ids that a case file may use. */
export const list: Command = {
  usage: 'list faults|checks|motors|boxes|conductors|instruments|circumstances|actions',
  about: 'what is known, by id',
  run: async (given, around) => run(given, around),
};

type Lister = (catalog: Catalog, words: Words | undefined) => unknown[];

const KINDS: Readonly<Record<string, Lister>> = {
  faults: (catalog, words) =>
    Object.values(catalog.faults).map(({ id, area, action, variants }) => ({
      id,
      name: words?.faults[id]?.name,
      area,
      action,
      variants: variants.map((one) => one.id),
    })),
  checks: (catalog, words) =>
    Object.values(catalog.checks).map(({ id, set, reads, instrument }) => ({
      id,
      name: words?.checks[id]?.name,
      set,
      instrument,
      ...('answers' in reads ? { answers: reads.answers } : { unit: reads.unit }),
    })),
  motors: (catalog) =>
    Object.values(catalog.motors)
      .filter(({ auxiliary }) => auxiliary === undefined)
      .map(({ id, leads, circuit, power, volts }) => ({
        id,
        leads,
        circuit,
        power: quantity(power, 'hp'),
        volts: quantity(volts, 'V'),
      })),
  boxes: (catalog, words) =>
    Object.values(catalog.boxes).map(({ id, family, leads, serves }) => ({
      id,
      name: words?.names.boxes?.texts[id],
      family,
      leads,
      serves,
    })),
  conductors: (catalog) =>
    Object.values(catalog.conductors).map(({ id, metal, gauge }) => ({ id, metal, gauge })),
  instruments: (catalog, words) => named(Object.keys(catalog.instruments), words?.names.instruments?.texts),
  circumstances: (catalog, words) =>
    named(Object.keys(catalog.circumstances), words?.names.circumstances?.texts),
  actions: (catalog, words) =>
    Object.values(catalog.actions).map(({ id, pull }) => ({ id, name: words?.actions[id]?.name, pull })),
};

const named = (ids: readonly string[], texts: Readonly<Record<string, string>> | undefined) =>
  ids.map((id) => ({ id, name: texts?.[id] }));

function run({ operands }: Given, { catalog }: Around): Answer {
  const [kind, ...more] = operands;
  if (kind === undefined || more.length > 0) return usageError('name one kind');
  const lister = Object.hasOwn(KINDS, kind) ? KINDS[kind] : undefined;
  if (lister === undefined)
    return usageError(`nothing is listed as "${kind}"; ${didYouMean(kind, Object.keys(KINDS))}`.trim());
  return { kind: 'data', data: lister(catalog, catalog.words.en) };
}
