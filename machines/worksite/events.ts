import type { Place } from '../../src/schema/basics.ts';
import type { SiteEvent } from '../../src/schema/case.ts';

/**
 * What a person can say about the work site. Each is a fact, said once it is done or seen; the
 * machine takes what makes sense in the present state and leaves the rest.
 */

/** Facts about one place. */
export const PLACE_FACTS = ['open-cover', 'prove-dead', 'close-cover'] as const;

/** Facts about the motor leads, said where they end: in the box, or in the switch where no box is. */
export const LEAD_FACTS = ['lift-leads', 'land-leads'] as const;

/** Facts about the site as a whole. */
export const SITE_FACTS = [
  'clear-people',
  'switch-off',
  'lock-and-tag',
  'bleed-capacitors',
  'disconnect-electronics',
  'reconnect-electronics',
  'split-at-wellhead',
  'join-at-wellhead',
  'unlock',
  'energise',
  'reset-breaker',
  'disinfected',
  'lapsed',
  'supply-restored',
  'stop-unsafe',
  'resume',
] as const;

/** Facts that are only remembered: nothing else in the machine waits for them. */
export const MEMORY_FACTS = [
  'relieve-pressure',
  'kit-shown',
  'substitute-fitted',
  'substitute-removed',
  'no-second-source',
  'second-source-seen',
  'no-reset-made',
  'reset-used',
  'no-overload-pressed',
  'overload-button-used',
  'insulation-good',
  'insulation-bad',
] as const;

export type WorksiteEvent =
  | { readonly type: (typeof PLACE_FACTS)[number]; readonly place: Place }
  | { readonly type: (typeof LEAD_FACTS)[number]; readonly place: LeadPlace }
  | { readonly type: (typeof SITE_FACTS)[number] }
  | { readonly type: (typeof MEMORY_FACTS)[number] };

/** Where the motor leads can be lifted by hand. */
export type LeadPlace = Extract<Place, 'box' | 'switch'>;

export const PLACES: readonly Place[] = ['panel', 'switch', 'box', 'well'];
export const LEAD_PLACES: readonly LeadPlace[] = ['switch', 'box'];

/** Every event that can be sent, with every place it can carry. */
export function everyEvent(): WorksiteEvent[] {
  return [...coreEvents(), ...MEMORY_FACTS.map((type) => ({ type }))];
}

/** The events that the rest of the machine depends on. */
export function coreEvents(): WorksiteEvent[] {
  return [
    ...PLACE_FACTS.flatMap((type) => PLACES.map((place) => ({ type, place }))),
    ...LEAD_FACTS.flatMap((type) => LEAD_PLACES.map((place) => ({ type, place }))),
    ...SITE_FACTS.map((type) => ({ type })),
  ];
}

const BY_NAME = new Map(everyEvent().map((event) => [nameOf(event), event]));

function nameOf(said: SiteEvent): string {
  return said.place === undefined ? said.type : `${said.type} ${said.place}`;
}

/**
 * The event that a stored claim stands for. A lead is in the box unless said otherwise.
 *
 * @returns undefined for a claim that this machine does not know: it changes nothing
 */
export function worksiteEvent(said: SiteEvent): WorksiteEvent | undefined {
  return (
    BY_NAME.get(nameOf(said)) ?? BY_NAME.get(nameOf({ ...said, place: 'box' })) ?? BY_NAME.get(said.type)
  );
}
