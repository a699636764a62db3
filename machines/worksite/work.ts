import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Person, Place } from '../../src/schema/basics.ts';
import type { Installation } from '../../src/schema/installation.ts';
import type { Box, Netlist } from '../../src/schema/netlist.ts';
import type { Hazard } from '../../src/schema/smaller.ts';
import { type LeadPlace, PLACES } from './events.ts';
import type { SiteFacts } from './site.ts';

export type Interlock = Hazard['interlock'];

/** What the interlock must know of the installation; a missing fact counts as the dangerous value. */
export interface WorkPlace {
  readonly holdsCapacitor: boolean;
  /** A lid that pulls apart isolates the motor leads by itself. */
  readonly plugApart: boolean;
  /** Where the motor leads are lifted by hand. */
  readonly leadsAt: LeadPlace;
  /** Whether another source could feed this circuit. */
  readonly secondSource: boolean;
  /** Nodes at the two ends of each part: a wire between two places is read with a hand in both. */
  readonly partEnds: Readonly<Record<string, readonly string[]>>;
  /** What keeps people away from each hazard, by hazard id. */
  readonly interlocks: Readonly<Record<string, Interlock>>;
}

/** The site as it is claimed now, the person who would do the work, and the installation. */
export interface Work extends WorkPlace {
  readonly site: SiteFacts;
  readonly who: Person;
  /** Others on the site who may do a step that `who` may not. */
  readonly present?: readonly Person[];
  /** The computed dead-head pressure against every rating; unknown counts as above. */
  readonly deadHead?: 'below-ratings' | 'above-ratings';
  /** Readings that must stand before a button is pressed or a breaker reset. */
  readonly windingOhmsRead?: boolean;
  readonly overloadRead?: boolean;
  /** The breaker was found tripped: power comes back by its one reset and no other way. */
  readonly breakerTripped?: boolean;
}

/**
 * The interlock's view of an installation. While the box is not known for certain the dangerous value
 * counts: one box that could hold a capacitor is enough, and leads cost no time only where every
 * box that it could be isolates them by its lid.
 */
export function workPlace(
  catalog: Pick<Catalog, 'hazards' | 'netlists'>,
  boxes: readonly Box[],
  installation: Installation,
): WorkPlace {
  const all = (holds: (box: Box) => boolean): boolean => boxes.length > 0 && boxes.every(holds);
  return {
    holdsCapacitor: !all((box) => !box.holdsCapacitor),
    plugApart: all((box) => box.plugApart),
    leadsAt: all((box) => box.family === 'no-box') ? 'switch' : 'box',
    secondSource: installation.secondSource ?? true,
    partEnds: endsOfParts(
      Object.values(catalog.netlists).filter(
        ({ id }) => boxes.length === 0 || boxes.some((box) => box.pieces.includes(id)),
      ),
    ),
    interlocks: Object.fromEntries(
      Object.values(catalog.hazards).map(({ id, interlock }) => [id, interlock]),
    ),
  };
}

/** Where two pieces give a part different ends, all of them count. */
export function endsOfParts(pieces: readonly Pick<Netlist, 'parts'>[]): Record<string, string[]> {
  const ends: Record<string, string[]> = {};
  for (const { id, between } of pieces.flatMap(({ parts }) => parts))
    ends[id] = [...(ends[id] ?? []), ...between];
  return ends;
}

/**
 * How far a person's word reaches. A trainee with a technician beside him counts as the two of them.
 */
const RANK: Readonly<Record<Person, number>> = {
  caller: 0,
  'trainee-alone': 1,
  'trainee-accompanied': 2,
  technician: 2,
  qualified: 3,
};

export function mayActAs(who: Person, least: Person): boolean {
  return RANK[who] >= RANK[least];
}

/** Somebody on the site may do what needs `least`. */
export function somebodyMay({ who, present = [] }: Pick<Work, 'who' | 'present'>, least: Person): boolean {
  return [who, ...present].some((one) => mayActAs(one, least));
}

export function isAnyOpen(site: SiteFacts): boolean {
  return Object.values(site.places).some((place) => place !== 'closed');
}

export function isOpenBeside(site: SiteFacts, here: readonly Place[]): boolean {
  return PLACES.some((place) => !here.includes(place) && site.places[place] !== 'closed');
}
