import { describe, expect, test } from 'vitest';
import { permits } from '../../../machines/worksite/permits.ts';
import { SAFE_STATE, safeState } from '../../../machines/worksite/safe-state.ts';
import { foldSite, siteView } from '../../../machines/worksite/site.ts';
import { missingSteps, owedBeforeClosing } from '../../../machines/worksite/steps.ts';
import type { Work } from '../../../machines/worksite/work.ts';
import type { SiteEvent } from '../../../src/schema/case.ts';
import { DRAWN_CHECKS, INSTALLATIONS, INTERLOCKS } from './support/checks.ts';

const [INSTALLATION] = INSTALLATIONS;

const DEAD_AT_THE_BOX: readonly SiteEvent[] = [
  { type: 'clear-people' },
  { type: 'switch-off' },
  { type: 'lock-and-tag' },
  { type: 'open-cover', place: 'box' },
  { type: 'prove-dead', place: 'box' },
  { type: 'bleed-capacitors' },
  { type: 'lift-leads', place: 'box' },
];

const ohms = DRAWN_CHECKS.filter(({ id }) => id === 'ohms-box');
const work = (said: readonly SiteEvent[]): Work => ({
  ...INSTALLATION,
  interlocks: INTERLOCKS,
  site: foldSite(said),
  who: 'qualified',
});
const isPermitted = (said: readonly SiteEvent[]) =>
  ohms.every((check) => permits(check, work(said)).permitted);
const stepsFrom = (said: readonly SiteEvent[]) =>
  ohms.flatMap((check) => {
    const way = missingSteps(check, work(said), () => 1);
    return way.possible ? way.steps.map(({ step }) => step) : ['no way'];
  });

describe('a claim about the site is a claim about now', () => {
  test('said in order, the ohms may be read', () => {
    expect(isPermitted(DEAD_AT_THE_BOX)).toBe(true);
    expect(siteView(foldSite(DEAD_AT_THE_BOX), 'box')).toMatchObject({
      word: 'proved',
      supply: 'locked',
      lapsed: false,
    });
  });

  /** A reload after five minutes, a hand-over, an import and a change of person are all one fact: lapsed. */
  test.each(['lapsed', 'supply-restored', 'stop-unsafe'])('%s takes it back', (type) => {
    const after = [...DEAD_AT_THE_BOX, { type }];
    expect(isPermitted(after)).toBe(false);
    expect(foldSite(after)).toMatchObject({
      supply: 'unsure',
      places: { box: 'open' },
      leads: 'lifted',
      charge: 'possible',
      people: 'near',
    });
    expect(siteView(foldSite(after), 'box')).toMatchObject({ word: 'live', supply: 'live', lapsed: true });
  });

  test('the screen then asks again for what could have changed, and for nothing else', () => {
    expect(stepsFrom([...DEAD_AT_THE_BOX, { type: 'lapsed' }])).toEqual([
      'clear-people',
      'switch-off',
      'lock-and-tag',
      'prove-dead',
      'bleed-capacitors',
    ]);
  });

  test('said again, it counts again', () => {
    const again = DEAD_AT_THE_BOX.filter(({ type }) => type !== 'open-cover' && type !== 'lift-leads');
    expect(isPermitted([...DEAD_AT_THE_BOX, { type: 'lapsed' }, ...again])).toBe(true);
  });

  test('a lapse before anything was said changes nothing', () => {
    expect(foldSite([{ type: 'lapsed' }])).toEqual(foldSite([]));
    expect(siteView(foldSite([{ type: 'lapsed' }]), undefined).lapsed).toBe(false);
  });

  test.each(DEAD_AT_THE_BOX.map((withdrawn, index) => ({ step: withdrawn.type, index })))(
    'the step $step withdrawn: the rest does not carry the check',
    ({ index }) => {
      expect(isPermitted(DEAD_AT_THE_BOX.filter((_, each) => each !== index))).toBe(false);
    },
  );

  test('after a lapse no reading that needs power is asked for until power is said to be on', () => {
    const live = DRAWN_CHECKS.filter(({ id }) => id === 'listen-while-on');
    const closed: readonly SiteEvent[] = [
      { type: 'clear-people' },
      { type: 'switch-off' },
      { type: 'lapsed' },
    ];
    expect(live.every((check) => permits(check, work(closed)).permitted)).toBe(false);
    const on = [...closed, { type: 'clear-people' }, { type: 'energise' }];
    expect(live.every((check) => permits(check, work(on)).permitted)).toBe(true);
  });

  test('words that the machine does not know, and steps out of order, change nothing', () => {
    const nonsense: readonly SiteEvent[] = [
      { type: 'abracadabra' },
      { type: 'prove-dead', place: 'box' },
      { type: 'unlock' },
      { type: 'lock-and-tag' },
      { type: 'open-cover', place: 'box' },
    ];
    expect(foldSite(nonsense)).toEqual(foldSite([]));
  });
});

describe('the strip', () => {
  const upTo = (count: number) => foldSite(DEAD_AT_THE_BOX.slice(0, count));
  test('reads live until locked, locked until proved, and not bled until the capacitors are metered', () => {
    const strip = DEAD_AT_THE_BOX.map((_, index) => siteView(upTo(index + 1), 'box').word);
    expect(strip).toEqual(['live', 'live', 'locked', 'locked', 'not-bled', 'proved', 'proved']);
  });

  test('speaks of the place at hand: dead in the box is not dead in the switch', () => {
    expect(siteView(foldSite(DEAD_AT_THE_BOX), 'switch').word).toBe('locked');
    expect(siteView(foldSite(DEAD_AT_THE_BOX), undefined).word).toBe('locked');
    expect(siteView(upTo(5), 'box', false).word).toBe('proved');
  });
});

describe('opening the well', () => {
  const opened: readonly SiteEvent[] = [
    { type: 'clear-people' },
    { type: 'switch-off' },
    { type: 'lock-and-tag' },
    { type: 'open-cover', place: 'well' },
  ];
  test('owes disinfection, which only a closed well can pay', () => {
    expect(owedBeforeClosing(foldSite([]))).toEqual([]);
    expect(owedBeforeClosing(foldSite(opened))).toEqual(['disinfect']);
    expect(owedBeforeClosing(foldSite([...opened, { type: 'disinfected' }]))).toEqual(['disinfect']);
    const closed: readonly SiteEvent[] = [...opened, { type: 'close-cover', place: 'well' }];
    expect(owedBeforeClosing(foldSite([...closed, { type: 'lapsed' }]))).toEqual(['disinfect']);
    expect(owedBeforeClosing(foldSite([...closed, { type: 'disinfected' }]))).toEqual([]);
  });
});

describe('stop, unsafe', () => {
  test('fits: open live parts, a lock, an open well', () => {
    const live = foldSite([
      { type: 'clear-people' },
      { type: 'open-cover', place: 'panel' },
      { type: 'stop-unsafe' },
    ]);
    expect(safeState(live, 'qualified')).toEqual([
      'stop-hands-off',
      'step-back',
      'keep-others-away',
      'switch-off-at-a-dry-labelled-place',
      'call-the-fire-service-if-it-smells-or-buzzes',
    ]);
    const locked = safeState(foldSite([...DEAD_AT_THE_BOX, { type: 'stop-unsafe' }]), 'technician');
    expect(locked).toContain('leave-the-lock-on');
    expect(locked).toContain('treat-capacitors-as-charged');
    expect(locked).not.toContain('switch-off-at-a-dry-labelled-place');
  });

  test('every line of it has words', () => {
    const files = import.meta.glob<{ texts: Record<string, string> }>(
      '../../../content/words/*/names/safe-state.json',
      {
        eager: true,
        import: 'default',
      },
    );
    expect(Object.values(files).length).toBeGreaterThan(0);
    for (const { texts } of Object.values(files))
      expect(Object.keys(texts).sort()).toEqual([...SAFE_STATE].sort());
  });

  test('nothing is asked for until work goes on, and then everything again', () => {
    const stopped = [...DEAD_AT_THE_BOX, { type: 'stop-unsafe' }];
    expect(stepsFrom(stopped)).toEqual(['no way']);
    expect(isPermitted([...stopped, ...DEAD_AT_THE_BOX])).toBe(false);
    expect(stepsFrom([...stopped, { type: 'resume' }])).toContain('prove-dead');
  });
});
