import type { Catalog } from '../../catalog/catalog.ts';
import { figure } from '../../diagnosis/judgements.ts';
import type { EventDraft } from '../../records/recorded.ts';
import { type Installation, type InstallationInput, installation } from '../../schema/installation.ts';
import type { Motor } from '../../schema/motor.ts';
import type { Box } from '../../schema/netlist.ts';
import { fact, plates } from './installation-facts.ts';

/** Rows of the motor tables that fit all that is known; a kind of box serves only some of them. */
export function motorRows(catalog: Catalog, known: Installation): Motor[] {
  const boxes = Object.values(catalog.boxes).filter((box) => fitsBox(box, known));
  return plates(catalog).filter(
    (row) =>
      (known.leads === undefined || row.leads === known.leads) &&
      (known.power === undefined || Math.abs(row.power - known.power) < 0.02 * known.power) &&
      (known.supply?.volts === undefined || voltsFit(catalog, row, known.supply.volts)) &&
      boxes.some((box) => box.leads === row.leads && box.serves.includes(row.circuit)),
  );
}

const fitsBox = (box: Box, known: Installation): boolean =>
  (known.box === undefined || box.id === known.box) &&
  (known.family === undefined || box.family === known.family);

function voltsFit(catalog: Catalog, row: Motor, volts: number): boolean {
  return Math.abs(volts - row.volts) <= figure(catalog.judgements, 'volts-class-tolerance') * row.volts;
}

type Dropped = readonly (keyof Installation)[];

/**
 * A fact, and the motor row with it where only one row is left: nobody is asked for what follows.
 *
 * @param known what stands before this fact
 */
export function factWithRow(
  catalog: Catalog,
  known: Installation,
  said: { readonly set: InstallationInput; readonly unknown?: Dropped },
): EventDraft {
  const dropped = new Set<string>([...(said.unknown ?? []), 'motor']);
  const kept = Object.fromEntries(Object.entries(known).filter(([field]) => !dropped.has(field)));
  const rows = motorRows(catalog, { ...kept, ...installation.parse(said.set) });
  const [only] = rows;
  if (rows.length === 1 && only !== undefined)
    return fact({ ...said.set, motor: only.id }, without(said.unknown, 'motor'));
  return fact(said.set, [...without(said.unknown, 'motor'), 'motor']);
}

const without = (list: Dropped | undefined, field: keyof Installation): Dropped =>
  (list ?? []).filter((one) => one !== field);
