import type { Catalog } from '../catalog/catalog.ts';
import { type Evidenced, evidencedRecords } from '../catalog/evidence.ts';
import type { Mark } from '../schema/basics.ts';

/**
 * How well is what the engine knows known?
 *
 * Every number of every record that carries evidence is counted once, under the mark of the entry that
 * vouches for it most closely: `fullLoad.amps` before `fullLoad` before an entry for the whole record.
 * Where several vouch for it alike the weakest counts. A record without a number (a wiring, a hazard)
 * is one statement, counted the same way.
 */
export interface Figure {
  /** Folder of content. */
  readonly folder: string;
  readonly record: string;
  /** Empty for a statement. */
  readonly field: string;
  readonly mark: Mark;
}

/** Weakest first. */
export const MARKS: readonly Mark[] = ['memory', 'practice', 'derived', 'seen'];

export function figuresOf(catalog: Catalog): Figure[] {
  return evidencedRecords(catalog).flatMap((one) => {
    const [folder = ''] = one.at.split('/');
    const base = { folder, record: one.record.id };
    const fields = folder === DRAWINGS ? [] : numbersIn(one.record, []);
    if (fields.length === 0) return [{ ...base, field: '', mark: weakest(one.record.from) }];
    return fields.map((path) => ({ ...base, field: path.join('.'), mark: markOf(one, path) }));
  });
}

/** Where numbers are places on a sheet of paper, not figures. */
const DRAWINGS = 'netlists';

/** Paths of all numbers of a record; what the evidence itself says is none of them. */
function numbersIn(value: unknown, path: readonly string[]): (readonly string[])[] {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value)
    .filter(([key]) => path.length > 0 || key !== 'from')
    .flatMap(([key, inner]) => numbersIn(inner, [...path, key]));
}

function markOf({ record }: Evidenced, path: readonly string[]): Mark {
  for (let length = path.length; length > 0; length--) {
    const name = path.slice(0, length).join('.');
    const own = record.from.filter(({ of = [] }) => of.includes(name));
    if (own.length > 0) return weakest(own);
  }
  const general = record.from.filter(({ of }) => of === undefined);
  return weakest(general.length > 0 ? general : record.from);
}

const weakest = (from: Evidenced['record']['from']): Mark =>
  MARKS.find((mark) => from.some((one) => one.mark === mark)) ?? 'memory';

export type Counts = Readonly<Record<Mark, number>>;

export function countsOf(figures: readonly Figure[]): Counts {
  const counts = { memory: 0, practice: 0, derived: 0, seen: 0 };
  for (const { mark } of figures) counts[mark]++;
  return counts;
}

export interface FolderCounts {
  readonly folder: string;
  readonly figures: Counts;
  readonly statements: Counts;
}

/** One line a folder, in the order of the catalogue. */
export function countsByFolder(figures: readonly Figure[]): FolderCounts[] {
  const folders = [...new Set(figures.map(({ folder }) => folder))];
  return folders.map((folder) => {
    const own = figures.filter((one) => one.folder === folder);
    return {
      folder,
      figures: countsOf(own.filter(({ field }) => field !== '')),
      statements: countsOf(own.filter(({ field }) => field === '')),
    };
  });
}
