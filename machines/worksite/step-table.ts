import type { Person, Place } from '../../src/schema/basics.ts';
import type { WorksiteEvent } from './events.ts';
import type { SiteFacts } from './site.ts';
import { isAnyOpen, isOpenBeside, somebodyMay, type Work } from './work.ts';

/**
 * The steps that make a site safe and give it back, each with who may do it, what must hold before it
 * may be asked for, and what it makes true. Texts and minutes are content.
 *
 * `makes` says in facts what the worksite machine does with the event; a test walks every state of
 * the machine and compares the two.
 */
export interface SiteStep {
  readonly who: Person;
  /** While the supply is not locked the step is energised work. */
  readonly whoUnlocked?: Person;
  /** Said by a press that is held. */
  readonly hold: boolean;
  /** Instructions that one press confirms together, in order; the step's own among them. */
  readonly lines: readonly string[];
  readonly says: (place: Place) => WorksiteEvent['type'];
  readonly may: (work: Work, place: Place) => boolean;
  readonly makes: (site: SiteFacts, place: Place) => Partial<SiteFacts>;
}

const cover = (site: SiteFacts, place: Place, state: 'closed' | 'open' | 'proved') => ({
  places: { ...site.places, [place]: state },
});

const mayOpen = ({ site }: Work, place: Place) => {
  const together: readonly Place[] = place === 'switch' || place === 'box' ? ['switch', 'box'] : [];
  const alone = site.people === 'clear' && !isOpenBeside(site, together);
  return site.places[place] === 'closed' && (site.supply === 'locked' || (site.supply === 'live' && alone));
};

const isDeadAt = ({ site, holdsCapacitor }: Work, place: Place) =>
  site.places[place] === 'proved' && (place !== 'box' || !holdsCapacitor || site.charge === 'bled');

const isDeadSomewhere = (work: Work) => PROVABLE.some((place) => isDeadAt(work, place));
const PROVABLE: readonly Place[] = ['panel', 'switch', 'box', 'well'];

const isReadyForPower = ({ site }: Work) =>
  (site.supply === 'off' || site.supply === 'unsure') && !isAnyOpen(site) && site.people === 'clear';

const live = { supply: 'live', pressure: 'up' } as const;

function step<const T extends Partial<SiteStep> & Pick<SiteStep, 'who' | 'lines' | 'may' | 'makes'>>(
  says: WorksiteEvent['type'],
  own: T,
): SiteStep {
  return { hold: false, says: () => says, ...own };
}

/** In the one safe order. */
export const SITE_STEPS = {
  'clear-people': step('clear-people', {
    who: 'trainee-accompanied',
    lines: ['clear-people'],
    may: ({ site }) => site.people === 'near',
    makes: () => ({ people: 'clear' }),
  }),
  'switch-off': step('switch-off', {
    who: 'caller',
    lines: ['switch-off'],
    may: ({ site }) => site.supply === 'live' || site.supply === 'unsure',
    makes: () => ({ supply: 'off', deadHeadKit: 'not-shown' }),
  }),
  'lock-and-tag': step('lock-and-tag', {
    who: 'qualified',
    hold: true,
    lines: ['lock-and-tag', 'try-to-start'],
    may: ({ site }) => site.supply === 'off' && site.people === 'clear',
    makes: () => ({ supply: 'locked' }),
  }),
  'open-cover': step('open-cover', {
    who: 'qualified',
    lines: ['open-cover'],
    may: (work, place) => place !== 'well' && mayOpen(work, place),
    makes: (site, place) => cover(site, place, 'open'),
  }),
  'prove-dead': step('prove-dead', {
    who: 'qualified',
    hold: true,
    lines: ['prove-tester', 'prove-dead', 'prove-tester-again'],
    may: ({ site }, place) => site.supply === 'locked' && site.places[place] === 'open',
    makes: (site, place) => cover(site, place, 'proved'),
  }),
  'bleed-capacitors': step('bleed-capacitors', {
    who: 'qualified',
    hold: true,
    lines: ['bleed-capacitors'],
    may: ({ site }) => site.places.box === 'proved' && site.charge === 'possible',
    makes: () => ({ charge: 'bled' }),
  }),
  'disconnect-electronics': step('disconnect-electronics', {
    who: 'trainee-accompanied',
    lines: ['disconnect-electronics'],
    may: (work) => work.site.electronics === 'in-circuit' && isDeadSomewhere(work),
    makes: () => ({ electronics: 'disconnected' }),
  }),
  'lift-leads': step('lift-leads', {
    who: 'trainee-accompanied',
    lines: ['lift-leads'],
    may: (work) => work.site.leads === 'connected' && isDeadAt(work, work.leadsAt),
    makes: () => ({ leads: 'lifted', people: 'near' }),
  }),
  'open-wellhead': step('open-cover', {
    who: 'qualified',
    lines: ['open-wellhead'],
    may: (work, place) => place === 'well' && mayOpen(work, place),
    makes: (site) => ({ ...cover(site, 'well', 'open'), disinfection: 'due' }),
  }),
  'split-at-wellhead': step('split-at-wellhead', {
    who: 'qualified',
    lines: ['split-at-wellhead'],
    may: (work) => work.site.leads === 'lifted' && isDeadAt(work, 'well'),
    makes: () => ({ leads: 'split', people: 'near' }),
  }),
  'relieve-pressure': step('relieve-pressure', {
    who: 'trainee-accompanied',
    lines: ['relieve-pressure'],
    may: ({ site }) => site.supply === 'locked' && site.pressure === 'up',
    makes: () => ({ pressure: 'relieved' }),
  }),
  'fit-substitute': step('substitute-fitted', {
    who: 'qualified',
    lines: ['fit-substitute'],
    may: (work) => work.site.substitute === 'none' && isDeadAt(work, 'box'),
    makes: () => ({ substitute: 'fitted' }),
  }),
  'join-at-wellhead': step('join-at-wellhead', {
    who: 'qualified',
    lines: ['join-at-wellhead'],
    may: (work) => work.site.leads === 'split' && isDeadAt(work, 'well'),
    makes: () => ({ leads: 'lifted', people: 'near' }),
  }),
  'land-leads': step('land-leads', {
    who: 'trainee-accompanied',
    lines: ['land-leads'],
    may: (work) => work.site.leads === 'lifted' && isDeadAt(work, work.leadsAt),
    makes: () => ({ leads: 'connected', people: 'near' }),
  }),
  'reconnect-electronics': step('reconnect-electronics', {
    who: 'trainee-accompanied',
    lines: ['reconnect-electronics'],
    may: (work) => work.site.electronics === 'disconnected' && isDeadSomewhere(work),
    makes: () => ({ electronics: 'in-circuit' }),
  }),
  'close-cover': step('close-cover', {
    who: 'trainee-accompanied',
    whoUnlocked: 'qualified',
    lines: ['close-cover'],
    may: ({ site }, place) => site.places[place] !== 'closed' && (place !== 'well' || site.leads !== 'split'),
    makes: (site, place) => ({
      ...cover(site, place, 'closed'),
      ...(site.supply === 'locked' ? { people: 'near' } : {}),
      ...(place === 'box' ? { charge: 'possible' } : {}),
    }),
  }),
  unlock: step('unlock', {
    who: 'qualified',
    lines: ['unlock'],
    may: ({ site }) => site.supply === 'locked' && !isAnyOpen(site) && site.people === 'clear',
    makes: () => ({ supply: 'off', pressure: 'up' }),
  }),
  energise: step('energise', {
    who: 'qualified',
    hold: true,
    lines: ['energise'],
    may: (work) =>
      isReadyForPower(work) && work.site.leads === 'connected' && work.site.electronics === 'in-circuit',
    makes: () => live,
  }),
  /** The one reset of a breaker found tripped: its insulation and its windings have been read. */
  'reset-breaker': step('reset-breaker', {
    who: 'technician',
    hold: true,
    lines: ['reset-breaker'],
    may: (work) =>
      isReadyForPower(work) &&
      work.site.supply === 'off' &&
      work.site.leads !== 'split' &&
      work.site.reset === 'unused' &&
      work.site.insulation === 'good' &&
      work.windingOhmsRead === true,
    makes: () => ({ ...live, reset: 'used' }),
  }),
  /** Once, covers shut, after it has been read as found. */
  'press-overload-button': step('overload-button-used', {
    who: 'technician',
    hold: true,
    lines: ['press-overload-button'],
    may: ({ site, overloadRead }) => !isAnyOpen(site) && site.overload === 'unused' && overloadRead === true,
    makes: () => ({ overload: 'used' }),
  }),
  'show-dead-head-kit': step('kit-shown', {
    who: 'qualified',
    lines: ['show-dead-head-kit'],
    may: ({ site, deadHead }) =>
      site.supply === 'live' && site.deadHeadKit === 'not-shown' && deadHead === 'below-ratings',
    makes: () => ({ deadHeadKit: 'shown' }),
  }),
  disinfect: step('disinfected', {
    who: 'qualified',
    lines: ['disinfect'],
    may: ({ site }) => site.disinfection === 'due' && site.places.well === 'closed',
    makes: () => ({ disinfection: 'done' }),
  }),
} as const satisfies Readonly<Record<string, SiteStep>>;

export type SiteStepId = keyof typeof SITE_STEPS;

export const stepIds = Object.keys(SITE_STEPS) as SiteStepId[];

/** Who must do the step with the site as it is. */
export function whoFor({ who, whoUnlocked }: SiteStep, site: SiteFacts): Person {
  return site.supply === 'locked' ? who : (whoUnlocked ?? who);
}

/**
 * May this step be asked for now? The same question as for a check, for a step; `place` matters only
 * to covers and proofs.
 */
export function permitsStep(id: SiteStepId, place: Place, work: Work): boolean {
  return mayDo(SITE_STEPS[id], place, work);
}

export function mayDo(step: SiteStep, place: Place, work: Work): boolean {
  return !work.site.stopped && somebodyMay(work, whoFor(step, work.site)) && step.may(work, place);
}
