import type { Catalog, Problem, Table, Words } from './catalog.ts';
import { referenceProblems } from './references.ts';
import { senseProblems } from './sense.ts';
import { shapeProblems } from './shape-problems.ts';
import {
  type RawFile,
  RECORD_SHAPES,
  type RecordFolder,
  type RecordOf,
  WORD_SHAPES,
  type WordFolder,
  type WordsOf,
} from './shapes.ts';
import { contentVersion } from './version.ts';

/**
 * From raw files to a Catalog, in three rings: shape (is each record what it says it is?),
 * references (does the other end exist?), sense (does it agree with the rest?).
 *
 * All problems are collected; nothing is thrown. A ring is entered only when the one before it holds.
 */
export type Built = { readonly catalog: Catalog } | { readonly problems: readonly Problem[] };

export function buildCatalog(files: readonly RawFile[]): Built {
  const problems: Problem[] = [];
  const records = emptyTables(RECORD_SHAPES);
  const words = new Map<string, Record<WordFolder, Record<string, unknown>>>();
  for (const file of files) {
    const place = placeOf(file.path);
    if (place === undefined) {
      problems.push({
        at: file.path,
        message: 'no kind of record lives here',
        hint: `move it to one of ${Object.keys(RECORD_SHAPES).join(', ')} or words`,
      });
      continue;
    }
    const shape = place.language === undefined ? RECORD_SHAPES[place.folder] : WORD_SHAPES[place.folder];
    const parsed = shape.safeParse(file.data);
    if (!parsed.success) {
      problems.push(...shapeProblems(file.path, parsed.error.issues));
      continue;
    }
    const { id } = parsed.data;
    const table =
      place.language === undefined ? records[place.folder] : languageOf(words, place.language)[place.folder];
    problems.push(...nameProblems(file.path, id), ...twiceProblems(file.path, id, table));
    table[id] = parsed.data;
  }
  if (problems.length > 0) return { problems };
  const catalog = assemble(records, words, contentVersion(files));
  const wrong = referenceProblems(catalog);
  const found = wrong.length > 0 ? wrong : senseProblems(catalog);
  return found.length > 0 ? { problems: found } : { catalog };
}

type Place = { folder: RecordFolder; language?: undefined } | { folder: WordFolder; language: string };

/** Sub-folders may group records; only the first one says what they are. */
function placeOf(path: string): Place | undefined {
  const [first, second, third] = path.split('/');
  if (first === 'words' && second !== undefined && third !== undefined && Object.hasOwn(WORD_SHAPES, third)) {
    return { folder: third as WordFolder, language: second };
  }
  return first !== undefined && Object.hasOwn(RECORD_SHAPES, first)
    ? { folder: first as RecordFolder }
    : undefined;
}

function nameProblems(path: string, id: string): Problem[] {
  const name = path.split('/').at(-1);
  return name === id
    ? []
    : [
        {
          at: `${path} › id`,
          message: `the id is ${id}, the file is ${name}.json`,
          hint: 'give both the same name; ids are never renamed once published',
        },
      ];
}

/** Sub-folders group records; they do not make ids different. */
function twiceProblems(path: string, id: string, table: Readonly<Record<string, unknown>>): Problem[] {
  if (!Object.hasOwn(table, id)) return [];
  const hint = 'an id is one record of its folder, whatever group it stands in';
  return [{ at: `${path} › id`, message: `${id} stands in another file too`, hint }];
}

function emptyTables<T extends Record<string, unknown>>(shapes: T): Record<keyof T, Record<string, unknown>> {
  return Object.fromEntries(Object.keys(shapes).map((folder) => [folder, {}])) as Record<
    keyof T,
    Record<string, unknown>
  >;
}

function languageOf(words: Map<string, Record<WordFolder, Record<string, unknown>>>, language: string) {
  const known = words.get(language) ?? emptyTables(WORD_SHAPES);
  words.set(language, known);
  return known;
}

function assemble(
  records: Record<RecordFolder, Record<string, unknown>>,
  words: ReadonlyMap<string, Record<WordFolder, Record<string, unknown>>>,
  version: string,
): Catalog {
  const table = <F extends RecordFolder>(folder: F) => frozen(records[folder]) as Table<RecordOf<F>>;
  const texts = <F extends WordFolder>(language: Record<WordFolder, Record<string, unknown>>, folder: F) =>
    frozen(language[folder]) as Table<WordsOf<F>>;
  const languages = [...words].map(([language, tables]): [string, Words] => [
    language,
    Object.freeze({
      language,
      checks: texts(tables, 'checks'),
      faults: texts(tables, 'faults'),
      actions: texts(tables, 'actions'),
      siteSteps: texts(tables, 'site-steps'),
      names: texts(tables, 'names'),
    }),
  ]);
  return Object.freeze({
    version,
    sources: table('sources'),
    motors: table('motors'),
    motorModels: table('motor-models'),
    conductors: table('conductors'),
    netlists: table('netlists'),
    boxes: table('boxes'),
    elements: table('elements'),
    faults: table('faults'),
    actions: table('actions'),
    checks: table('checks'),
    instruments: table('instruments'),
    circumstances: table('circumstances'),
    hazards: table('hazards'),
    parts: table('parts'),
    judgements: table('judgements'),
    rules: table('rules'),
    siteSteps: table('site-steps'),
    water: table('water'),
    fittings: table('fittings'),
    sequences: table('sequences'),
    calibration: table('calibration'),
    words: Object.freeze(Object.fromEntries(languages)),
  });
}

/** In the order of ids, so that nothing depends on how files were found; frozen to the last field. */
function frozen(records: Record<string, unknown>): Readonly<Record<string, unknown>> {
  const sorted = Object.entries(records).sort(([one], [other]) => (one < other ? -1 : 1));
  return deepFrozen(Object.fromEntries(sorted));
}

function deepFrozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value;
  for (const inner of Object.values(value)) deepFrozen(inner);
  return Object.freeze(value);
}
