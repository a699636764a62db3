import { describe, expect, test } from 'vitest';
import {
  ask,
  claims,
  clears,
  handsOver,
  isHere,
  type Tree,
  tree,
  undecided,
} from '../../../machines/procedures/ask.ts';
import {
  acyclic,
  askedOnce,
  CHECKERS,
  everyOutcome,
  type Known,
  knownChecks,
  MOST_STATES,
  meaningful,
  noDeadEnd,
  notInVain,
  reachable,
  size,
  twoLines,
} from './support/checkers.ts';
import type { Reads } from './support/checks.ts';

/** Broken trees: each checker must catch the one that is broken in its way. */
const checks: ReadonlyMap<string, Reads> = new Map([
  ['tap', { answers: ['wet', 'dry'] }],
  ['pair', { quantity: 'voltage', unit: 'V' }],
]);
const known: Known = {
  checks,
  faults: ['pipe-split', 'pump-gone'],
  procedures: ['garden', 'cellar'],
  pulls: new Set(['pump-gone']),
};

const garden = (states: Parameters<typeof tree.createMachine>[0]['states']): Tree =>
  tree.createMachine({ id: 'garden', initial: 'first', states });

const tap = (ways: { wet: string; dry: string }) => ask('tap', { ...ways, 'not-taken': ways.dry });

describe('each checker catches a broken tree', () => {
  test('a sound tree passes all of them', () => {
    const sound = garden({
      first: isHere('pair', 'second', 'fine'),
      second: tap({ wet: 'split', dry: 'fine' }),
      split: claims('pipe-split'),
      fine: clears('garden'),
    });
    expect(Object.values(CHECKERS).flatMap((checker) => checker(sound, known))).toEqual([]);
  });

  test('too many states', () => {
    const many = Object.fromEntries(
      Array.from({ length: MOST_STATES + 1 }, (_, index) => [
        index === 0 ? 'first' : `end${index}`,
        clears('garden'),
      ]),
    );
    expect(size(garden(many), known)).toEqual([`${MOST_STATES + 1} states`]);
  });

  test('a state that nothing leads to', () => {
    const machine = garden({
      first: tap({ wet: 'fine', dry: 'fine' }),
      fine: clears('garden'),
      lost: clears('garden'),
    });
    expect(reachable(machine, known)).toEqual(['lost is never reached']);
  });

  test('a circle', () => {
    const machine = garden({
      first: tap({ wet: 'second', dry: 'fine' }),
      second: tap({ wet: 'first', dry: 'fine' }),
      fine: clears('garden'),
    });
    expect(acyclic(machine, known)).toEqual(['first leads back to itself', 'second leads back to itself']);
  });

  test('a state without a way on, and one that does nothing', () => {
    const stuck = garden({ first: { meta: { check: 'tap' } } });
    expect(noDeadEnd(stuck, known)).toEqual(['first has no way on']);
    const empty = garden({ first: { on: { wet: 'fine' } }, fine: clears('garden') });
    expect(noDeadEnd(empty, known)).toEqual(['first must do one thing: ask, fork or end']);
    const going = garden({ first: { meta: { ends: { clears: 'garden' } } } });
    expect(noDeadEnd(going, known)).toEqual(['first ends without being final, or the other way round']);
  });

  test('an outcome that is not handled, and a way that waits for one that cannot be', () => {
    const machine = garden({
      first: ask('pair', {
        'as-expected': 'fine',
        low: 'fine',
        high: 'fine',
        open: 'fine',
        'not-taken': 'fine',
      }),
      fine: clears('garden'),
    });
    expect(everyOutcome(machine, known)).toEqual(['first does not handle none', 'first waits for open']);
    const half = garden({ first: { meta: { fork: 'tap' }, on: { here: 'fine' } }, fine: clears('garden') });
    expect(everyOutcome(half, known)).toEqual(['first does not handle not-here']);
  });

  test('a check that does not exist', () => {
    const machine = garden({ first: ask('hose', { 'not-taken': 'fine' }), fine: clears('garden') });
    expect(knownChecks(machine, known)).toEqual(['first asks hose, which is no check']);
  });

  test('the same check twice on one path', () => {
    const machine = garden({
      first: tap({ wet: 'second', dry: 'fine' }),
      second: ask('pair', { low: 'third', 'not-taken': 'fine' }),
      third: tap({ wet: 'fine', dry: 'fine' }),
      fine: clears('garden'),
    });
    expect(askedOnce(machine, known)).toEqual(['tap is asked in first and again in third']);
  });

  test('a check whose readings all lead to the same place', () => {
    const machine = garden({
      first: ask('tap', { wet: 'fine', dry: 'fine', 'not-taken': 'unknown' }),
      fine: clears('garden'),
      unknown: undecided('garden'),
    });
    expect(notInVain(machine, known)).toEqual(['first asks in vain']);
  });

  test('endings that mean nothing', () => {
    const machine = garden({
      first: tap({ wet: 'nothing', dry: 'wrong' }),
      nothing: claims(),
      wrong: claims('moon-full'),
      nowhere: handsOver('attic'),
      itself: handsOver('garden'),
      other: clears('cellar'),
      both: { type: 'final', meta: { ends: { clears: 'garden', undecided: 'garden' } } },
    });
    expect(meaningful(machine, known)).toEqual([
      'nothing claims nothing',
      'wrong claims moon-full, which is no fault',
      'nowhere hands over to attic',
      'itself hands over to garden',
      'other speaks of another part',
      'both must say one thing',
    ]);
  });

  test('a pull after one line; two on every way are enough', () => {
    const hasty = garden({
      first: tap({ wet: 'second', dry: 'pull' }),
      second: ask('pair', { low: 'pull', 'not-taken': 'fine' }),
      pull: claims('pump-gone'),
      fine: clears('garden'),
    });
    expect(twoLines(hasty, known)).toEqual(['pull claims pump-gone after 1 of 2 lines']);
    const patient = garden({
      first: tap({ wet: 'second', dry: 'split' }),
      second: ask('pair', { low: 'pull', 'not-taken': 'fine' }),
      pull: claims('pump-gone'),
      split: claims('pipe-split'),
      fine: clears('garden'),
    });
    expect(twoLines(patient, known)).toEqual([]);
  });

  test('a way to a state that is not there is refused by the machine itself', () => {
    expect(() => stepsOfBroken()).toThrow(/nowhere/);
  });
});

function stepsOfBroken(): string[] {
  const machine = garden({ first: tap({ wet: 'nowhere', dry: 'fine' }), fine: clears('garden') });
  return reachable(machine, known);
}
