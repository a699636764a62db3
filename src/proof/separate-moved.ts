import type { Catalog } from '../catalog/catalog.ts';
import type { Check } from '../schema/check.ts';
import { type SiteTable, TELLS } from './separate-pairs.ts';
import { UNTOUCHED } from './separate-sites.ts';

/**
 * Which faults leave every reading as it was, and which checks does nothing move?
 *
 * A variant must change a reading on one of the installations where it can occur. A check must tell
 * some fault from another or from nothing done, unless it serves something else: it proves a repair,
 * tells the interlock a fact, or is worked out from other readings.
 */

/** Faults that occur on none of the installations, and those that change no reading where they do. */
export function quietFaults({ faults }: Catalog, tables: readonly SiteTable[]) {
  const lively = new Set(tables.flatMap(livelyOf));
  const occur = new Map<string, Set<string>>();
  for (const { site } of tables)
    for (const { fault, variant } of site.model.hypotheses)
      occur.set(fault.id, (occur.get(fault.id) ?? new Set()).add(variant));
  const still = Object.values(faults)
    .filter(({ verdict }) => verdict !== 'normal')
    .flatMap(({ id }) => {
      const variants = [...(occur.get(id) ?? [])];
      const quiet = variants.filter((variant) => !lively.has(nameOf(id, variant)));
      return quiet.length === variants.length && quiet.length > 0
        ? [id]
        : quiet.map((variant) => nameOf(id, variant));
    });
  return { nowhere: Object.keys(faults).filter((id) => !occur.has(id)), still };
}

const nameOf = (fault: string, variant: string): string => `${fault} › ${variant}`;

/** Variants that some check tells from nothing done. */
function livelyOf({ site, told }: SiteTable): string[] {
  const { hypotheses } = site.model;
  const untouched = hypotheses.findIndex(({ fault }) => fault.id === UNTOUCHED.id);
  return hypotheses
    .filter((_, index) => told(untouched, index) >= TELLS)
    .map(({ fault, variant }) => nameOf(fault.id, variant));
}

/** Checks that tell nothing from anything, and those that nobody may take. */
export function idleChecks(catalog: Catalog, tables: readonly SiteTable[]) {
  const here = new Set(tables.flatMap(({ site }) => site.checks.map(({ check }) => check.id)));
  const moved = new Set(tables.flatMap((table) => [...table.moved]));
  const forbidden = new Map(
    tables.flatMap(({ site }) => site.forbidden.map(({ check, why }) => [check, why])),
  );
  return {
    unmoved: Object.values(catalog.checks)
      .filter(({ id }) => here.has(id) && !moved.has(id))
      .filter((check) => !servesOtherwise(catalog, check))
      .map(({ id }) => id),
    forbidden: [...forbidden].filter(([check]) => !here.has(check)).map(([check, why]) => ({ check, why })),
  };
}

/** It tells the interlock something, proves a repair, or is worked out from other readings. */
function servesOtherwise({ actions }: Catalog, check: Check): boolean {
  if (check.says !== undefined || 'sumTest' in check.predict) return true;
  return Object.values(actions).some(({ proof }) => proof.includes(check.id));
}
