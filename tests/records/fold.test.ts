import { describe, expect, test } from 'vitest';
import { answersThatDoNotFit, type Known } from '../../src/records/fits.ts';
import { foldCase } from '../../src/records/fold.ts';
import type { EventDraft } from '../../src/records/recorded.ts';
import { CASE, idOf, numbered, ohms, said } from './support/events.ts';
import { KNOWN } from './support/known.ts';

const fold = (drafts: readonly EventDraft[], checks?: Known['checks']) =>
  foldCase(CASE, numbered(drafts), checks);
const values = (state: ReturnType<typeof foldCase>) =>
  state.answers.map(({ check, reading }) => [check, 'value' in reading ? reading.value[0] : reading]);

describe('facts of which the last word stands', () => {
  test('nobody named is a caller with an ordinary meter and nothing known', () => {
    expect(fold([])).toMatchObject({
      person: 'caller',
      meter: 'ordinary',
      installation: {},
      answers: [],
      lastSequence: 0,
    });
  });
  test('installation fields are laid over one another, runs by their own fields', () => {
    const state = fold([
      {
        kind: 'installation',
        set: { family: 'start-only', buried: { conductor: 'copper-12' }, power: [1, 'hp'] },
      },
      { kind: 'installation', set: { buried: { length: [250, 'ft'] } } },
    ]);
    expect(state.installation).toMatchObject({ family: 'start-only', buried: { conductor: 'copper-12' } });
    // 250 ft × 0.3048 m/ft = 76.2 m; 1 hp = 745.6999 W
    expect(state.installation.buried?.length).toBeCloseTo(76.2, 9);
    expect(state.installation.power).toBeCloseTo(745.6999, 9);
  });
  test('a field that turns out unknown is dropped, and can be set anew in one event', () => {
    const state = fold([
      { kind: 'installation', set: { family: 'start-only', box: 'start-only-current-relay' } },
      { kind: 'installation', set: { family: 'start-and-run' }, unknown: ['box'] },
    ]);
    expect(state.installation).toEqual({ family: 'start-and-run' });
  });
});

describe('order', () => {
  test('sequence decides, then device; the clock never does', () => {
    const late = { ...ohms('ohms-yellow-black', 2), id: idOf(2, 'a'), at: '2026-03-01T08:00:00Z' };
    const early = { ...ohms('ohms-yellow-black', 1), id: idOf(1, 'b'), at: '2026-03-01T09:00:00Z' };
    expect(values(foldCase(CASE, [late, early]))).toEqual([['ohms-yellow-black', 2]]);
  });
  test('sequence 10 comes after 9, and equal sequences go by device', () => {
    const events = [
      { ...ohms('ohms-yellow-black', 10), id: idOf(10, 'a') },
      { ...ohms('ohms-yellow-black', 9), id: idOf(9, 'z') },
      { ...ohms('ohms-yellow-red', 1), id: idOf(3, 'b') },
      { ...ohms('ohms-yellow-red', 2), id: idOf(3, 'a') },
    ];
    expect(values(foldCase(CASE, events))).toEqual([
      ['ohms-yellow-red', 1],
      ['ohms-yellow-black', 10],
    ]);
  });
});

describe('corrections', () => {
  test('a correction replaces; both stay in the trail', () => {
    const state = fold([
      ohms('ohms-yellow-black', 42),
      ohms('ohms-yellow-black', 4.2, { corrects: idOf(1) }),
    ]);
    expect(values(state)).toEqual([['ohms-yellow-black', 4.2]]);
    expect(state.answers[0]?.corrects).toEqual([idOf(1)]);
    expect(state.trail.map(({ event, correctedBy }) => [event, correctedBy])).toEqual([
      [idOf(1), idOf(2)],
      [idOf(2), undefined],
    ]);
  });
  test('a late correction of an old reading does not displace the newer reading', () => {
    const state = fold([
      ohms('ohms-yellow-black', 42),
      ohms('ohms-yellow-black', 3),
      ohms('ohms-yellow-black', 4.2, { corrects: idOf(1) }),
    ]);
    expect(values(state)).toEqual([['ohms-yellow-black', 3]]);
  });
  test('a reading typed in under the wrong check moves', () => {
    const state = fold([ohms('ohms-yellow-red', 4.2), ohms('ohms-yellow-black', 4.2, { corrects: idOf(1) })]);
    expect(values(state)).toEqual([['ohms-yellow-black', 4.2]]);
  });
  test('two corrections of one reading: the later stands', () => {
    const state = fold([
      ohms('ohms-yellow-black', 1),
      ohms('ohms-yellow-black', 2, { corrects: idOf(1) }),
      ohms('ohms-yellow-black', 3, { corrects: idOf(1) }),
    ]);
    expect(values(state)).toEqual([['ohms-yellow-black', 3]]);
    expect(state.answers[0]?.corrects).toEqual([idOf(1), idOf(2)]);
  });
  test('a correction of an event that is not there is an answer of its own', () => {
    expect(values(fold([ohms('ohms-yellow-black', 3, { corrects: idOf(99) })]))).toEqual([
      ['ohms-yellow-black', 3],
    ]);
  });
});

describe('a step back', () => {
  const back = (sequence: number): EventDraft => ({
    kind: 'visit',
    type: 'back',
    withdraws: [idOf(sequence)],
  });

  test('takes an answer out and leaves it in the trail', () => {
    const state = fold([ohms('ohms-yellow-black', 3), back(1)]);
    expect(state.answers).toEqual([]);
    expect(state.trail[0]).toMatchObject({ event: idOf(1), correctedBy: idOf(2) });
  });
  test('taken back itself, the answer stands again', () => {
    expect(values(fold([ohms('ohms-yellow-black', 3), back(1), back(2)]))).toEqual([
      ['ohms-yellow-black', 3],
    ]);
  });
  test('over a correction brings the first reading back', () => {
    const state = fold([
      ohms('ohms-yellow-black', 3),
      ohms('ohms-yellow-black', 4, { corrects: idOf(1) }),
      back(2),
    ]);
    expect(values(state)).toEqual([['ohms-yellow-black', 3]]);
  });
  test('cannot withdraw what comes later, nor itself', () => {
    const state = fold([back(2), ohms('ohms-yellow-black', 3), back(3)]);
    expect(values(state)).toEqual([['ohms-yellow-black', 3]]);
    expect(state.visitEvents).toHaveLength(2);
  });
});

test('what was left is kept apart from what was found', () => {
  const state = fold([ohms('ohms-yellow-black', 9), ohms('ohms-yellow-black', 3, { asLeft: true })]);
  expect(values(state)).toEqual([['ohms-yellow-black', 9]]);
  expect(state.asLeft.map(({ event }) => event)).toEqual([idOf(2)]);
});

describe('an answer that this content cannot use', () => {
  const drafts: EventDraft[] = [
    ohms('ohms-of-the-moon', 9),
    ohms('volts-service-pair', 240),
    { kind: 'answer', check: 'what-is-seen', reading: { answer: 'on-fire' } },
    ohms('ohms-yellow-black', 3),
  ];
  test('stays in the trail and does not stand', () => {
    const state = fold(drafts, KNOWN.checks);
    expect(values(state)).toEqual([['ohms-yellow-black', 3]]);
    expect(state.trail).toHaveLength(4);
  });
  test('is reported by its event', () => {
    expect(answersThatDoNotFit(numbered(drafts), KNOWN.checks).map(({ at }) => at)).toEqual([
      `${idOf(1)} › check`,
      `${idOf(2)} › reading › value[1]`,
      `${idOf(3)} › reading › answer`,
    ]);
  });
});

test('an answer is by the person of its time', () => {
  const state = fold([
    ohms('ohms-yellow-black', 3),
    { kind: 'person', role: 'technician' },
    ohms('ohms-yellow-red', 3),
  ]);
  expect(state.answers.map(({ by }) => by)).toEqual(['caller', 'technician']);
});

describe('claims about the site', () => {
  const types = (state: ReturnType<typeof foldCase>) => state.siteEvents.map(({ said }) => said.type);

  test('stand in the order said', () => {
    expect(types(fold([said('switched-off'), said('locked')]))).toEqual(['switched-off', 'locked']);
  });
  test('lapse where the person changes, and not where the same person is named again', () => {
    const person: EventDraft = { kind: 'person', role: 'qualified' };
    expect(types(fold([person, said('locked'), person, said('proved')]))).toEqual(['locked', 'proved']);
    expect(types(fold([said('locked'), person, said('proved')]))).toEqual(['locked', 'lapsed', 'proved']);
  });
  test.each(['handed-over', 'taken-over'])('lapse where a visit is %s', (type) => {
    expect(types(fold([said('locked'), { kind: 'visit', type }, said('proved')]))).toEqual([
      'locked',
      'lapsed',
      'proved',
    ]);
  });
  test('lapse where another device goes on: what it did not see it cannot build on', () => {
    const ours = { ...said('locked'), id: idOf(1, 'us') };
    const theirs = { ...said('proved'), id: idOf(2, 'them') };
    expect(types(foldCase(CASE, [ours, theirs]))).toEqual(['locked', 'lapsed', 'proved']);
  });
  test('lapse where a step is withdrawn, and the step is gone', () => {
    const state = fold([
      said('locked'),
      said('proved'),
      { kind: 'visit', type: 'back', withdraws: [idOf(2)] },
    ]);
    expect(types(state)).toEqual(['locked', 'lapsed']);
  });
});

test('an event of no known shape is a mistake of the caller and stops the fold', () => {
  const broken: EventDraft = { kind: 'installation', set: { breaker: [Number.NaN, 'A'] } };
  expect(() => fold([broken])).toThrow();
});
