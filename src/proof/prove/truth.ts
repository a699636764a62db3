import type { Catalog } from '../../catalog/catalog.ts';
import { type Hypothesis, hypothesesOf, injectionOf, signsOf } from '../../diagnosis/belief/hypotheses.ts';
import { resolveSystem, type SystemChoice } from '../../diagnosis/system.ts';
import { setUp } from '../../plant/plant.ts';
import type { Plant, PlantState, UnknownName, Unknowns } from '../../plant/types.ts';
import { type InstallationInput, installation as installationShape } from '../../schema/installation.ts';
import type { Drawing, Hidden, Job } from './jobs.ts';
import type { Random } from './random.ts';

/**
 * What is really there and really wrong: one fault in one variant, its severity drawn from its span,
 * every unknown of the installation drawn from its spread. What the engine is not told of lengths is
 * drawn from the spread that belongs to an unknown length.
 *
 * Only faults with which somebody would call are drawn: the plant must show anything but a system that
 * works. Draws that show none are thrown away and drawn again.
 */
export interface Truth {
  readonly hypothesis: Hypothesis;
  readonly severity: number | undefined;
  readonly choice: SystemChoice;
  /** The plant with the fault in it, and mended: the same unknowns. */
  readonly faulty: PlantState;
  readonly mended: PlantState;
}

/** The plant of one installation, and all that can be wrong with it. */
export interface Ground {
  readonly catalog: Catalog;
  readonly choice: SystemChoice;
  readonly plant: Plant;
  readonly hypotheses: readonly Hypothesis[];
}

/** What the engine is told at the start. */
export function toldAtFirst(job: Pick<Job, 'row' | 'hidden'>): InstallationInput {
  const { family, box, motor, buried, drop, ...rest } = job.row.installation;
  const hides = (fact: Hidden): boolean => job.hidden.includes(fact);
  return {
    ...rest,
    ...(hides('family') ? {} : { family }),
    ...(hides('box') ? {} : { box }),
    ...(hides('motor') ? {} : { motor }),
    buried: hides('buried') ? { conductor: buried?.conductor } : buried,
    drop: hides('drop') ? { conductor: drop?.conductor } : drop,
  };
}

/** @param played the catalog that the plant is made from: the engine's own, or a perturbed one */
export function groundOf(played: Catalog, job: Pick<Job, 'row' | 'hidden'>): Ground {
  const { family, box, motor } = job.row.installation;
  const real = installationShape.parse({ ...toldAtFirst(job), family, box, motor });
  const system = resolveSystem(played, real);
  const [choice] = system.choices;
  if (choice === undefined) throw new Error(`prove: nothing fits ${job.row.id}; mend the matrix`);
  return {
    catalog: played,
    choice,
    plant: setUp(choice.input, choice.spreads),
    hypotheses: hypothesesOf(played, system),
  };
}

const TRIES = 40;

/** @param factor on the weight of each fault: the priors of a perturbed world */
export function drawTruth(
  ground: Ground,
  draw: { random: Random; drawing: Drawing; factor: (fault: string) => number },
): Truth {
  const { random } = draw;
  const faults = ground.hypotheses.filter(({ fault }) => fault.verdict !== 'normal');
  for (;;) {
    const pool = draw.drawing === 'uniform' ? ofOneFault(faults, random) : faults;
    const weights = pool.map((one) => one.weight * draw.factor(one.fault.id));
    for (let tried = 0; tried < (draw.drawing === 'uniform' ? TRIES : 1); tried++) {
      const truth = truthOf(ground, pool[random.weighted(weights)]!, random);
      if (isComplaint(ground, truth)) return truth;
    }
  }
}

function ofOneFault(faults: readonly Hypothesis[], random: Random): Hypothesis[] {
  const id = random.pick([...new Set(faults.map(({ fault }) => fault.id))]);
  return faults.filter(({ fault }) => fault.id === id);
}

function truthOf({ choice, plant }: Ground, hypothesis: Hypothesis, random: Random): Truth {
  const severity = severityOf(hypothesis, random);
  const causeStep = Math.sqrt(12) * (random.next() - 0.5);
  const names = Object.keys(choice.spreads) as UnknownName[];
  const unknowns: Unknowns = Object.fromEntries(names.map((name) => [name, random.normal()]));
  return {
    hypothesis,
    severity,
    choice,
    faulty: plant.state(injectionOf(hypothesis, severity, causeStep), unknowns),
    mended: plant.state({ edits: [], severity: undefined }, unknowns),
  };
}

function severityOf({ fault }: Hypothesis, random: Random): number | undefined {
  if (fault.severity === undefined) return undefined;
  const { low, high } = fault.severity.span;
  const share = random.next();
  return fault.severity.scale === 'log' ? low * (high / low) ** share : low + (high - low) * share;
}

/** Would anybody call? The plant says what is seen, unless the fault itself does. */
function isComplaint({ catalog }: Ground, { faulty, hypothesis }: Truth): boolean {
  const first = Object.values(catalog.checks).find(
    ({ predict }) => 'rule' in predict && predict.rule === 'what-is-seen',
  );
  if (first === undefined) throw new Error('prove: no check asks what is seen; add it to content/checks');
  if (signsOf(hypothesis, first.id).length > 0) return true;
  const seen = faulty.read({
    at: first.at,
    predict: first.predict,
    site: { powered: true, calling: true, leads: 'connected' },
  });
  return seen.kind === 'answer' && seen.answer !== 'works-now';
}
