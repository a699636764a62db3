import type { Catalog } from '../../catalog/catalog.ts';
import { figure } from '../../diagnosis/judgements.ts';
import type { EventDraft } from '../../records/recorded.ts';
import type { BoxFamily } from '../../schema/basics.ts';
import type { Installation, InstallationInput } from '../../schema/installation.ts';
import type { Motor } from '../../schema/motor.ts';
import type { Box } from '../../schema/netlist.ts';
import { inUnit } from '../../units/units.ts';

/**
 * What can be chosen for each line of the title block, and the event that a choice writes.
 *
 * The choices come from the content: a box or a motor that enters the tables is on the keys at once.
 * A choice that contradicts an earlier one takes that one back, so that the two never stand together.
 */
export const QUESTIONS = [
  'box',
  'motor',
  'supply',
  'buried',
  'drop',
  'water',
  'fittings',
  'person',
  'kit',
  'happened',
] as const;
export type Question = (typeof QUESTIONS)[number];

type Unknown = readonly (keyof Installation)[];

export function fact(set: InstallationInput, unknown: Unknown = []): EventDraft {
  return unknown.length === 0
    ? { kind: 'installation', set }
    : { kind: 'installation', set, unknown: [...unknown] };
}

export function familiesOf(catalog: Catalog): BoxFamily[] {
  const order: readonly BoxFamily[] = ['no-box', 'start-only', 'start-and-run', 'contactor'];
  const present = new Set(Object.values(catalog.boxes).map((box) => box.family));
  return order.filter((family) => present.has(family));
}

export function boxesOf(catalog: Catalog, family: BoxFamily): Box[] {
  return Object.values(catalog.boxes).filter((box) => box.family === family);
}

/** What choosing a family says; a family with one kind of box is that box. */
export function familyFact(catalog: Catalog, family: BoxFamily): Said {
  const kinds = boxesOf(catalog, family);
  const [only] = kinds;
  const leads = family === 'no-box' ? '2-wire' : '3-wire';
  if (kinds.length === 1 && only !== undefined) return { set: { family, leads, box: only.id } };
  return { set: { family, leads }, unknown: ['box'] };
}

export function leadsFact(known: Installation, leads: '2-wire' | '3-wire'): Said {
  const contradicts = known.family !== undefined && (known.family === 'no-box') !== (leads === '2-wire');
  return { set: { leads }, unknown: contradicts ? ['family', 'box'] : [] };
}

/** Facts that a tap says, and those that it takes back. */
export interface Said {
  readonly set: InstallationInput;
  readonly unknown?: Unknown;
}

/** Ratings on the motor plates of the tables, in horsepower, smallest first. */
export function powersOf(catalog: Catalog): number[] {
  const powers = plates(catalog).map((motor) => Math.round(inUnit(motor.power, 'hp') * 100) / 100);
  return [...new Set(powers)].sort((one, other) => one - other);
}

/** Rows of the tables that a person may choose among. */
export function plates(catalog: Catalog): Motor[] {
  return Object.values(catalog.motors).filter((motor) => motor.auxiliary === undefined);
}

/** Copper sizes of the tables, thinnest first. */
export function conductorsOf(catalog: Catalog): { id: string; gauge: number }[] {
  return Object.values(catalog.conductors)
    .filter((one) => one.metal === 'copper')
    .map(({ id, gauge }) => ({ id, gauge }))
    .sort((one, other) => other.gauge - one.gauge);
}

/** Service volts that go with the motors of the tables, lowest first. */
export function suppliesOf(catalog: Catalog): number[] {
  const overMotor = figure(catalog.judgements, 'service-over-motor-volts');
  const volts = plates(catalog).map((motor) => Math.round(motor.volts * overMotor));
  return [...new Set(volts)].sort((one, other) => one - other);
}

/** Instruments that a person carries; eyes and ears are always at hand. */
export function instrumentsOf(catalog: Catalog): string[] {
  return Object.values(catalog.instruments)
    .filter((one) => one.kind === 'meter')
    .map((one) => one.id);
}

export function isSamePower(known: Installation, horsepower: number): boolean {
  return known.power !== undefined && Math.abs(inUnit(known.power, 'hp') - horsepower) < 0.02;
}
