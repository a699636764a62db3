import fc from 'fast-check';
import { expect, test } from 'vitest';
import { foldCase } from '../../src/records/fold.ts';
import { mergeEvents } from '../../src/records/merge.ts';
import type { EventDraft, RecordedEvent } from '../../src/records/recorded.ts';
import { CASE, idOf } from './support/events.ts';

const SEED = { seed: 20260301, numRuns: 300 };
const sequence = fc.integer({ min: 1, max: 9 });
const someId = fc
  .tuple(sequence, fc.constantFrom('us', 'them'))
  .map(([number, device]) => idOf(number, device));

const draft: fc.Arbitrary<EventDraft> = fc.oneof(
  fc
    .record({
      check: fc.constantFrom('a', 'b'),
      ohms: fc.integer({ min: 0, max: 9 }),
      corrects: fc.option(someId),
      asLeft: fc.boolean(),
    })
    .map(
      ({ check, ohms, corrects, asLeft }): EventDraft => ({
        kind: 'answer',
        check,
        reading: { value: [ohms, 'ohm'] },
        ...(corrects === null ? {} : { corrects }),
        ...(asLeft ? { asLeft: true } : {}),
      }),
    ),
  fc.constantFrom('locked', 'proved').map((type): EventDraft => ({ kind: 'site', event: { type } })),
  fc.constantFrom('caller', 'qualified').map((role): EventDraft => ({ kind: 'person', role })),
  fc
    .array(someId, { minLength: 1, maxLength: 3 })
    .map((withdraws): EventDraft => ({ kind: 'visit', type: 'back', withdraws })),
);
/** Events whose ids are all different: the device wrote each once. */
const events: fc.Arbitrary<RecordedEvent[]> = fc
  .uniqueArray(fc.tuple(someId, draft), { selector: ([id]) => id, maxLength: 18 })
  .map((pairs) => pairs.map(([id, one]) => ({ ...one, id })));

const twoDevices = events.chain((all) =>
  fc.tuple(fc.subarray(all), fc.subarray(all), fc.shuffledSubarray(all, { minLength: all.length })),
);

test('the order in which events arrive does not change the case', () => {
  fc.assert(
    fc.property(
      events.chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
      ([all, shuffled]) => {
        expect(foldCase(CASE, shuffled)).toEqual(foldCase(CASE, all));
        expect(foldCase(CASE, [...all, ...shuffled])).toEqual(foldCase(CASE, all));
      },
    ),
    SEED,
  );
});

test('merging does not depend on order or repetition', () => {
  fc.assert(
    fc.property(twoDevices, ([ours, theirs, rest]) => {
      const once = mergeEvents(ours, theirs).events;
      expect(mergeEvents(theirs, ours).events).toEqual(once);
      expect(mergeEvents(once, theirs)).toMatchObject({ events: once, added: [], conflicts: [] });
      expect(mergeEvents(mergeEvents(ours, theirs).events, rest).events).toEqual(
        mergeEvents(ours, mergeEvents(theirs, rest).events).events,
      );
    }),
    SEED,
  );
});

test('nothing is lost: every event is one line of the trail', () => {
  fc.assert(
    fc.property(events, (all) => {
      const lines = foldCase(CASE, all).trail.map(({ event }) => event);
      expect([...lines].sort()).toEqual(all.map(({ id }) => id).sort());
    }),
    SEED,
  );
});

test('of each check at most one reading stands, and none that was replaced', () => {
  fc.assert(
    fc.property(events, (all) => {
      const state = foldCase(CASE, all);
      for (const answers of [state.answers, state.asLeft]) {
        expect(new Set(answers.map(({ check }) => check)).size).toBe(answers.length);
        for (const { event } of answers) {
          expect(state.trail.find((line) => line.event === event)?.correctedBy).toBeUndefined();
        }
      }
    }),
    SEED,
  );
});
