import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createActor, initialTransition } from 'xstate';
import { getShortestPaths } from 'xstate/graph';
import { VISIT_EVENTS, type VisitEvent, visitMachine } from '../../../machines/visit/visit.machine.ts';
import { foldVisit, mayClose, type OwedBySite, type VisitStage } from '../../../machines/visit/visit.ts';

const NOTHING_DUE: OwedBySite = { disinfection: 'none' };
const DUE: OwedBySite = { disinfection: 'due' };

const visit = (said: readonly string[], site = NOTHING_DUE) =>
  foldVisit(
    said.map((type) => ({ type })),
    site,
  );

/** A visit without a hitch, one fact a stage. */
const SMOOTH: readonly [VisitEvent, VisitStage][] = [
  ['hazards-scanned', 'story'],
  ['story-heard', 'identify'],
  ['installation-identified', 'diagnose'],
  ['verdict-reached', 'explain'],
  ['consent-given', 'repair'],
  ['repaired', 'prove'],
  ['proof-held', 'rootCause'],
  ['root-cause-noted', 'handBack'],
  ['closed', 'closed'],
];
const facts = SMOOTH.map(([fact]) => fact);
const until = (fact: VisitEvent): VisitEvent[] => facts.slice(0, facts.indexOf(fact) + 1);

/** Facts that bring a visit to each stage on site. */
const WAY_TO: Readonly<Record<string, readonly VisitEvent[]>> = {
  arrive: [],
  story: until('hazards-scanned'),
  identify: until('story-heard'),
  diagnose: until('installation-identified'),
  explain: until('verdict-reached'),
  repair: until('consent-given'),
  prove: until('repaired'),
  rootCause: until('proof-held'),
  handBack: until('root-cause-noted'),
};

describe('a visit', () => {
  test('goes from arriving to closed, one fact at a time', () => {
    expect(visit([]).stage).toBe('arrive');
    const stages = facts.map((_, index) => visit(facts.slice(0, index + 1)).stage);
    expect(stages).toEqual(SMOOTH.map(([, stage]) => stage));
    expect(visit(facts)).toMatchObject({ isClosed: true, isRepaired: true, failedRepairs: 0, ignored: [] });
  });

  test.each([
    ['a repair implies all that came before it', ['repaired'], 'prove'],
    ['so does a verdict', ['hazards-scanned', 'verdict-reached'], 'explain'],
    ['a system that is known needs no story', ['installation-identified'], 'diagnose'],
    ['a call may be closed on a finding alone', ['verdict-reached', 'closed'], 'closed'],
    ['nothing is repaired today', ['verdict-reached', 'no-repair-today'], 'handBack'],
    ['back from the verdict to the readings', ['verdict-reached', 'went-back'], 'diagnose'],
    ['back from the readings', ['installation-identified', 'went-back', 'went-back', 'went-back'], 'arrive'],
    ['back from the root cause', ['repaired', 'proof-held', 'went-back'], 'prove'],
  ])('%s', (_, said, stage) => {
    expect(visit(said).stage).toBe(stage);
  });

  test('goes back to the readings when the repair did not help, and counts it', () => {
    const again = visit(['repaired', 'repair-did-not-help']);
    expect(again).toMatchObject({ stage: 'diagnose', isRepaired: false, failedRepairs: 1 });
    expect(visit(['repaired', 'repair-did-not-help', 'repaired'])).toMatchObject({
      stage: 'prove',
      isRepaired: true,
      failedRepairs: 1,
    });
  });

  test('goes back to the readings when the verdict is withdrawn, from any stage after it', () => {
    for (const stage of ['explain', 'repair', 'prove', 'rootCause', 'handBack']) {
      const view = visit([...(WAY_TO[stage] ?? []), 'verdict-withdrawn']);
      expect(view).toMatchObject({ stage: 'diagnose', isRepaired: false });
    }
  });

  test('leaves alone what means nothing where it stands, and says so', () => {
    const view = visit(['proof-held', 'resumed', 'taken-over']);
    expect(view.stage).toBe('arrive');
    expect(view.ignored).toEqual(['proof-held', 'resumed', 'taken-over']);
  });

  test('passes over facts that are not its own', () => {
    expect(visit(['other-check', 'hazards-scanned'])).toMatchObject({ stage: 'story', ignored: [] });
  });

  test('remembers what was said to be unknown', () => {
    expect([...visit(['family-unknown', 'motor-unknown']).saidUnknown]).toEqual(['family', 'motor']);
  });

  test('offers only what would be taken', () => {
    expect(visit([]).choices).toEqual([
      'hazards-scanned',
      'story-heard',
      'installation-identified',
      'verdict-reached',
      'consent-given',
      'repaired',
      'closed',
      'interrupted',
      'handed-over',
      'stopped-unsafe',
    ]);
    expect(visit(facts).choices).toEqual([]);
  });
});

describe.each(Object.entries(WAY_TO))('from %s', (stage, way) => {
  test.each([
    ['interruption', ['interrupted'], 'interrupted', 'resumed'],
    ['hand-over', ['handed-over'], 'handedOver', 'taken-over'],
    ['stop, unsafe', ['stopped-unsafe'], 'stopped', 'safe-again'],
    ['a stop while interrupted', ['interrupted', 'stopped-unsafe'], 'stopped', 'safe-again'],
    ['a hand-over while interrupted', ['interrupted', 'handed-over'], 'handedOver', 'taken-over'],
    ['a stop while handed over', ['handed-over', 'stopped-unsafe'], 'stopped', 'safe-again'],
  ])('%s leads away and back to the same stage', (_, away, paused, back) => {
    const before = visit(way);
    expect(before.stage).toBe(stage);
    expect(visit([...way, ...away]).stage).toBe(paused);
    expect(visit([...way, ...away]).isRepaired).toBe(before.isRepaired);
    expect(visit([...way, ...away, back]).stage).toBe(stage);
  });
});

describe('a well that was opened', () => {
  test('keeps the visit from closing until it is disinfected', () => {
    expect(mayClose(DUE)).toBe(false);
    expect(mayClose({ disinfection: 'done' })).toBe(true);
    for (const way of Object.values(WAY_TO)) {
      expect(visit([...way, 'closed'], DUE)).toMatchObject({
        stage: 'disinfect',
        isClosed: false,
        owesDisinfection: true,
      });
      expect(visit([...way, 'closed'], { disinfection: 'done' }).stage).toBe('closed');
    }
  });

  test('is disinfected before the visit is handed back', () => {
    expect(visit(until('root-cause-noted'), DUE).stage).toBe('disinfect');
    expect(visit(until('root-cause-noted'), { disinfection: 'done' }).stage).toBe('handBack');
    expect(visit(['verdict-reached', 'no-repair-today'], DUE).stage).toBe('disinfect');
  });

  test('no way through the machine closes over it', () => {
    const closedIn = (disinfectionDue: boolean): boolean =>
      getShortestPaths(visitMachine, {
        input: { disinfectionDue },
        events: VISIT_EVENTS.map((type) => ({ type })),
        serializeState: (state) => JSON.stringify([state.value, state.historyValue]),
        limit: 20_000,
      }).some((path) => path.state.value === 'closed');
    expect(closedIn(true)).toBe(false);
    expect(closedIn(false)).toBe(true);
  });
});

describe('every stage', () => {
  test('is reached', () => {
    const reached = new Set<string>();
    for (const site of [NOTHING_DUE, DUE]) {
      for (const way of Object.values(WAY_TO)) {
        for (const fact of [...VISIT_EVENTS, undefined])
          reached.add(visit([...way, ...(fact === undefined ? [] : [fact])], site).stage);
      }
    }
    expect([...reached].sort()).toEqual(
      [...Object.keys(WAY_TO), 'closed', 'disinfect', 'handedOver', 'interrupted', 'stopped'].sort(),
    );
  });

  test('is the same after a reload: folding again equals living through it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...VISIT_EVENTS), { maxLength: 30 }),
        fc.boolean(),
        (said, disinfectionDue) => {
          const actor = createActor(visitMachine, { input: { disinfectionDue } }).start();
          for (const type of said) if (actor.getSnapshot().status === 'active') actor.send({ type });
          const { value } = actor.getSnapshot();
          actor.stop();
          const { stage } = visit(said, disinfectionDue ? DUE : NOTHING_DUE);
          expect(JSON.stringify(value)).toContain(`"${stage}"`);
        },
      ),
      { seed: 77, numRuns: 300 },
    );
  });

  test('stops from everywhere but a closed visit', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...VISIT_EVENTS), { maxLength: 30 }), (said) => {
        const before = visit(said).stage;
        const after = visit([...said, 'stopped-unsafe']).stage;
        expect(after).toBe(before === 'closed' ? 'closed' : 'stopped');
      }),
      { seed: 78, numRuns: 300 },
    );
  });

  test('begins where the machine begins', () => {
    const [snapshot] = initialTransition(visitMachine, { disinfectionDue: false });
    expect(snapshot.value).toEqual({ onSite: { finding: 'arrive' } });
  });
});
