import type { Evidence } from '../schema/basics.ts';
import type { Catalog, Problem } from './catalog.ts';

/** A record that says where its figures come from, and where it stands. */
export interface Evidenced {
  readonly at: string;
  readonly record: { readonly id: string; readonly from: readonly Evidence[] } & object;
}

/** Every record that carries evidence, by folder and id: all but sources and words. */
export function evidencedRecords(catalog: Catalog): Evidenced[] {
  const { version: _, sources: __, words: ___, ...tables } = catalog;
  return Object.entries(tables).flatMap(([name, table]) =>
    Object.values(table).map((record) => ({ at: `${folderOf(name)}/${record.id}`, record })),
  );
}

/** `motorModels` is read from the folder motor-models. */
const folderOf = (table: string): string => table.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Third ring, evidence: every figure has an entry that vouches for it, and no entry vouches for nothing. */
export function evidenceProblems(catalog: Catalog): Problem[] {
  return evidencedRecords(catalog).flatMap((one) => [...unvouched(one), ...misnamed(one)]);
}

function unvouched({ at, record }: Evidenced): Problem[] {
  return Object.entries(record)
    .filter(([field, value]) => holdsFigure(value) && !isVouched(record.from, field))
    .map(([field]) => ({
      at: `${at} › ${field}`,
      message: 'no entry of from vouches for this figure',
      hint: 'name it in the `of` of the entry whose source it was read in',
    }));
}

function holdsFigure(value: unknown): boolean {
  if (typeof value === 'number') return true;
  return typeof value === 'object' && value !== null && Object.values(value).some(holdsFigure);
}

/** An entry without `of` vouches for the record; `amps.red` vouches for a part of `amps`. */
function isVouched(from: readonly Evidence[], field: string): boolean {
  return from.some(({ of }) => of === undefined || of.some((name) => name.split('.')[0] === field));
}

function misnamed({ at, record }: Evidenced): Problem[] {
  return record.from.flatMap(({ of = [] }, index) =>
    of
      .filter((name) => !hasField(record, name.split('.')))
      .map((name) => ({
        at: `${at} › from[${index}] › of`,
        message: `the record has no ${name}`,
        hint: 'name a field of this record',
      })),
  );
}

function hasField(value: unknown, [first, ...rest]: readonly string[]): boolean {
  if (first === undefined) return true;
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, first)) return false;
  return hasField(Reflect.get(value, first), rest);
}
