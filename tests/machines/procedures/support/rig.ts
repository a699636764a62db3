import { checksOn } from '../../../../machines/call/applies.ts';
import { PROCEDURES } from '../../../../machines/procedures/all.ts';
import { type Answers, standings } from '../../../../machines/procedures/fold.ts';
import type { Catalog } from '../../../../src/catalog/catalog.ts';
import { simulatedReading } from '../../../../src/cli/simulated-reading.ts';
import { type Hypothesis, hypothesesOf, injectionOf } from '../../../../src/diagnosis/belief/hypotheses.ts';
import { resolveSystem, type SystemChoice } from '../../../../src/diagnosis/system.ts';
import type { ExpectedWindow } from '../../../../src/diagnosis/types.ts';
import { expectedWindows } from '../../../../src/diagnosis/windows/expect.ts';
import { setUp } from '../../../../src/plant/plant.ts';
import type { Check } from '../../../../src/schema/check.ts';
import type { Installation } from '../../../../src/schema/installation.ts';
import { of } from '../../../../src/units/units.ts';

/** One installation whose every check can be read with any fault put into it. */
export interface Rig {
  readonly catalog: Catalog;
  readonly choice: SystemChoice;
  readonly checks: readonly Check[];
  readonly windows: Readonly<Record<string, ExpectedWindow>>;
  readonly hypotheses: readonly Hypothesis[];
}

/** Known lengths, levels and sizes, so that the windows are as narrow as they get. */
const KNOWN: Installation = {
  buried: { conductor: 'copper-12', length: of(50, 'ft') },
  drop: { conductor: 'copper-12', length: of(200, 'ft') },
  well: { staticLevel: of(80, 'ft'), specificCapacity: of(0.3, 'gpm/ft') },
  pump: { shutOffHead: of(380, 'ft') },
  tank: { volume: of(44, 'gal') },
  cutIn: of(30, 'psi'),
  cutOut: of(50, 'psi'),
};

/** Box, motor and the fittings that are there; every other one is not. */
export interface Fitted {
  readonly box: string;
  readonly motor: string;
  readonly fittings?: readonly string[];
}

/** Faults one at a time: what one has caused is another question. */
export function rigOf(catalog: Catalog, { box, motor, fittings = [] }: Fitted): Rig {
  const there = Object.fromEntries(
    Object.keys(catalog.fittings).map((fitting) => [fitting, fittings.includes(fitting)]),
  );
  const system = resolveSystem(catalog, { box, motor, ...KNOWN, fittings: there });
  const [choice] = system.choices;
  if (choice === undefined) throw new Error(`rig: ${box} and ${motor} do not fit; name a pair that does`);
  const checks = checksOn(system, Object.values(catalog.checks));
  const windows = expectedWindows({ knowledge: catalog, system, meter: 'ordinary', justRun: false }, checks);
  const hypotheses = hypothesesOf(catalog, system).filter(
    (one) => one.choice === 0 && one.cause === undefined,
  );
  return { catalog, choice, checks, windows, hypotheses };
}

/** Every check read at once, without noise; what people see is what the fault shows most often. */
export function readAll(rig: Rig, hypothesis: Hypothesis): Answers {
  const { catalog, windows, choice, checks } = rig;
  const injection = injectionOf(hypothesis, middleOf(hypothesis));
  const plant = setUp(choice.input, choice.spreads).state(injection, {});
  const asked = { catalog, windows, plant, meter: 'ordinary', fault: hypothesis.fault } as const;
  const read = new Map(checks.map((check) => [check.id, outcomeOf(check, simulatedReading(asked, check))]));
  return { outcomeOf: (check) => read.get(check), applies: (check) => read.has(check) };
}

const OFTEN = ['always', 'usually', 'even', 'seldom', 'never'];
const RARE = ['seldom', 'never'];

/** Where a fault names only what is rare, a sound answer is what it shows. */
function outcomeOf(check: Check, data: ReturnType<typeof simulatedReading>): string {
  if ('signs' in data && data.signs !== undefined) {
    const signs = [...data.signs].sort((one, other) => OFTEN.indexOf(one.how) - OFTEN.indexOf(other.how));
    const [first] = signs;
    const sound = check.expected;
    if (first === undefined || (RARE.includes(first.how) && sound !== undefined)) return sound ?? 'not-taken';
    return first.answer;
  }
  if ('outcome' in data && data.outcome !== undefined) return data.outcome;
  if (!('reading' in data) || data.reading === undefined) return 'not-taken';
  return 'answer' in data.reading ? (data.reading.answer ?? 'not-taken') : 'as-expected';
}

function middleOf({ fault }: Hypothesis): number | undefined {
  if (fault.severity === undefined) return undefined;
  const { low, high } = fault.severity.span;
  return fault.severity.scale === 'log' ? Math.sqrt(low * high) : (low + high) / 2;
}

/** Claims of all trees that have begun, each as the repairs that it would lead to here. */
export function claimedRepairs(rig: Rig, answers: Answers): { by: string; repairs: readonly string[] }[] {
  return standings(PROCEDURES, answers).flatMap(({ procedure, place }) => {
    const claims = place.ends?.claims;
    if (claims === undefined) return [];
    const repairs = rig.hypotheses
      .filter(({ fault }) => claims.includes(fault.id))
      .map(({ action }) => action);
    return repairs.length === 0 ? [] : [{ by: `${procedure.id} ${place.at}`, repairs }];
  });
}
