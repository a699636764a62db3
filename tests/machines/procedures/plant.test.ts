import { describe, expect, test } from 'vitest';
import { FIRST_QUESTION } from '../../../machines/procedures/all.ts';
import { catalogFrom } from '../../../src/proof/content.ts';
import { claimedRepairs, type Fitted, type Rig, readAll, rigOf } from './support/rig.ts';

/**
 * Does the trade's way through the trees agree with the plant, wires and water? Every fault that shows is
 * put into an installation, every check is read without noise, and the trees are folded over the
 * answers: one of them should claim the right repair, and few should claim a wrong one.
 */
const built = catalogFrom('content');

const TWO_WIRE = { box: 'none-2-wire', motor: '2-wire-0.75hp-230v' };
const START_ONLY = { box: 'start-only-current-relay', motor: '3-wire-1hp-230v-start-only' };
const START_AND_RUN = {
  box: 'start-and-run-main-overload-in-line',
  motor: '3-wire-1.5hp-230v-start-and-run',
};
const CONTACTOR = { box: 'contactor-loop-fed-from-l2', motor: '3-wire-3hp-230v-start-and-run' };

/** What hangs on the pipe and the supply, and stands in nobody's way. */
const HOUSE = [
  'cartridge-filter',
  'softener',
  'backflow-valve',
  'flow-control-valve',
  'heat-tape',
  'plain-steel-tank',
  'air-line',
  'low-pressure-cut-off',
  'standby-source',
  'battery-supply',
];

/** Pieces of the panel take each other's place, so each of them has an installation of its own. */
const INSTALLATIONS: readonly Fitted[] = [
  TWO_WIRE,
  START_ONLY,
  START_AND_RUN,
  CONTACTOR,
  { ...TWO_WIRE, fittings: ['load-protector'] },
  { ...START_ONLY, fittings: ['ground-fault-breaker', 'heat-tape'] },
  { ...START_AND_RUN, fittings: ['fuses', ...HOUSE] },
  { ...START_AND_RUN, fittings: ['drive'] },
  { ...CONTACTOR, fittings: ['float-in-loop'] },
];

interface Tally {
  shown: number;
  readonly missed: string[];
  readonly wrong: string[];
}

function tally(rig: Rig): Tally {
  const sum: Tally = { shown: 0, missed: [], wrong: [] };
  for (const hypothesis of rig.hypotheses) {
    const answers = readAll(rig, hypothesis);
    if (answers.outcomeOf(FIRST_QUESTION) === 'works-now') continue;
    sum.shown++;
    const claims = claimedRepairs(rig, answers);
    const name = `${hypothesis.fault.id} ${hypothesis.variant}`;
    if (!claims.some(({ repairs }) => repairs.includes(hypothesis.action))) sum.missed.push(name);
    for (const { by, repairs } of claims) {
      if (!repairs.includes(hypothesis.action)) sum.wrong.push(`${name}: ${by}`);
    }
  }
  return sum;
}

describe.each(INSTALLATIONS)('on $box with $fittings', (fitted) => {
  test('the trees claim the repair of every fault that shows, and hardly ever another', () => {
    if ('problems' in built) throw new Error(`content: ${JSON.stringify(built.problems[0])}`);
    const { shown, missed, wrong } = tally(rigOf(built.catalog, fitted));
    expect(shown).toBeGreaterThan(60);
    expect({ missed: missed.length > 0.03 * shown ? missed : [] }).toEqual({ missed: [] });
    expect({ wrong: wrong.length > 0.1 * shown ? wrong : [] }).toEqual({ wrong: [] });
  });
});

test('a tree that knows nothing of a fault is found out', () => {
  if ('problems' in built) throw new Error(`content: ${JSON.stringify(built.problems[0])}`);
  const rig = rigOf(built.catalog, TWO_WIRE);
  const other = {
    ...rig,
    hypotheses: rig.hypotheses.map((one) => ({ ...one, action: `other-than-${one.action}` })),
  };
  const [hypothesis] = rig.hypotheses.filter(({ fault }) => fault.id === 'switch-contacts-open');
  if (hypothesis === undefined)
    throw new Error('rig: switch-contacts-open cannot occur here; name another fault');
  const repairs = claimedRepairs(other, readAll(rig, hypothesis)).flatMap((one) => one.repairs);
  expect(repairs.length).toBeGreaterThan(0);
  expect(repairs).not.toContain(hypothesis.action);
});
