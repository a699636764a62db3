import type { Check } from '../../src/schema/check.ts';
import {
  hasInterlock,
  isEnergised,
  isHandsOff,
  isInsulationTest,
  isWaterWork,
  needsDead,
  needsSubstitute,
  touchedPlaces,
} from './needs.ts';
import { isAnyOpen, isOpenBeside, mayActAs, type Work } from './work.ts';

/**
 * May this check be asked for, of this person, with the site as it is claimed now?
 *
 * One pure function over one table of rules; no instruction is shown without it. The rules are common
 * practice; local codes, the employer's rules and licensed practice stand above them.
 *
 * @source practice: electrical lock-out, proof of dead, stored charge, insulation tests
 */
interface Rule {
  readonly name: string;
  /** For a person who may object to it. */
  readonly sentence: string;
  readonly holds: (check: Check, work: Work) => boolean;
}

export const RULES = [
  {
    name: 'working',
    sentence: 'Nothing is asked for while work is stopped.',
    holds: (_check, { site }) => !site.stopped,
  },
  {
    name: 'hazards-known',
    sentence: 'A check with a hazard that the interlock does not know is not asked for.',
    holds: (check, { interlocks }) => check.hazards.every((hazard) => interlocks[hazard] !== undefined),
  },
  {
    name: 'person',
    sentence: 'Nobody is asked for a check that takes a more qualified person.',
    holds: (check, { who }) => mayActAs(who, check.who),
  },
  {
    name: 'hands-off',
    sentence: 'A caller and a trainee alone only look, listen and read, with every cover on and no hazard.',
    holds: (check, work) => mayActAs(work.who, 'trainee-accompanied') || isHandsOff(check, work),
  },
  {
    name: 'no-apart-lid',
    sentence: 'With a lid that pulls apart there is nothing to measure inside while it runs.',
    holds: (check, { plugApart }) => !(plugApart && check.notPlugApart === true),
  },
  {
    name: 'energised-qualified',
    sentence: 'Readings on parts that may be live are for the qualified.',
    holds: (check, work) => !isEnergised(check, work) || work.who === 'qualified' || isDeadThere(check, work),
  },
  {
    name: 'open-live-qualified',
    sentence:
      'While a cover or the well is open and the supply is not locked, only the qualified work on the site.',
    holds: (_check, { site, who }) => site.supply === 'locked' || !isAnyOpen(site) || who === 'qualified',
  },
  {
    name: 'supply-on',
    sentence: 'A reading that needs power waits until the supply is said to be on.',
    holds: (check, { site }) => check.site.supply !== 'live' || site.supply === 'live',
  },
  {
    name: 'tripped-stays-off',
    sentence: 'A breaker found tripped stays off until its one reset, after good ohms and insulation.',
    holds: (check, work) => !(isCalling(check) && work.breakerTripped === true),
  },
  {
    name: 'locked-out',
    sentence: 'Ohms, capacitance, insulation and every hand inside wait for the lock and the tag.',
    holds: (check, work) =>
      !needsDead(check, work) || (work.site.supply === 'locked' && check.site.supply !== 'live'),
  },
  {
    name: 'proved-dead',
    sentence: 'They wait for proof of dead at every place that is touched, on AC and on DC.',
    holds: (check, work) => !needsDead(check, work) || isWaterWork(check, work) || isProvedThere(check, work),
  },
  {
    name: 'capacitors-bled',
    sentence: 'In a box that holds a capacitor they wait until it is bled and metered as well.',
    holds: (check, work) => !needsDead(check, work) || isBledThere(check, work),
  },
  {
    name: 'work-before-power',
    sentence: 'A live reading with a part fitted by hand waits until that part was fitted dead and bled.',
    holds: (check, work) => !needsSubstitute(check, work) || work.site.substitute === 'fitted',
  },
  {
    name: 'cover-off',
    sentence: 'A check behind a cover waits until that cover is said to be off.',
    holds: (check, work) => check.site.cover !== 'open' || isOpenThere(check, work),
  },
  {
    name: 'covers-on',
    sentence: 'With power on, every cover that the reading does not need is on.',
    holds: (check, work) =>
      work.site.supply !== 'live' || !isOpenBeside(work.site, touchedPlaces(check, work)),
  },
  {
    name: 'leads',
    sentence: 'The motor leads are where the check needs them: connected, lifted, or split at the well head.',
    holds: ({ site: { leads } }, { site }) => leads === 'any' || leads === site.leads,
  },
  {
    name: 'insulation-isolated',
    sentence:
      'An insulation test waits until the leads are lifted and box, drive, protector, arrester, GFCI device and heat tape are out of circuit.',
    holds: (check, work) =>
      !isInsulationTest(check, work) ||
      (work.site.leads !== 'connected' && work.site.electronics === 'disconnected'),
  },
  {
    name: 'people-clear',
    sentence: 'Test volts and open live parts wait until people are clear of the site and of the well.',
    holds: (check, work) => !needsPeopleClear(check, work) || work.site.people === 'clear',
  },
  {
    name: 'pressure-relieved',
    sentence: 'Nothing under water pressure is opened before the pressure is relieved.',
    holds: (check, work) =>
      !hasInterlock(check, work, 'pressure') ||
      check.site.supply === 'live' ||
      work.site.pressure === 'relieved',
  },
  {
    name: 'dead-head',
    sentence:
      'The pump runs against a shut valve only below every rating, computed first, with the kit shown.',
    holds: (check, work) =>
      !isDeadHead(check, work) || (work.deadHead === 'below-ratings' && work.site.deadHeadKit === 'shown'),
  },
  {
    name: 'well-qualified',
    sentence: 'The opened well is for the qualified, with the licence that the place demands.',
    holds: (check, work) => !touchesWell(check, work) || work.who === 'qualified',
  },
  {
    name: 'confined-qualified',
    sentence:
      'Pits and enclosed wells are for the qualified: air tested from outside, an attendant, never alone.',
    holds: (check, work) => !hasInterlock(check, work, 'confined') || work.who === 'qualified',
  },
] as const satisfies readonly Rule[];

export type RuleName = (typeof RULES)[number]['name'];
export type Permission =
  | { readonly permitted: true }
  | { readonly permitted: false; readonly rule: RuleName };

/** @returns the first rule that is not met, in the order of the table */
export function permits(
  check: Check,
  work: Work,
  rules: readonly (Rule & { name: RuleName })[] = RULES,
): Permission {
  const broken = rules.find((rule) => !rule.holds(check, work));
  return broken === undefined ? { permitted: true } : { permitted: false, rule: broken.name };
}

/** The reading needs the pump circuit alive. */
const isCalling = ({ site }: Check): boolean => site.supply === 'live' && site.calling === true;

function isOpenThere(check: Check, work: Work): boolean {
  const touched = touchedPlaces(check, work);
  return touched.length > 0 && touched.every((place) => work.site.places[place] !== 'closed');
}

function isProvedThere(check: Check, work: Work): boolean {
  const { site } = work;
  const touched = touchedPlaces(check, work);
  return touched.length > 0 && touched.every((place) => site.places[place] === 'proved');
}

function isBledThere(check: Check, work: Work): boolean {
  const { site, holdsCapacitor } = work;
  return !holdsCapacitor || !touchedPlaces(check, work).includes('box') || site.charge === 'bled';
}

function isDeadThere(check: Check, work: Work): boolean {
  return work.site.supply === 'locked' && isProvedThere(check, work) && isBledThere(check, work);
}

export function needsPeopleClear(check: Check, work: Work): boolean {
  const openLive = check.site.supply === 'live' && check.site.cover === 'open';
  return isInsulationTest(check, work) || (openLive && isEnergised(check, work));
}

export function isDeadHead(check: Check, work: Work): boolean {
  return hasInterlock(check, work, 'pressure') && check.site.supply === 'live';
}

function touchesWell(check: Check, work: Work): boolean {
  return (
    hasInterlock(check, work, 'well-open') ||
    (check.site.cover === 'open' && check.site.place === 'well') ||
    check.site.leads === 'split'
  );
}
