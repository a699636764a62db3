import type { Place } from '../../src/schema/basics.ts';
import type { Check } from '../../src/schema/check.ts';
import { PLACES } from './events.ts';
import type { Interlock, WorkPlace } from './work.ts';

/**
 * What a check does to the person who takes it, read off what it measures and where, so that a
 * record which forgets to ask for a lock is still held back.
 */

/** Worked out from other readings: nobody touches anything. */
function isComputed(check: Check): boolean {
  return 'sumTest' in check.predict;
}

/** An instrument that must never meet a live circuit, a hand inside, or a record that asks for a lock. */
export function needsDead(check: Check, work: WorkPlace): boolean {
  if (check.site.supply === 'locked') return true;
  if (isComputed(check)) return false;
  const { reads, predict, site } = check;
  const working = 'reads' in predict && predict.reads === 'capacitance-in-service';
  const passive =
    'quantity' in reads &&
    (reads.quantity === 'resistance' || (reads.quantity === 'capacitance' && !working));
  const drives = 'reads' in predict && ['ohms', 'capacitance', 'insulation'].includes(predict.reads);
  return passive || drives || (site.supply !== 'live' && hasWorkInside(check, work));
}

/**
 * Water work: the pump must not start, and no hand goes near a conductor. The lock is enough; there is
 * no place at which dead could be proved.
 */
export function isWaterWork(check: Check, work: WorkPlace): boolean {
  const { at, site, predict } = check;
  const drives = 'reads' in predict;
  return 'look' in at && site.cover !== 'open' && !drives && touchedPlaces(check, work).length === 0;
}

/** Taken with power on, but something is fitted by hand first: that part of it is dead work. */
export function needsSubstitute(check: Check, work: WorkPlace): boolean {
  return check.site.supply === 'live' && hasWorkInside(check, work);
}

function hasWorkInside(check: Check, work: WorkPlace): boolean {
  return hasInterlock(check, work, 'prove-dead') || hasInterlock(check, work, 'bleed');
}

/** Puts hundreds of volts on the conductors, up to the well. */
export function isInsulationTest(check: Check, work: WorkPlace): boolean {
  return (
    hasInterlock(check, work, 'test-voltage') ||
    ('reads' in check.predict && check.predict.reads === 'insulation')
  );
}

/** Probes, a clamp or an uncovered look at parts that may be live. */
export function isEnergised(check: Check, work: WorkPlace): boolean {
  if (needsDead(check, work) || isComputed(check)) return false;
  return !('look' in check.at) || check.site.cover === 'open' || hasInterlock(check, work, 'energised');
}

/** Nothing but eyes and ears, covers on, no hazard named. */
export function isHandsOff(check: Check, work: WorkPlace): boolean {
  return (
    check.hazards.length === 0 && 'look' in check.at && check.site.cover !== 'open' && !needsDead(check, work)
  );
}

export function hasInterlock(check: Check, { interlocks }: WorkPlace, wanted: Interlock): boolean {
  return check.hazards.some((hazard) => interlocks[hazard] === wanted);
}

/**
 * Every place where a probe or a hand goes. A bare motor lead is at the place where leads are lifted;
 * a part is touched at both its ends; split leads also have an end at the well.
 */
export function touchedPlaces(check: Check, work: WorkPlace): readonly Place[] {
  const known = TOUCHED.get(work.partEnds) ?? new Map<string, readonly Place[]>();
  const key = `${check.id} ${work.leadsAt}`;
  const places = known.get(key) ?? placesOf(check, work);
  TOUCHED.set(work.partEnds, known.set(key, places));
  return places;
}

/** Worked out once for an installation: every permission asks for it. */
const TOUCHED = new WeakMap<WorkPlace['partEnds'], Map<string, readonly Place[]>>();

function placesOf(check: Check, { leadsAt, partEnds }: WorkPlace): readonly Place[] {
  const names = namesIn(check, partEnds).map((name) => name.split('.')[0]);
  if (names.includes('lead')) names.push(leadsAt);
  if (check.site.leads === 'split') names.push('well');
  if (check.site.place !== undefined) names.push(check.site.place);
  return PLACES.filter((place) => names.includes(place));
}

function namesIn({ at }: Check, partEnds: WorkPlace['partEnds']): readonly string[] {
  if ('between' in at) return [...at.between, ...(at.tie ?? [])];
  if ('across' in at) return [at.across, ...(partEnds[at.across] ?? [])];
  if ('clamp' in at) return at.clamp;
  if ('tied' in at) return [...at.tied, at.to];
  return [at.look];
}
