import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { PROCEDURES } from '../../../machines/procedures/all.ts';
import type { Tree } from '../../../machines/procedures/ask.ts';
import { type DrawnState, drawTree } from '../../../machines/procedures/drawing.ts';
import { type Answers, foldProcedure, proposals, standings } from '../../../machines/procedures/fold.ts';
import { HERE, NOT_HERE, outcomesOf } from '../../../machines/procedures/outcomes.ts';
import { CHECKS } from './support/checks.ts';

/** Any answers on any installation: some checks unread, some not there, the rest with any outcome. */
const anyAnswers = fc
  .record(
    Object.fromEntries(
      [...CHECKS].map(([check, reads]) => [
        check,
        fc.constantFrom(...outcomesOf({ reads }), ...outcomesOf({ reads }), NOT_HERE, undefined),
      ]),
    ),
  )
  .map(
    (said): Answers => ({
      outcomeOf: (check) => (said[check] === NOT_HERE ? undefined : said[check]),
      applies: (check) => said[check] !== NOT_HERE,
    }),
  );

const FIXED = { seed: 20_240, numRuns: 300 };

/** The slow way: the machine itself, one transition an answer. */
function walk(machine: Tree, answers: Answers): string {
  let [snapshot] = initialTransition(machine);
  while (snapshot.status === 'active') {
    const { check, fork } = machine.states[String(snapshot.value)]?.meta ?? {};
    const type =
      fork !== undefined
        ? answers.applies(fork)
          ? HERE
          : NOT_HERE
        : answers.applies(check)
          ? answers.outcomeOf(check)
          : NOT_HERE;
    if (type === undefined) break;
    [snapshot] = transition(machine, snapshot, { type });
  }
  return String(snapshot.value);
}

describe.each(PROCEDURES)('folding $id', ({ machine }) => {
  test('ends where the machine itself would', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        expect(foldProcedure(machine, answers).at).toBe(walk(machine, answers));
      }),
      FIXED,
    );
  });

  test('proposes a check that is there and unread, or ends', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const { proposes, ends } = foldProcedure(machine, answers);
        expect((proposes === undefined) === (ends !== undefined)).toBe(true);
        if (proposes !== undefined) {
          expect(answers.applies(proposes)).toBe(true);
          expect(answers.outcomeOf(proposes)).toBeUndefined();
        }
      }),
      FIXED,
    );
  });

  test('goes back along its own path when an answer is withdrawn', () => {
    fc.assert(
      fc.property(anyAnswers, fc.nat(), (answers, which) => {
        const { path } = foldProcedure(machine, answers);
        const asked = path.filter((one) => one.outcome !== NOT_HERE && one.outcome !== HERE);
        const withdrawn = asked[which % Math.max(1, asked.length)];
        if (withdrawn === undefined) return;
        const left: Answers = {
          ...answers,
          outcomeOf: (check) => (check === withdrawn.check ? undefined : answers.outcomeOf(check)),
        };
        const place = foldProcedure(machine, left);
        expect(place.at).toBe(withdrawn.state);
        expect(place.path).toEqual(path.slice(0, path.indexOf(withdrawn)));
      }),
      FIXED,
    );
  });

  test('is drawn with every state once and the path lit from the start to here', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const place = foldProcedure(machine, answers);
        const states = statesOf(drawTree(machine, place.path));
        expect(states.map((one) => one.state).sort()).toEqual(Object.keys(machine.states).sort());
        const lit = states.filter((one) => one.lit).map((one) => one.state);
        expect(lit).toEqual([...place.path.map((one) => one.state), place.at]);
        expect(states.filter((one) => one.here).map((one) => one.state)).toEqual([place.at]);
      }),
      FIXED,
    );
  });
});

describe('proposals', () => {
  test('are one a procedure, from procedures that have begun, until nothing is left to ask', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const proposed = proposals(PROCEDURES, answers);
        const asking = standings(PROCEDURES, answers).filter(({ place }) => place.proposes !== undefined);
        expect(new Set(proposed.map((one) => one.procedure)).size).toBe(proposed.length);
        if (asking.length > 0)
          expect(proposed.map((one) => one.procedure)).toEqual(asking.map((one) => one.procedure.id));
        const unread = [...CHECKS.keys()].some(
          (check) => answers.applies(check) && answers.outcomeOf(check) === undefined,
        );
        if (!unread) expect(proposed).toEqual([]);
      }),
      FIXED,
    );
  });
});

function statesOf(drawn: DrawnState): DrawnState[] {
  return [drawn, ...drawn.edges.flatMap((edge) => (edge.drawn === undefined ? [] : statesOf(edge.drawn)))];
}
