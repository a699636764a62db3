import type { Catalog, Table } from '../../../src/catalog/catalog.ts';
import { SITES } from '../../../src/proof/separate-sites.ts';
import type { Check } from '../../../src/schema/check.ts';
import type { Fault } from '../../../src/schema/fault.ts';
import { catalog } from '../../published/support/catalog.ts';

/** A catalogue of a few faults and checks, no repair proved by any; quick enough to be held against the plant. */
export function small(faults: readonly Fault[], checks: readonly Check[]): Catalog {
  const actions = Object.values(catalog.actions).map((action) => ({ ...action, proof: [] }));
  return { ...catalog, faults: byId(faults), checks: byId(checks), actions: byId(actions) };
}

const byId = <T extends { readonly id: string }>(records: readonly T[]): Table<T> =>
  Object.fromEntries(records.map((record) => [record.id, record]));

export function fault(id: string, changed: Partial<Fault> = {}): Fault {
  const found = catalog.faults[id];
  if (found === undefined) throw new Error(`the content has no fault ${id}`);
  const { together: _, ...rest } = found;
  return { ...rest, ...changed };
}

export function check(id: string, changed: Partial<Check> = {}): Check {
  const found = catalog.checks[id];
  if (found === undefined) throw new Error(`the content has no check ${id}`);
  return { ...found, ...changed };
}

/** One installation, as a table of its own. */
export function only(name: string): typeof SITES {
  const known = SITES[name];
  if (known === undefined) throw new Error(`there is no installation ${name}`);
  return { [name]: known };
}
