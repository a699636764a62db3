import type { SiteStepView } from '../../../machines/call/types.ts';
import { SITE_STEPS, type SiteStepId } from '../../../machines/worksite/step-table.ts';
import { missingSteps } from '../../../machines/worksite/steps.ts';
import type { Work } from '../../../machines/worksite/work.ts';
import { figure } from '../../diagnosis/judgements.ts';
import type { Check } from '../../schema/check.ts';
import { type Alike, classesOf } from './outcome-classes.ts';

/**
 * The best tree of checks there is: fewest expected minutes until all that is still possible has the same
 * repair and every reading stands that a hard rule wants.
 *
 * Exact search over what is still possible, the state of the site and the readings that open others;
 * outcomes are sure. It pays for site steps, hands and waiting as the engine does, so that no engine can
 * do better on these faults.
 *
 * @source method: dynamic programming over information states (Bellman 1957)
 */
export interface Problem extends Alike {
  readonly weights: readonly number[];
  readonly work: Work;
  readonly checks: readonly Check[];
  minutesOf(step: string): number;
  /** Groups of checks of which one must stand before the repair of this hypothesis is named. */
  owedTo(hypothesis: number): readonly (readonly string[])[];
}

interface Round {
  readonly ids: readonly string[];
  readonly first: Check;
  readonly minutes: number;
  readonly after: readonly (readonly string[])[];
}

/** @returns minutes that the best tree takes to each hypothesis */
export function exactMinutes(problem: Problem): number[] {
  const search = new Search(problem);
  const all = problem.weights.map((_, index) => index);
  return all.map((hypothesis) => search.minutesTo(hypothesis, { left: all, work: problem.work, done: [] }));
}

interface Standing {
  readonly left: readonly number[];
  readonly work: Work;
  /** Readings that stand and that open others or that a rule wants, sorted. */
  readonly done: readonly string[];
}

interface Option {
  /** Minutes of one call; `price` is the same by the weight of what is left. */
  readonly minutes: number;
  readonly price: number;
  readonly branches: readonly Standing[];
}

class Search {
  private readonly known = new Map<string, { cost: number; best: Option | undefined }>();
  private readonly ways = new Map<string, { minutes: number; work: Work } | undefined>();
  private readonly rounds: readonly Round[];
  private readonly counted: ReadonlySet<string>;

  constructor(private readonly problem: Problem) {
    this.rounds = roundsOf(problem);
    this.counted = new Set([
      ...this.rounds.flatMap(({ after }) => after.flat()),
      ...problem.weights.flatMap((_, hypothesis) => problem.owedTo(hypothesis).flat()),
    ]);
  }

  minutesTo(hypothesis: number, at: Standing): number {
    const { best } = this.solved(at);
    const branch = best?.branches.find(({ left }) => left.includes(hypothesis));
    return best === undefined || branch === undefined ? 0 : best.minutes + this.minutesTo(hypothesis, branch);
  }

  /** Weighted minutes still to come; none where what is left cannot be told apart. */
  private solved(at: Standing): { cost: number; best: Option | undefined } {
    if (this.isSettled(at)) return { cost: 0, best: undefined };
    const key = `${at.left.join()}|${JSON.stringify(at.work.site)}|${at.done.join()}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const found = this.cheapest(at);
    this.known.set(key, found);
    return found;
  }

  private cheapest(at: Standing): { cost: number; best: Option | undefined } {
    const options = this.rounds
      .flatMap((round) => this.option(at, round) ?? [])
      .sort((one, other) => one.price - other.price);
    let cost = Number.POSITIVE_INFINITY;
    let best: Option | undefined;
    for (const option of options) {
      let sum = option.price;
      for (const branch of option.branches) {
        if (sum >= cost) break;
        sum += this.solved(branch).cost;
      }
      if (sum < cost) [cost, best] = [sum, option];
    }
    return best === undefined ? { cost: 0, best } : { cost, best };
  }

  private isSettled({ left, done }: Standing): boolean {
    const [first] = left;
    if (first === undefined) return true;
    const { actionOf } = this.problem;
    return left.every((one) => actionOf(one) === actionOf(first)) && this.owed(left, done).length === 0;
  }

  private owed(left: readonly number[], done: readonly string[]): readonly (readonly string[])[] {
    const groups = left.flatMap((one) => this.problem.owedTo(one));
    return groups.filter((group) => !group.some((check) => done.includes(check)));
  }

  private option(at: Standing, round: Round): Option | undefined {
    if (round.after.some((group) => !group.every((one) => at.done.includes(one)))) return undefined;
    const classes = classesOf(this.problem, at.left, round.ids);
    const fresh = round.ids.filter((id) => this.counted.has(id) && !at.done.includes(id));
    if (classes.length < 2 && fresh.length === 0) return undefined;
    const way = this.wayTo(at.work, round.first);
    if (way === undefined) return undefined;
    const done = [...at.done, ...fresh].sort();
    const weight = at.left.reduce((sum, one) => sum + this.problem.weights[one]!, 0);
    const minutes = way.minutes + round.minutes;
    return {
      minutes,
      price: weight * minutes,
      branches: classes.map((left) => ({ left, work: way.work, done })),
    };
  }

  private wayTo(work: Work, check: Check): { minutes: number; work: Work } | undefined {
    const key = `${JSON.stringify(work.site)}|${check.id}`;
    if (this.ways.has(key)) return this.ways.get(key);
    const way = missingSteps(check, work, this.problem.minutesOf);
    const found = way.possible ? walked(work, way.steps) : undefined;
    this.ways.set(key, found);
    return found;
  }
}

/** The site after some steps, and what they took. */
function walked(work: Work, steps: readonly SiteStepView[]): { minutes: number; work: Work } {
  let { site } = work;
  let minutes = 0;
  for (const one of steps) {
    site = { ...site, ...SITE_STEPS[one.step as SiteStepId].makes(site, one.place ?? work.leadsAt) };
    minutes += one.minutes;
  }
  return { minutes, work: { ...work, site } };
}

/** Single checks and reading sets, each with what it takes and what must stand before it. */
function roundsOf({ checks, judgements }: Problem): Round[] {
  const waiting = figure(judgements, 'waiting-rate');
  const keys = [...new Set(checks.map((check) => check.set ?? check.id))];
  return keys.flatMap((key) => {
    const members = checks.filter((check) => (check.set ?? check.id) === key);
    const [first] = members;
    if (first === undefined) return [];
    const before = members.flatMap((check) => check.after ?? []).filter((one) => typeof one === 'string');
    return [
      {
        ids: members.map((check) => check.id),
        first,
        minutes: members.reduce((sum, { minutes }) => sum + minutes.hands + waiting * minutes.wait, 0),
        after: before
          .map((name) => checks.filter((one) => one.id === name || one.set === name).map((one) => one.id))
          .filter((group) => group.length > 0),
      },
    ];
  });
}
