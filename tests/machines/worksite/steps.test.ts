import { describe, expect, test } from 'vitest';
import { PLACES } from '../../../machines/worksite/events.ts';
import { STEP_INVARIANTS } from '../../../machines/worksite/invariants.ts';
import { permits } from '../../../machines/worksite/permits.ts';
import type { SiteFacts } from '../../../machines/worksite/site.ts';
import {
  mayDo,
  SITE_STEPS,
  type SiteStep,
  type SiteStepId,
  stepIds,
} from '../../../machines/worksite/step-table.ts';
import { missingSteps, stepsToService, type Way } from '../../../machines/worksite/steps.ts';
import type { Work } from '../../../machines/worksite/work.ts';
import type { Person } from '../../../src/schema/basics.ts';
import type { Check } from '../../../src/schema/check.ts';
import {
  DRAWN_CHECKS,
  INSTALLATIONS,
  INTERLOCKS,
  oneOfEachShape,
  PERSONS,
  REAL_CHECKS,
  REAL_INTERLOCKS,
} from './support/checks.ts';
import { firstSite, isAny, type MemoryRegion, walkCore, withMemory } from './support/walk.ts';
import { withoutFacts } from './support/without-facts.ts';

const core = [...walkCore()];
/** What disinfection is owed changes no way. */
const sites = withoutFacts(core, ['disinfection']);
const everySite = sites.flatMap((site) => withMemory(site, ['pressure', 'deadHeadKit', 'substitute']));
const [INSTALLATION] = INSTALLATIONS;
const ALL_MEMORY: readonly MemoryRegion[] = [
  'pressure',
  'deadHeadKit',
  'substitute',
  'secondSource',
  'reset',
  'overload',
  'insulation',
];

/** What a step remembers; any other region of memory throws when it is read. */
const REMEMBERED: Readonly<Partial<Record<SiteStepId, readonly MemoryRegion[]>>> = {
  'relieve-pressure': ['pressure'],
  'fit-substitute': ['substitute'],
  'show-dead-head-kit': ['deadHeadKit'],
  'reset-breaker': ['reset', 'insulation'],
  'press-overload-button': ['overload'],
};

interface Doing {
  readonly id: SiteStepId;
  readonly place: (typeof PLACES)[number];
  readonly work: Work;
}

/** A step in every state, at every place that it can be said of, for every person, with and without the readings. */
function* everyDoing(id: SiteStepId): Generator<Doing> {
  const read = REMEMBERED[id] ?? [];
  const sites = withoutFacts(
    core.flatMap((site) => withMemory(site, read)),
    ALL_MEMORY.filter((region) => !read.includes(region)),
  );
  for (const work of everyWork(sites, read.length > 0 ? [true, false] : [true])) {
    for (const place of OF_A_PLACE.includes(id) ? PLACES : [work.leadsAt]) yield { id, place, work };
  }
}

const OF_A_PLACE: readonly SiteStepId[] = ['open-cover', 'open-wellhead', 'prove-dead', 'close-cover'];

function* everyWork(sites: readonly SiteFacts[], readings: readonly boolean[]): Generator<Work> {
  for (const installation of INSTALLATIONS) {
    for (const read of readings) {
      const base = { ...installation, interlocks: INTERLOCKS, windingOhmsRead: read, overloadRead: read };
      for (const site of sites) for (const who of PERSONS) yield { ...base, site, who };
    }
  }
}

describe('every step, in every state, for every person', () => {
  const found = new Map<string, Doing>();
  const done = new Set<string>();
  for (const id of stepIds) {
    for (const doing of everyDoing(id)) {
      if (!mayDo(SITE_STEPS[id], doing.place, doing.work)) continue;
      done.add(id);
      for (const { name, holds } of STEP_INVARIANTS) {
        if (!found.has(name) && !holds(id, doing.place, doing.work)) found.set(name, doing);
      }
    }
  }
  test.each(STEP_INVARIANTS)('$name: $sentence', ({ name }) => expect(found.get(name)).toBeUndefined());
  test('there is no step that nobody may ever do', () =>
    expect([...done].sort()).toEqual([...stepIds].sort()));
});

/** For each invariant a step with one mistake. */
const CARELESS: Readonly<Record<string, { readonly id: SiteStepId; readonly own: Partial<SiteStep> }>> = {
  'lock-and-proof-only-by-the-qualified': { id: 'prove-dead', own: { who: 'technician' } },
  'caller-only-switches-off': { id: 'close-cover', own: { who: 'caller' } },
  'power-only-when-all-is-clear': { id: 'unlock', own: { may: ({ site }) => site.supply === 'locked' } },
  'power-only-with-leads-landed': { id: 'energise', own: { may: ({ site }) => site.people === 'clear' } },
  'one-reset-after-insulation-and-ohms': {
    id: 'reset-breaker',
    own: { may: (work) => work.site.reset === 'unused' && work.site.insulation === 'good' },
  },
  'one-press-of-an-overload': {
    id: 'press-overload-button',
    own: { may: ({ overloadRead }) => overloadRead === true },
  },
  'hands-on-leads-only-when-dead': {
    id: 'lift-leads',
    own: { may: ({ site }) => site.places.box === 'proved' },
  },
  'live-covers-opened-only-by-the-qualified': { id: 'open-cover', own: { who: 'technician' } },
  'try-to-start-only-with-people-clear': {
    id: 'lock-and-tag',
    own: { may: ({ site }) => site.supply === 'off' },
  },
  'no-kit-above-a-rating': { id: 'show-dead-head-kit', own: { may: () => true } },
  'no-step-while-stopped': { id: 'switch-off', own: {} },
};

describe('a careless step is caught', () => {
  test.each(STEP_INVARIANTS)('$name', ({ name, holds }) => {
    const { id, own } = CARELESS[name] ?? { id: 'disinfect' as const, own: {} };
    const careless: SiteStep = { ...SITE_STEPS[id], ...own };
    const may = ({ place, work }: Doing) =>
      name === 'no-step-while-stopped' ? careless.may(work, place) : mayDo(careless, place, work);
    expect(isAny(everyDoing(id), (doing) => may(doing) && !holds(id, doing.place, doing.work))).toBe(true);
  });
});

test('proof of dead proves the tester before and after, and is held', () => {
  expect(SITE_STEPS['prove-dead']).toMatchObject({
    hold: true,
    lines: ['prove-tester', 'prove-dead', 'prove-tester-again'],
  });
  expect(SITE_STEPS['lock-and-tag']).toMatchObject({ hold: true, lines: ['lock-and-tag', 'try-to-start'] });
});

const one = () => 1;

/** Takes the steps one by one; each must be permitted where it stands. */
function taken(work: Work, way: Way): Work {
  if (!way.possible)
    throw new Error(`tests: no way: ${JSON.stringify(way)} from ${JSON.stringify(work.site)}`);
  let now = work;
  for (const { step, place } of way.steps) {
    const id = idOf(step);
    const where = place ?? now.leadsAt;
    const broken = STEP_INVARIANTS.filter(({ holds }) => !holds(id, where, now)).map(({ name }) => name);
    if (broken.length > 0 || !mayDo(SITE_STEPS[id], where, now)) {
      throw new Error(`tests: ${step} ${where} is not permitted (${broken}): ${JSON.stringify(now.site)}`);
    }
    now = { ...now, site: { ...now.site, ...SITE_STEPS[id].makes(now.site, where) } };
  }
  return now;
}

function idOf(step: string): SiteStepId {
  const id = stepIds.find((each) => each === step);
  if (id === undefined) throw new Error(`tests: ${step} is no step`);
  return id;
}

/** The one safe order, a letter a step. */
const LETTERS: Readonly<Record<SiteStepId, string>> = {
  'clear-people': 'c',
  'switch-off': 'o',
  'lock-and-tag': 'l',
  'open-cover': 'O',
  'prove-dead': 'p',
  'bleed-capacitors': 'b',
  'disconnect-electronics': 'd',
  'lift-leads': 'f',
  'open-wellhead': 'W',
  'split-at-wellhead': 's',
  'relieve-pressure': 'r',
  'fit-substitute': 'x',
  'join-at-wellhead': 'j',
  'land-leads': 'n',
  'reconnect-electronics': 'R',
  'close-cover': 'C',
  unlock: 'u',
  energise: 'e',
  'reset-breaker': '!',
  'press-overload-button': '!',
  'show-dead-head-kit': 'k',
  disinfect: '!',
};
const TO_DEAD = /^(c?o?l)?(O?p)*b?d?f?(W?p)?[sj]?n?r?c?$/;
const TO_LIVE = /^((c?o?l)?(O?p)*b?x?(W?p)?j?n?R?)C*c?u?e?(c?[OW])*c?k?$/;

const inLetters = (way: Way) =>
  way.possible ? way.steps.map(({ step }) => LETTERS[idOf(step)]).join('') : '?';

describe.each([
  { name: 'a check of every kind', checks: DRAWN_CHECKS, interlocks: INTERLOCKS },
  { name: 'the checks of the catalog', checks: REAL_CHECKS, interlocks: REAL_INTERLOCKS },
])('the missing steps of $name', ({ checks, interlocks }) => {
  const shapes = oneOfEachShape(checks);

  test('arrive from every state in the one safe order, no step unsafe on the way, or cannot be', () => {
    const wrong = new Set<string>();
    for (const check of shapes) {
      for (const place of INSTALLATIONS) {
        const can = isEverPermitted(check, { ...place, interlocks });
        for (const site of sites)
          wrong.add(faultOfTheWay(check, { ...place, interlocks, site, who: 'qualified' }, can));
      }
    }
    expect([...wrong]).toEqual(['']);
  });

  test.each(PERSONS)('ask of a %s only what he may do', (who) => {
    const wrong = new Set<string>();
    let possible = 0;
    for (const check of shapes) {
      for (const site of sites.filter((_, index) => index % 5 === 0)) {
        const work: Work = { ...INSTALLATION, interlocks, site, who };
        const way = missingSteps(check, work, one);
        if (!way.possible) continue;
        possible++;
        if (!permits(check, taken(work, way)).permitted) wrong.add(check.id);
      }
    }
    expect([...wrong]).toEqual([]);
    expect(possible).toBeGreaterThan(0);
  });
});

/** @returns what is wrong with the way to a check, in words; nothing when it is as it should be */
function faultOfTheWay(check: Check, work: Work, can: boolean): string {
  const way = missingSteps(check, work, one);
  if (!way.possible) return can && !work.site.stopped ? `${check.id}: no way, ${JSON.stringify(way)}` : '';
  const order = inLetters(way);
  if (permits(check, work).permitted && order !== '')
    return `${check.id}: ${order}, though nothing is missing`;
  if (!TO_DEAD.test(order) && !TO_LIVE.test(order)) return `${check.id}: ${order} is not the safe order`;
  return permits(check, taken(work, way)).permitted ? '' : `${check.id}: ${order} does not arrive`;
}

/** Whether any state of the site lets the qualified take this check. */
function isEverPermitted(check: Check, place: Omit<Work, 'site' | 'who'>): boolean {
  return everySite.some((site) => permits(check, { ...place, site, who: 'qualified' }).permitted);
}

describe('the way back to service', () => {
  test('arrives from every state at power on, covers on, leads landed, nothing unsafe on the way', () => {
    for (const site of sites.filter((each) => !each.stopped)) {
      for (const place of INSTALLATIONS) {
        const work: Work = { ...place, interlocks: INTERLOCKS, site, who: 'qualified' };
        const way = stepsToService(work, one);
        const { site: end } = taken(work, way);
        expect(inLetters(way)).toMatch(TO_LIVE);
        expect([end.supply, end.leads, end.electronics]).toEqual(['live', 'connected', 'in-circuit']);
        expect(Object.values(end.places)).toEqual(['closed', 'closed', 'closed', 'closed']);
      }
    }
  });
});

describe('as written out by hand', () => {
  const check = (id: string): Check => {
    const found = DRAWN_CHECKS.find((each) => each.id === id);
    if (found === undefined) throw new Error(`tests: no check ${id}`);
    return found;
  };
  const work = (who: Person, installation = INSTALLATION): Work => ({
    ...installation,
    interlocks: INTERLOCKS,
    site: firstSite(),
    who,
  });
  const said = (way: Way) =>
    way.possible ? way.steps.map(({ step, place }) => (place ? `${step} ${place}` : step)) : way;

  test('ohms in the box, from the first minute', () => {
    expect(said(missingSteps(check('ohms-box'), work('qualified'), one))).toEqual([
      'clear-people',
      'switch-off',
      'lock-and-tag',
      'open-cover box',
      'prove-dead box',
      'bleed-capacitors',
      'lift-leads box',
    ]);
  });

  test('insulation asks for isolation, and for people to stand clear once more', () => {
    const steps = said(missingSteps(check('insulation'), work('qualified'), one));
    expect(Array.isArray(steps) && steps.slice(-3)).toEqual([
      'disconnect-electronics',
      'lift-leads box',
      'clear-people',
    ]);
  });

  test('ohms at the well head', () => {
    const steps = said(missingSteps(check('ohms-at-the-well'), work('qualified'), one));
    expect(Array.isArray(steps) && steps.slice(-4)).toEqual([
      'lift-leads box',
      'open-wellhead well',
      'prove-dead well',
      'split-at-wellhead',
    ]);
  });

  test('volts in the panel while it is live', () => {
    expect(said(missingSteps(check('volts-panel'), work('qualified'), one))).toEqual([
      'clear-people',
      'open-cover panel',
    ]);
  });

  test('minutes are those of every line that a press confirms; a lid that pulls apart lifts the leads for nothing', () => {
    const minutes = (installation = INSTALLATION) => {
      const way = missingSteps(check('ohms-box'), work('qualified', installation), one);
      return way.possible ? way.steps.map((step) => step.minutes) : [];
    };
    expect(minutes()).toEqual([1, 1, 2, 1, 3, 1, 1]);
    expect(minutes(INSTALLATIONS[1])).toEqual([1, 1, 2, 1, 3, 1, 0]);
  });

  test('proof of dead minds a second source until none is seen', () => {
    const minded = (base: Work) => {
      const way = missingSteps(check('ohms-part'), base, one);
      return way.possible && way.steps.some(({ mindSecondSource }) => mindSecondSource === true);
    };
    expect(minded(work('qualified'))).toBe(true);
    expect(minded(work('qualified', INSTALLATIONS[1]))).toBe(false);
    expect(minded({ ...work('qualified'), site: { ...firstSite(), secondSource: 'none-seen' } })).toBe(false);
  });

  test('a technician alone is told who must lock it out; with a qualified person beside him there is a way', () => {
    expect(missingSteps(check('ohms-part'), work('technician'), one)).toEqual({
      possible: false,
      step: 'lock-and-tag',
      who: 'qualified',
    });
    const together = missingSteps(check('ohms-part'), { ...work('technician'), present: ['qualified'] }, one);
    expect(together.possible && together.steps.map(({ who }) => who)).toContain('qualified');
  });
});
