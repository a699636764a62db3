import { describe, expect, test } from 'vitest';
import { FIRST_QUESTION, HELD_CHECKS, PROCEDURES } from '../../../machines/procedures/all.ts';
import { askedBy, coverage } from '../../../machines/procedures/coverage.ts';
import { outcomesOf } from '../../../machines/procedures/outcomes.ts';
import { CHECKERS, type Known } from './support/checkers.ts';
import { CHECKS, FAULTS, PULLS } from './support/checks.ts';
import { FOUND_WITHOUT_A_CHECK, OWN_CHECKS } from './support/left-out.ts';

const known: Known = {
  checks: CHECKS,
  faults: FAULTS,
  procedures: PROCEDURES.map((one) => one.id),
  pulls: PULLS,
};

describe.each(PROCEDURES)('the tree of $id', ({ machine }) => {
  test.each(Object.keys(CHECKERS))('%s', (name) => {
    expect(CHECKERS[name]?.(machine, known)).toEqual([]);
  });
});

describe('the trees together', () => {
  test('know the checks of the content', () => {
    expect(CHECKS.size).toBeGreaterThan(70);
  });

  test('have ids of their own', () => {
    expect(new Set(known.procedures).size).toBe(PROCEDURES.length);
  });

  test('claim every fault, but for what is found without a check', () => {
    expect(FAULTS.length).toBeGreaterThan(150);
    const unclaimed = coverage(PROCEDURES, FAULTS).filter((row) => row.claims.length === 0);
    expect(unclaimed.map((row) => row.fault).sort()).toEqual([...FOUND_WITHOUT_A_CHECK].sort());
  });

  test("ask every check, but for the planner's own", () => {
    const own = askedBy(PROCEDURES, [...CHECKS.keys()]).filter((row) => row.procedures.length === 0);
    expect(own.map((row) => row.check).sort()).toEqual([...OWN_CHECKS].sort());
  });

  test('coverage shows a fault that no tree claims', () => {
    const row = coverage(PROCEDURES, ['moon-full']).find((one) => one.fault === 'moon-full');
    expect(row).toEqual({ fault: 'moon-full', claims: [] });
  });

  test('coverage names the tree, the ending and the faults claimed beside', () => {
    const row = coverage(PROCEDURES, []).find((one) => one.fault === 'start-switch-inside-failed');
    expect(row?.claims).toContainEqual({
      procedure: 'bound-pump',
      state: 'boundOrSwitch',
      beside: ['winding-start-open', 'rotor-locked', 'pump-sand-locked', 'pump-stages-melted'],
    });
  });

  test('begin on each answer of the first question', () => {
    const reads = CHECKS.get(FIRST_QUESTION);
    const answers: string[] = reads !== undefined && 'answers' in reads ? reads.answers : [];
    const begun = answers.map(
      (answer) => PROCEDURES.filter(({ seen }) => seen.some((one) => one === answer)).length,
    );
    expect(Math.min(...begun)).toBeGreaterThan(0);
  });

  test('are reached: each begins by itself or another hands over to it', () => {
    const handed = PROCEDURES.flatMap(({ machine }) =>
      Object.values(machine.states).map((state) => state.meta?.ends?.handsOver as unknown),
    );
    const idle = PROCEDURES.filter(({ id, seen }) => seen.length === 0 && !handed.includes(id));
    expect(idle.map((one) => one.id)).toEqual([]);
  });

  test('hold the checks that they ask, and only those', () => {
    expect(HELD_CHECKS.has('volts-switch-line')).toBe(true);
    expect(HELD_CHECKS.has('ohms-sum-test')).toBe(false);
  });
});

describe('outcomes of a check', () => {
  test('volts may read none but never open', () => {
    expect(outcomesOf({ reads: { quantity: 'voltage', unit: 'V' } })).toEqual([
      'as-expected',
      'low',
      'high',
      'none',
      'unstable',
      'not-taken',
    ]);
  });

  test('ohms may read open but never none', () => {
    expect(outcomesOf({ reads: { quantity: 'resistance', unit: 'ohm' } })).toEqual([
      'as-expected',
      'low',
      'high',
      'open',
      'unstable',
      'not-taken',
    ]);
  });

  test('a category has its answers, and may not be taken', () => {
    expect(outcomesOf({ reads: { answers: ['clear', 'blocked'] } })).toEqual([
      'clear',
      'blocked',
      'not-taken',
    ]);
  });
});
