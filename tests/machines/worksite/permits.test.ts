import { describe, expect, test } from 'vitest';
import { CHECK_INVARIANTS } from '../../../machines/worksite/invariants.ts';
import { touchedPlaces } from '../../../machines/worksite/needs.ts';
import { permits, RULES, type RuleName } from '../../../machines/worksite/permits.ts';
import { missingSteps } from '../../../machines/worksite/steps.ts';
import type { Interlock, Work } from '../../../machines/worksite/work.ts';
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
import { isAny, walkCore, withMemory } from './support/walk.ts';
import { withoutFacts } from './support/without-facts.ts';

/**
 * Every check × every person × every state of the work site. States that agree in all that a
 * permission reads are one state here: a fact that it does not read throws when it is read.
 */
const NEVER_READ = ['disinfection', 'secondSource', 'reset', 'overload', 'insulation'] as const;
const READ_BY_SOME = ['pressure', 'deadHeadKit', 'substitute'] as const;

const core = [...walkCore()];
const plain = withoutFacts(core, [...NEVER_READ, ...READ_BY_SOME]);
const whole = withoutFacts(
  core.flatMap((site) => withMemory(site, READ_BY_SOME)),
  NEVER_READ,
);

interface Suite {
  readonly checks: readonly Check[];
  readonly interlocks: Readonly<Record<string, Interlock>>;
}
const DRAWN: Suite = { checks: DRAWN_CHECKS, interlocks: INTERLOCKS };
const REAL: Suite = { checks: REAL_CHECKS, interlocks: REAL_INTERLOCKS };

interface Asked {
  readonly check: Check;
  readonly work: Work;
}

/** The checks of a suite with the work of every person in every state on every kind of installation. */
function* everyWork({ checks, interlocks }: Suite): Generator<Asked> {
  for (const check of oneOfEachShape(checks)) {
    const has = (interlock: Interlock) => check.hazards.some((one) => interlocks[one] === interlock);
    const readsMemory = has('pressure') || (has('bleed') && check.site.supply === 'live');
    for (const place of INSTALLATIONS) {
      for (const site of readsMemory ? whole : plain) {
        for (const who of PERSONS) yield { check, work: { ...place, interlocks, site, who } };
      }
    }
  }
}

/** Permitted checks that break an invariant, by its name; the first of each. */
function violations(suite: Suite): Map<string, { check: string; work: Work }> {
  const found = new Map<string, { check: string; work: Work }>();
  for (const { check, work } of everyWork(suite)) {
    if (!permits(check, work).permitted) continue;
    for (const { name, holds } of CHECK_INVARIANTS) {
      if (!found.has(name) && !holds(check, work)) found.set(name, { check: check.id, work });
    }
  }
  return found;
}

test('a permission that did read another fact would be seen', () => {
  for (const fact of [...NEVER_READ, ...READ_BY_SOME]) expect(() => plain[0]?.[fact], fact).toThrow(fact);
  for (const fact of NEVER_READ) expect(() => whole[0]?.[fact], fact).toThrow(fact);
});

describe.each([
  { name: 'a check of every kind, in every state, for every person', suite: DRAWN },
  { name: 'every check of the catalog, in every state, for every person', suite: REAL },
])('$name', ({ suite }) => {
  const found = violations(suite);
  test('there are checks to ask for', () => {
    expect(suite.checks.length).toBeGreaterThan(20);
  });
  test.each(CHECK_INVARIANTS)('$name: $sentence', ({ name }) => {
    expect(found.get(name)).toBeUndefined();
  });
});

/** For each invariant the rules that carry it, and a check for which it is then broken. */
const CARRIED_BY: Readonly<Record<string, { readonly rules: readonly RuleName[]; readonly check: string }>> =
  {
    'no-ohms-unless-proved-dead': { rules: ['proved-dead'], check: 'ohms-part' },
    'no-hand-inside-unless-proved-dead': { rules: ['locked-out', 'proved-dead'], check: 'look-inside-dead' },
    'no-hand-in-a-charged-box': { rules: ['capacitors-bled'], check: 'ohms-part' },
    'no-insulation-test-in-circuit': { rules: ['insulation-isolated'], check: 'insulation' },
    'energised-only-for-the-qualified': {
      rules: ['energised-qualified', 'open-live-qualified'],
      check: 'volts-for-a-technician',
    },
    'people-clear-of-open-live-parts': { rules: ['people-clear'], check: 'volts-panel' },
    'no-other-cover-off-while-live': { rules: ['covers-on'], check: 'look-at-the-gauge' },
    'only-the-qualified-beside-open-parts': { rules: ['open-live-qualified'], check: 'look-at-the-gauge' },
    'caller-and-trainee-alone-hands-off': { rules: ['hands-off'], check: 'look-with-a-hazard' },
    'caller-does-only-a-callers-checks': { rules: ['person', 'hands-off'], check: 'ohms-part' },
    'no-qualified-check-for-others': { rules: ['person', 'energised-qualified'], check: 'amps-outside' },
    'no-dead-head-above-a-rating': { rules: ['dead-head'], check: 'dead-head' },
    'no-opening-under-pressure': { rules: ['pressure-relieved'], check: 'tube' },
    'open-well-only-for-the-qualified': {
      rules: ['well-qualified'],
      check: 'ohms-at-the-well-for-a-technician',
    },
    'confined-space-only-for-the-qualified': { rules: ['confined-qualified'], check: 'pit' },
    'nothing-while-stopped': { rules: ['working'], check: 'look-at-the-gauge' },
    'readings-only-in-the-state-they-mean': { rules: ['leads'], check: 'ohms-connected' },
    'parts-are-exchanged-dead': { rules: ['work-before-power'], check: 'lid-swap' },
  };

test('a wire between two places is read only with both of them dead', () => {
  const [check] = only('ohms-of-a-wire').checks;
  const [installation] = INSTALLATIONS;
  if (check === undefined) throw new Error('tests: no wire');
  expect(touchedPlaces(check, { ...installation, interlocks: INTERLOCKS })).toEqual([
    'panel',
    'switch',
    'box',
  ]);
  expect(touchedPlaces(check, { ...installation, interlocks: INTERLOCKS, partEnds: {} })).toEqual(['switch']);
});

describe('with a rule left out it is caught', () => {
  test.each(CHECK_INVARIANTS)('$name', ({ name, holds }) => {
    const { rules: left, check: id } = CARRIED_BY[name] ?? { rules: [], check: '' };
    const rules = RULES.filter((rule) => !left.includes(rule.name));
    const isBroken = ({ check, work }: Asked) => permits(check, work, rules).permitted && !holds(check, work);
    expect(isAny(everyWork(only(id)), isBroken)).toBe(true);
  });
});

/** For each rule a check that it alone refuses, somewhere. */
const REFUSED_ALONE: Readonly<Record<Exclude<RuleName, 'locked-out' | 'tripped-stays-off'>, string>> = {
  working: 'look-at-the-gauge',
  'hazards-known': 'unknown-hazard',
  person: 'dead-head',
  'hands-off': 'look-with-a-hazard',
  'no-apart-lid': 'not-with-a-lid',
  'energised-qualified': 'look-outside-live-parts',
  'open-live-qualified': 'look-at-the-gauge',
  'supply-on': 'listen-while-on',
  'proved-dead': 'ohms-part',
  'capacitors-bled': 'ohms-part',
  'work-before-power': 'lid-swap',
  'cover-off': 'volts-panel',
  'covers-on': 'look-at-the-gauge',
  leads: 'ohms-connected',
  'insulation-isolated': 'insulation',
  'people-clear': 'insulation',
  'pressure-relieved': 'tube',
  'dead-head': 'dead-head',
  'well-qualified': 'ohms-at-the-well-for-a-technician',
  'confined-qualified': 'pit',
};

describe('a breaker found tripped', () => {
  const check = REAL_CHECKS.find(({ id }) => id === 'volts-switch-load-pair');
  const installation = INSTALLATIONS[0];
  if (check === undefined || installation === undefined) throw new Error('tests: no live reading');
  const live = core.find(
    (site) =>
      permits(check, { ...installation, interlocks: REAL_INTERLOCKS, site, who: 'qualified' }).permitted,
  );
  if (live === undefined) throw new Error('tests: no state permits a live reading');
  const work: Work = { ...installation, interlocks: REAL_INTERLOCKS, site: live, who: 'qualified' };

  test('keeps the pump circuit off, where the same reading is permitted with a breaker found on', () => {
    const tripped = { ...work, breakerTripped: true, site: { ...live, reset: 'unknown' as const } };
    expect(permits(check, tripped)).toEqual({ permitted: false, rule: 'tripped-stays-off' });
    expect(permits(check, { ...tripped, breakerTripped: false }).permitted).toBe(true);
  });

  test('comes back by its one reset, and only after good insulation and read windings', () => {
    const site = { ...live, supply: 'off' as const, reset: 'unused' as const, insulation: 'good' as const };
    const way = missingSteps(check, { ...work, site, breakerTripped: true, windingOhmsRead: true }, () => 1);
    expect(way.possible && way.steps.map(({ step }) => step)).toContain('reset-breaker');
    for (const bad of [
      { insulation: 'untested' },
      { insulation: 'bad' },
      { reset: 'used', supply: 'off' },
    ] as const) {
      const tripped = { ...work, site: { ...site, ...bad }, breakerTripped: true, windingOhmsRead: true };
      const other = missingSteps(check, tripped, () => 1);
      expect(other.possible && other.steps.map(({ step }) => step)).toBe(false);
    }
    const unread = missingSteps(check, { ...work, site, breakerTripped: true }, () => 1);
    expect(unread.possible).toBe(false);
  });
});

describe('each rule refuses something that no other refuses', () => {
  test.each(Object.entries(REFUSED_ALONE))('%s', (name, id) => {
    const refuses = ({ check, work }: Asked) =>
      RULES.filter((rule) => !rule.holds(check, work)).map((rule) => rule.name);
    expect(isAny(everyWork(only(id)), (asked) => refuses(asked).join() === name)).toBe(true);
  });

  /** Proof of dead stands only under a lock: the rule of the lock is said for the reader. */
  test('but for locked-out, which proof of dead implies', () => {
    expect(
      RULES.map(({ name }) => name).filter(
        (name) => name !== 'tripped-stays-off' && !(name in REFUSED_ALONE),
      ),
    ).toEqual(['locked-out']);
  });
});

function only(id: string): Suite {
  const checks = DRAWN_CHECKS.filter((check) => check.id === id);
  expect(checks.length, id).toBe(1);
  return { ...DRAWN, checks };
}
