import { checksOn, isAtHand } from '../../../machines/call/applies.ts';
import type { ProposedBy } from '../../../machines/call/types.ts';
import { foldSite } from '../../../machines/worksite/site.ts';
import { workPlace } from '../../../machines/worksite/work.ts';
import type { Catalog } from '../../catalog/catalog.ts';
import { type BeliefModel, buildModel } from '../../diagnosis/belief/model.ts';
import { resolveSystem } from '../../diagnosis/system.ts';
import type { Check } from '../../schema/check.ts';
import { type Installation, installation as installationShape } from '../../schema/installation.ts';
import { CONFUSION_SETS, type ConfusionSet, pinned, rowFor } from './confusion-sets.ts';
import { exactMinutes, type Problem } from './exact-tree.ts';
import { judgeEnd } from './judge-call.ts';
import type { Row } from './matrix.ts';
import { classesOf } from './outcome-classes.ts';
import { PlayedCall } from './play-call.ts';
import type { Play } from './plays.ts';
import { siteOf } from './site.ts';
import { type Ground, groundOf } from './truth.ts';

/** The engine's minutes over those of the exact tree, on each set of faults that look alike; of what it names. */
export interface Optimum {
  readonly set: string;
  readonly ratio: number;
  readonly engineMinutes: number;
  readonly exactMinutes: number;
  readonly faults: number;
  /** Hypotheses that the engine did not name there. */
  readonly notNamed: readonly string[];
}

export const optimumOf = (catalog: Catalog, by: ProposedBy): Optimum[] =>
  CONFUSION_SETS.flatMap((set) => measured(catalog, set, by) ?? []);

/** @returns undefined where fewer than two repairs of the set can occur together */
function measured(catalog: Catalog, set: ConfusionSet, by: ProposedBy): Optimum | undefined {
  const row = rowFor(catalog, set);
  const world = pinned(catalog, set);
  const ground = groundOf(world, { row, hidden: [] });
  if (new Set(ground.hypotheses.map((one) => one.action)).size < 2) return undefined;
  const known = installationShape.parse(row.installation);
  const model = buildModel(world, resolveSystem(world, known), 'ordinary');
  const exact = bestMinutes(world, model, known);
  const played = ground.hypotheses.map((_, index) => enginePlays(ground, { row, index, by }));
  const named = ground.hypotheses.flatMap((_, index) => (played[index]!.found ? [index] : []));
  const meanOf = (minutesOf: (index: number) => number): number => {
    const weight = named.reduce((sum, index) => sum + ground.hypotheses[index]!.weight, 0);
    return (
      named.reduce((sum, index) => sum + ground.hypotheses[index]!.weight * minutesOf(index), 0) / weight
    );
  };
  const engineMinutes = meanOf((index) => played[index]!.minutes);
  const bestThere = meanOf((index) => exact[index]!);
  return {
    set: set.id,
    ratio: engineMinutes / bestThere,
    engineMinutes,
    exactMinutes: bestThere,
    faults: new Set(ground.hypotheses.map(({ fault }) => fault.id)).size,
    notNamed: ground.hypotheses
      .filter((_, index) => !named.includes(index))
      .map(({ fault, variant }) => `${fault.id} ${variant}`),
  };
}

/** Minutes to each hypothesis: first what is seen, which every call begins with; then the best tree of each answer. */
function bestMinutes(world: Catalog, model: BeliefModel, known: Installation): number[] {
  const first = Object.values(world.checks).find(
    ({ predict }) => 'rule' in predict && predict.rule === 'what-is-seen',
  );
  if (first === undefined) throw new Error('prove: no check asks what is seen; add it to content/checks');
  const all = problemOf(world, model, known);
  const everything = model.hypotheses.map((_, index) => index);
  const minutes = everything.map(() => first.minutes.hands);
  for (const part of classesOf(all, everything, [first.id])) {
    const channel = all.channelOf(part[0]!, first.id);
    const seen = channel.kind === 'answers' ? mostFrequent(channel.probability) : '';
    const later = exactMinutes(ofPart(all, part, { first, seen }));
    for (const [at, index] of part.entries()) minutes[index] = minutes[index]! + later[at]!;
  }
  return minutes;
}

const mostFrequent = (shares: Readonly<Record<string, number>>): string =>
  Object.entries(shares).reduce((best, one) => (one[1] > best[1] ? one : best), ['', 0])[0];

/** The problem of some of the hypotheses, once it is known what is seen. */
function ofPart(all: Problem, part: readonly number[], at: { first: Check; seen: string }): Problem {
  return {
    ...all,
    weights: part.map((one) => all.weights[one]!),
    checks: all.checks.filter((check) => check !== at.first).map((check) => seenAs(check, at)),
    actionOf: (hypothesis) => all.actionOf(part[hypothesis]!),
    channelOf: (hypothesis, check) => all.channelOf(part[hypothesis]!, check),
    owedTo: (hypothesis) => all.owedTo(part[hypothesis]!),
  };
}

/** Forerunners that hang on what is seen stand or fall with it. */
function seenAs(check: Check, at: { first: Check; seen: string }): Check {
  const after = (check.after ?? []).flatMap((one) => {
    if (typeof one === 'string') return [one];
    return one.seen.check === at.first.id && one.seen.answers.includes(at.seen) ? one.checks : [];
  });
  return { ...check, after };
}

function problemOf(world: Catalog, model: BeliefModel, known: Installation): Problem {
  const { system, hypotheses } = model;
  const here = checksOn(system, Object.values(world.checks));
  const kit = { instruments: [], meter: 'ordinary', senses: new Set<string>() } as const;
  const boxes = system.choices.map((choice) => choice.box);
  const heaviest = hypotheses.map((_, index) => heaviestPiece(model, index));
  return {
    judgements: world.judgements,
    weights: hypotheses.map((one) => one.weight),
    work: { ...workPlace(world, boxes, known), site: foldSite([]), who: 'qualified' },
    checks: here.filter((check) => !('sumTest' in check.predict) && isAtHand(check, kit)),
    minutesOf: (step) => world.siteSteps[step]?.minutes ?? 0,
    actionOf: (hypothesis) => hypotheses[hypothesis]!.action,
    channelOf: (hypothesis, check) => model.channel(heaviest[hypothesis]!, check),
    owedTo: (hypothesis) => owedTo(world, here, hypotheses[hypothesis]!),
  };
}

/** What the plant does there most likely: one severity, but it may start or stall. */
function heaviestPiece({ pieces, owner }: BeliefModel, hypothesis: number): number {
  const own = pieces.flatMap((piece, index) => (owner[index] === hypothesis ? [{ piece, index }] : []));
  return own.reduce((best, one) => (one.piece.share > best.piece.share ? one : best)).index;
}

function owedTo(
  world: Catalog,
  here: readonly Check[],
  { fault, action }: { fault: { id: string }; action: string },
): string[][] {
  const isThere = (id: string): boolean => here.some((check) => check.id === id);
  return Object.values(world.rules)
    .filter(({ when }) =>
      'pull' in when ? world.actions[action]?.pull === true : when.faults.includes(fault.id),
    )
    .flatMap((rule) => rule.needs.map((group) => group.filter(isThere)))
    .filter((group) => group.length > 0);
}

const SURE: Play = {
  meterShare: 0,
  peopleErr: false,
  soundStrays: false,
  missesInstrument: false,
  isMismatch: false,
};

/** The engine's own call in the same world, on readings without error. */
function enginePlays(ground: Ground, at: { row: Row; index: number; by: ProposedBy }) {
  const { catalog, plant, choice } = ground;
  const hypothesis = ground.hypotheses[at.index]!;
  const span = hypothesis.fault.severity?.span;
  const severity = span === undefined ? undefined : (span.low + span.high) / 2;
  const truth = {
    hypothesis,
    severity,
    choice,
    faulty: plant.state({ ...hypothesis, severity }, {}),
    mended: plant.state({ edits: [], severity: undefined }, {}),
  };
  const offsets = { biasOf: () => 0, factorOf: () => 1 };
  const call = new PlayedCall({
    catalog,
    proposedBy: at.by,
    site: siteOf({ catalog, truth, play: SURE, offsets, who: 'qualified', seed: at.index }),
    who: 'qualified',
    real: at.row.installation,
    told: at.row.installation,
    tells: true,
    kit: [],
  });
  const { found } = judgeEnd(catalog, call.search(), truth);
  return { found, minutes: call.tally.minutes };
}
