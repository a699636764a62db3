import type { Place } from '../../src/schema/basics.ts';
import type { Check } from '../../src/schema/check.ts';
import type { SiteStepId } from './step-table.ts';
import type { Interlock, Work } from './work.ts';

/**
 * What the interlock promises about checks and steps, said a second time and in another way than the
 * rules say it: from the raw record, the raw facts and the person. Tests hold them against every state
 * of the work site, and the page for the licensed reader prints them.
 *
 * @source practice: electrical lock-out, proof of dead, stored charge, insulation tests
 */
export interface CheckInvariant {
  readonly name: string;
  readonly sentence: string;
  /** Asked only of permitted checks. */
  readonly holds: (check: Check, work: Work) => boolean;
}

export interface StepInvariant {
  readonly name: string;
  readonly sentence: string;
  /** Asked only of permitted steps. */
  readonly holds: (step: SiteStepId, place: Place, work: Work) => boolean;
}

const ALL: readonly Place[] = ['panel', 'switch', 'box', 'well'];

const isPassive = ({ reads, predict }: Check) =>
  !('sumTest' in predict) &&
  !('reads' in predict && predict.reads === 'capacitance-in-service') &&
  (('quantity' in reads && ['resistance', 'capacitance'].includes(reads.quantity)) ||
    ('reads' in predict && ['ohms', 'capacitance', 'insulation'].includes(predict.reads)));

const isInsulation = ({ predict }: Check) => 'reads' in predict && predict.reads === 'insulation';

const has = ({ hazards }: Check, { interlocks }: Work, one: Interlock) =>
  hazards.some((id) => interlocks[id] === one);

/** Work on the water, with no electrical place named and no cover off: the lock is what it asks for. */
const isAtTheWater = ({ at, site, predict }: Check) =>
  'look' in at &&
  !ALL.some((place) => place === at.look || place === site.place) &&
  site.cover !== 'open' &&
  !('reads' in predict);

const isInside = (check: Check, work: Work) =>
  !('sumTest' in check.predict) &&
  !isAtTheWater(check) &&
  check.site.supply !== 'live' &&
  (check.site.supply === 'locked' || has(check, work, 'prove-dead') || has(check, work, 'bleed'));

/** Every place that the record names, whatever the rules make of it. */
const placesIn = (check: Check, { leadsAt, partEnds }: Work) => {
  const named = 'look' in check.at ? [`${check.at.look}.`] : Object.values(check.at).flat();
  const ends = 'across' in check.at ? [...named, ...(partEnds[check.at.across] ?? [])] : named;
  const isAt = (place: string) => ends.some((end) => end.startsWith(`${place}.`));
  return ALL.filter(
    (place) => place === check.site.place || isAt(place) || (place === leadsAt && isAt('lead')),
  );
};

const isDead = (check: Check, work: Work) =>
  work.site.supply === 'locked' &&
  placesIn(check, work).every((place) => work.site.places[place] === 'proved');

const openPlaces = ({ site }: Work) => ALL.filter((place) => site.places[place] !== 'closed');

const isLiveWork = (check: Check) =>
  check.site.supply === 'live' && (!('look' in check.at) || check.site.cover === 'open');

export const CHECK_INVARIANTS: readonly CheckInvariant[] = [
  {
    name: 'no-ohms-unless-proved-dead',
    sentence:
      'No ohm, capacitance, insulation or contact-resistance check unless locked and proved dead at every place it touches.',
    holds: (check, work) => !isPassive(check) || isDead(check, work),
  },
  {
    name: 'no-hand-inside-unless-proved-dead',
    sentence: 'No hand behind a cover that asks for dead work unless locked and proved dead there.',
    holds: (check, work) =>
      !isInside(check, work) || (isDead(check, work) && placesIn(check, work).length > 0),
  },
  {
    name: 'no-hand-in-a-charged-box',
    sentence: 'No hand or probe in a dead box that holds a capacitor unless it is bled and metered as well.',
    holds: (check, work) =>
      !(isPassive(check) || isInside(check, work)) ||
      !placesIn(check, work).includes('box') ||
      !work.holdsCapacitor ||
      work.site.charge === 'bled',
  },
  {
    name: 'no-insulation-test-in-circuit',
    sentence: 'No insulation test with the leads on, with anything else in circuit, or with people near.',
    holds: (check, { site }) =>
      !isInsulation(check) ||
      (site.leads !== 'connected' && site.electronics === 'disconnected' && site.people === 'clear'),
  },
  {
    name: 'energised-only-for-the-qualified',
    sentence: 'Energised readings only by the qualified, with the cover said to be off where it must be.',
    holds: (check, { who, site }) =>
      !isLiveWork(check) ||
      (who === 'qualified' &&
        (check.site.cover !== 'open' ||
          (check.site.place !== undefined && site.places[check.site.place] === 'open'))),
  },
  {
    name: 'people-clear-of-open-live-parts',
    sentence: 'No energised reading behind an open cover while people are near.',
    holds: (check, { site }) => !isLiveWork(check) || check.site.cover !== 'open' || site.people === 'clear',
  },
  {
    name: 'no-other-cover-off-while-live',
    sentence: 'With power on, no cover is off but those that the reading needs.',
    holds: (check, work) =>
      work.site.supply !== 'live' || openPlaces(work).every((place) => placesIn(check, work).includes(place)),
  },
  {
    name: 'only-the-qualified-beside-open-parts',
    sentence: 'Nobody works beside an open place or an open well that is not locked out but the qualified.',
    holds: (_check, work) =>
      work.site.supply === 'locked' || openPlaces(work).length === 0 || work.who === 'qualified',
  },
  {
    name: 'caller-and-trainee-alone-hands-off',
    sentence: 'A caller or a trainee alone is asked only to look, listen and read, covers on, no hazard.',
    holds: (check, { who }) =>
      (who !== 'caller' && who !== 'trainee-alone') ||
      ('look' in check.at &&
        check.hazards.length === 0 &&
        check.site.cover === 'any' &&
        check.site.supply !== 'locked'),
  },
  {
    name: 'caller-does-only-a-callers-checks',
    sentence: 'A caller is asked only for what a caller may do.',
    holds: (check, { who }) => who !== 'caller' || check.who === 'caller',
  },
  {
    name: 'no-qualified-check-for-others',
    sentence: 'What takes the qualified is asked of nobody else.',
    holds: (check, { who }) => check.who !== 'qualified' || who === 'qualified',
  },
  {
    name: 'no-dead-head-above-a-rating',
    sentence:
      'No run against a shut valve unless its computed pressure is below every rating and the kit is shown.',
    holds: (check, work) =>
      !has(check, work, 'pressure') ||
      check.site.supply !== 'live' ||
      (work.deadHead === 'below-ratings' && work.site.deadHeadKit === 'shown'),
  },
  {
    name: 'no-opening-under-pressure',
    sentence: 'Nothing that holds water pressure is opened before it is relieved.',
    holds: (check, work) =>
      !has(check, work, 'pressure') || check.site.supply === 'live' || work.site.pressure === 'relieved',
  },
  {
    name: 'open-well-only-for-the-qualified',
    sentence: 'Work at the opened well is for the qualified.',
    holds: (check, work) => !has(check, work, 'well-open') || work.who === 'qualified',
  },
  {
    name: 'confined-space-only-for-the-qualified',
    sentence: 'Work in a pit or an enclosed well is for the qualified.',
    holds: (check, work) => !has(check, work, 'confined') || work.who === 'qualified',
  },
  {
    name: 'nothing-while-stopped',
    sentence: 'Nothing is asked for while work is stopped.',
    holds: (_check, { site }) => !site.stopped,
  },
  {
    name: 'readings-only-in-the-state-they-mean',
    sentence: 'A reading is asked for only with the supply and the leads as it needs them.',
    holds: ({ site: { supply, leads } }, { site }) =>
      (supply === 'any' || supply === site.supply) && (leads === 'any' || leads === site.leads),
  },
  {
    name: 'parts-are-exchanged-dead',
    sentence: 'A part fitted for a live reading was fitted dead and bled before power came back.',
    holds: (check, work) =>
      check.site.supply !== 'live' || !has(check, work, 'bleed') || work.site.substitute === 'fitted',
  },
];

const isAllClear = (work: Work) => openPlaces(work).length === 0 && work.site.people === 'clear';

const QUALIFIED_STEPS: readonly SiteStepId[] = [
  'lock-and-tag',
  'prove-dead',
  'bleed-capacitors',
  'unlock',
  'energise',
];
const LEAD_STEPS: readonly SiteStepId[] = ['lift-leads', 'land-leads'];
const WELL_STEPS: readonly SiteStepId[] = ['split-at-wellhead', 'join-at-wellhead'];
const ISOLATING_STEPS: readonly SiteStepId[] = ['disconnect-electronics', 'reconnect-electronics'];

const isSafeInside = ({ site, holdsCapacitor }: Work, place: Place) =>
  site.supply === 'locked' &&
  site.places[place] === 'proved' &&
  (place !== 'box' || !holdsCapacitor || site.charge === 'bled');

const everybody = ({ who, present = [] }: Work) => [who, ...present];

export const STEP_INVARIANTS: readonly StepInvariant[] = [
  {
    name: 'lock-and-proof-only-by-the-qualified',
    sentence: 'Lock-out, proof of dead, bleeding, unlocking and switching on are done by the qualified.',
    holds: (step, _place, work) => !QUALIFIED_STEPS.includes(step) || everybody(work).includes('qualified'),
  },
  {
    name: 'caller-only-switches-off',
    sentence: 'A caller and a trainee alone do one step only: switching off a labelled, dry, quiet breaker.',
    holds: (step, _place, work) =>
      everybody(work).some((one) => one !== 'caller' && one !== 'trainee-alone') || step === 'switch-off',
  },
  {
    name: 'power-only-when-all-is-clear',
    sentence: 'No unlocking, switching on or reset until covers are on and people are clear.',
    holds: (step, _place, work) =>
      !['unlock', 'energise', 'reset-breaker'].includes(step) || isAllClear(work),
  },
  {
    name: 'power-only-with-leads-landed',
    sentence:
      'No switching on until the leads are landed and everything disconnected is back; one reset may be made with leads lifted.',
    holds: (step, _place, { site }) =>
      (step !== 'energise' || (site.leads === 'connected' && site.electronics === 'in-circuit')) &&
      (step !== 'reset-breaker' || site.leads !== 'split'),
  },
  {
    name: 'one-reset-after-insulation-and-ohms',
    sentence:
      'A tripped breaker is reset once, by a technician, only after insulation and winding ohms; a reset made by anyone was the one.',
    holds: (step, _place, work) =>
      step !== 'reset-breaker' ||
      (everybody(work).some((one) => ['technician', 'qualified', 'trainee-accompanied'].includes(one)) &&
        work.site.reset === 'unused' &&
        work.site.insulation === 'good' &&
        work.windingOhmsRead === true),
  },
  {
    name: 'one-press-of-an-overload',
    sentence: 'An overload button is pressed once, covers on, after it has been read as found.',
    holds: (step, _place, work) =>
      step !== 'press-overload-button' ||
      (work.site.overload === 'unused' && work.overloadRead === true && openPlaces(work).length === 0),
  },
  {
    name: 'hands-on-leads-only-when-dead',
    sentence: 'Leads and electronics are moved only where locked, proved dead and bled.',
    holds: (step, _place, work) =>
      (!LEAD_STEPS.includes(step) || isSafeInside(work, work.leadsAt)) &&
      (!WELL_STEPS.includes(step) || isSafeInside(work, 'well')) &&
      (step !== 'fit-substitute' || isSafeInside(work, 'box')) &&
      (!ISOLATING_STEPS.includes(step) || ALL.some((place) => isSafeInside(work, place))),
  },
  {
    name: 'live-covers-opened-only-by-the-qualified',
    sentence: 'A cover is opened only by the qualified, and with power on only with people clear.',
    holds: (step, _place, work) =>
      !['open-cover', 'open-wellhead'].includes(step) ||
      (everybody(work).includes('qualified') &&
        (work.site.supply === 'locked' || (work.site.supply === 'live' && work.site.people === 'clear'))),
  },
  {
    name: 'try-to-start-only-with-people-clear',
    sentence: 'The lock is tried, which might start the pump, only with people clear.',
    holds: (step, _place, { site }) => step !== 'lock-and-tag' || site.people === 'clear',
  },
  {
    name: 'no-kit-above-a-rating',
    sentence: 'The dead-head kit is not asked for when the computed pressure is above a rating, or unknown.',
    holds: (step, _place, work) => step !== 'show-dead-head-kit' || work.deadHead === 'below-ratings',
  },
  {
    name: 'no-step-while-stopped',
    sentence: 'No step is asked for while work is stopped.',
    holds: (_step, _place, { site }) => !site.stopped,
  },
];
