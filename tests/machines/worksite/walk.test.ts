import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { CHANGE_INVARIANTS, STATE_INVARIANTS } from '../../../machines/worksite/invariants-of-the-machine.ts';
import { safeState } from '../../../machines/worksite/safe-state.ts';
import { type SiteFacts, siteView } from '../../../machines/worksite/site.ts';
import { mayDo, SITE_STEPS, type SiteStep } from '../../../machines/worksite/step-table.ts';
import type { Work } from '../../../machines/worksite/work.ts';
import { worksiteMachine } from '../../../machines/worksite/worksite.machine.ts';
import { regionsAskedBy } from './support/asks.ts';
import { withAnswer, withGuard } from './support/broken.ts';
import { INSTALLATIONS, PERSONS } from './support/checks.ts';
import {
  type Change,
  everyChange,
  firstSite,
  isAny,
  MEMORY,
  MEMORY_REGIONS,
  walkCore,
} from './support/walk.ts';

const HAS_READ = { windingOhmsRead: true, overloadRead: true } as const;

/** Everything that the tests below ask of the walk, gathered in one pass. */
const states = new Set<SiteFacts>();
const counterexamples = new Map<string, Change>();
const unlike = new Set<string>();
for (const change of everyChange()) {
  states.add(change.before);
  for (const step of stepsUnlike(change)) unlike.add(step);
  for (const { name, holds } of CHANGE_INVARIANTS) {
    if (!holds(change.before, change.event, change.after)) counterexamples.set(name, change);
  }
}
/** The regions of memory take their values in step, and only in the first of them is the reset unknown. */
const core = [...states].filter(({ reset }) => reset === 'unknown');
const memoryValues = Object.values(MEMORY).reduce((product, values) => product * values.length, 1);

describe('the complete walk of the work site', () => {
  test('its size', () => {
    console.log(
      `work site: ${core.length} core states × ${memoryValues} of memory = ${core.length * memoryValues} states`,
    );
    expect(core.length).toBeGreaterThan(1000);
    expect(core.length).toBeLessThan(10_000);
  });

  test('no region asks a region of memory, so that core and memory may be walked apart', () => {
    for (const region of Object.keys(worksiteMachine.states)) {
      expect(
        regionsAskedBy(worksiteMachine, region).filter((one) => one in MEMORY),
        region,
      ).toEqual([]);
    }
  });

  test('a region that did ask memory would be seen', () => {
    expect(regionsAskedBy(worksiteMachine, 'supply')).toContain('people');
    expect(regionsAskedBy(withGuard('peopleClear', true), 'supply')).not.toContain('people');
    expect(regionsAskedBy(worksiteMachine, 'pressure')).toEqual(['supply', 'work']);
  });

  test('every value of every region of memory is among those walked, and no other', () => {
    for (const region of MEMORY_REGIONS) {
      expect(Object.keys(worksiteMachine.states[region]?.states ?? {}).sort()).toEqual(
        [...MEMORY[region]].sort(),
      );
    }
  });

  test('it begins with everything dangerous', () => {
    expect(firstSite()).toEqual({
      supply: 'live',
      places: { panel: 'closed', switch: 'closed', box: 'closed', well: 'closed' },
      leads: 'connected',
      charge: 'possible',
      electronics: 'in-circuit',
      people: 'near',
      disinfection: 'none',
      stopped: false,
      pressure: 'up',
      deadHeadKit: 'not-shown',
      substitute: 'none',
      secondSource: 'possible',
      reset: 'unknown',
      overload: 'unknown',
      insulation: 'untested',
    });
  });
});

describe('in every state', () => {
  test.each(STATE_INVARIANTS)('$name: $sentence', ({ holds }) => {
    expect(core.filter((site) => !holds(site))).toEqual([]);
  });
});

describe('at every change', () => {
  test.each(CHANGE_INVARIANTS)('$name: $sentence', ({ name }) => {
    expect(counterexamples.get(name)).toBeUndefined();
  });

  test('what a step is said to make true is what the machine makes of it', () => {
    expect([...unlike]).toEqual([]);
  });
});

type Table = Readonly<Record<string, SiteStep>>;

/** Steps that may be done here with this event, and whose effect is not what the machine does. */
function stepsUnlike({ before, event, after }: Change, table: Table = SITE_STEPS): string[] {
  return INSTALLATIONS.flatMap((installation) => {
    const work: Work = { ...installation, ...HAS_READ, interlocks: {}, site: before, who: 'qualified' };
    const place = 'place' in event ? event.place : work.leadsAt;
    const isElsewhere =
      (event.type === 'lift-leads' || event.type === 'land-leads') && place !== work.leadsAt;
    if (isElsewhere) return [];
    const said = Object.entries(table).filter(
      ([, step]) => step.says(place) === event.type && mayDo(step, place, work),
    );
    return said
      .filter(([, step]) => !isDeepStrictEqual({ ...before, ...step.makes(before, place) }, { ...after }))
      .map(([id]) => id);
  });
}

test('a step that promised less than it does would be seen', () => {
  const careless: Table = {
    ...SITE_STEPS,
    'lift-leads': { ...SITE_STEPS['lift-leads'], makes: () => ({ leads: 'lifted' }) },
  };
  expect(isAny(everyChange(), (change) => stepsUnlike(change, careless).includes('lift-leads'))).toBe(true);
});

/** For each invariant a machine with one mistake that breaks it. */
const BROKEN_STATES = {
  'proof-only-under-lock': withGuard('locked', true),
  'bled-only-in-a-proved-box': withGuard('boxProved', true),
  'one-live-place': withGuard('allClosed', true),
  'no-power-into-a-split': withGuard('split', false),
  'no-lid-on-a-split': withGuard('split', false),
  'open-well-owes-disinfection': withAnswer('disinfection.none', { 'open-cover': undefined }),
  'stopped-claims-nothing': withAnswer('people.clear', { 'stop-unsafe': undefined }),
};

const BROKEN_CHANGES = {
  'power-returns-only-when-clear': withGuard('allClosed', true),
  'locked-only-from-off': withGuard('peopleClear', true),
  'unlocked-only-when-clear': withGuard('peopleClear', true),
  'proved-only-by-proof': withGuard('locked', true),
  'bled-only-by-bleeding': withGuard('boxProved', true),
  'closing-drops-the-proof': withAnswer('panel.proved', { 'close-cover': undefined }),
  'leads-move-only-where-dead': withGuard('wellProved', true),
  'hands-near-after-work-on-leads': withAnswer('people.clear', { 'lift-leads': undefined }),
  'a-lapse-takes-back-every-claim': withAnswer('supply.locked', { lapsed: undefined }),
  'stop-from-everywhere': withAnswer('work.working', { 'stop-unsafe': undefined }),
  'stopped-until-resumed': withGuard('working', true),
  'disinfection-is-not-forgotten': withGuard('wellClosed', true),
  'used-stays-used': withAnswer('reset.used', { 'no-reset-made': 'unused' }),
  'a-part-is-exchanged-dead': withGuard('boxProved', true),
};

describe('a broken machine is caught', () => {
  test.each(STATE_INVARIANTS)('$name', ({ name, holds }) => {
    expect(Object.keys(BROKEN_STATES)).toContain(name);
    const machine = Object.entries(BROKEN_STATES).find(([key]) => key === name)?.[1];
    expect(isAny(walkCore(machine), (site) => !holds(site))).toBe(true);
  });

  test.each(CHANGE_INVARIANTS)('$name', ({ name, holds }) => {
    expect(Object.keys(BROKEN_CHANGES)).toContain(name);
    const machine = Object.entries(BROKEN_CHANGES).find(([key]) => key === name)?.[1];
    expect(isAny(everyChange(machine), ({ before, event, after }) => !holds(before, event, after))).toBe(
      true,
    );
  });

  /** A lapse has many regions to take back: forgetting any one of them is caught. */
  test.each([
    'supply.off',
    'supply.locked',
    'panel.proved',
    'switch.proved',
    'box.proved',
    'well.proved',
    'charge.bled',
    'people.clear',
    'pressure.relieved',
    'deadHeadKit.shown',
    'secondSource.none-seen',
  ])('a lapse that forgets %s', (at) => {
    const lapse = CHANGE_INVARIANTS.find(({ name }) => name === 'a-lapse-takes-back-every-claim');
    for (const type of ['lapsed', 'supply-restored', 'stop-unsafe']) {
      const forgetful = everyChange(withAnswer(at, { [type]: undefined }));
      const isCaught = isAny(
        forgetful,
        ({ before, event, after }) => lapse?.holds(before, event, after) === false,
      );
      expect(isCaught, type).toBe(true);
    }
  });
});

describe('the strip, in every state', () => {
  test('never says dead of a site that is not locked, whatever the state', () => {
    for (const site of core) {
      for (const place of ['panel', 'switch', 'box', 'well'] as const) {
        const { word } = siteView(site, place);
        if (site.supply !== 'locked' && word !== 'live') expect(word).toBe('live');
        if (word === 'proved' && site.places[place] !== 'proved') expect(site.places[place]).toBe('proved');
      }
    }
  });
});

describe('stop, unsafe, in every state', () => {
  test('has an instruction for every state and every person, hands off first', () => {
    for (const site of core) {
      for (const who of PERSONS) {
        const lines = safeState(site, who);
        if (lines[0] !== 'stop-hands-off' || lines.length < 3)
          expect(lines).toEqual('hands off first, and then what');
      }
    }
  });

  test('asks nobody to switch off but at a dry labelled place with power on, and a caller never', () => {
    for (const site of core) {
      const says = (who: (typeof PERSONS)[number]) =>
        safeState(site, who).includes('switch-off-at-a-dry-labelled-place');
      if (says('qualified') !== (site.supply === 'live') || says('caller') || says('trainee-alone')) {
        expect(site).toEqual('a state in which nobody is sent to a switch');
      }
    }
  });
});
