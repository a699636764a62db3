import { quantile } from '../clock.ts';
import type { Drawing, Order, PlayName } from './jobs.ts';
import type { Optimum } from './optimum.ts';
import type { CallResult } from './play-job.ts';
import { type Bin, calibration, mean, upper95 } from './statistics.ts';

/**
 * The figures of a sweep, from its calls. Shares are of 1; minutes are those to the first verdict, or to
 * whatever else ended the search, site steps included, waiting at its rate.
 */
export interface PlayFigures {
  readonly n: number;
  readonly foundFirst: number;
  readonly foundInVisit: number;
  readonly wrongPull: number;
  readonly wrongPullUpper95: number;
  readonly minutesMean: number;
  readonly minutesP90: number;
  readonly checksMean: number;
  readonly energisedMean: number;
  readonly unsafe: number;
  readonly calibration: readonly Bin[];
}

export interface Worst {
  readonly fault: string;
  readonly installation: string;
  readonly minutes: number;
  readonly why: string;
}

type Plays = Readonly<Record<PlayName, PlayFigures | null>>;

export interface Figures extends Plays {
  readonly seed: number;
  readonly contentVersion: string;
  readonly by: string;
  readonly calls: number;
  /** The same plays with every fault that causes a complaint drawn alike. */
  readonly uniform: Plays;
  readonly catalogueOrder: YardstickFigures | null;
  readonly fixedSequence: YardstickFigures | null;
  readonly random: YardstickFigures | null;
  readonly optimum: readonly Optimum[] | null;
  readonly worst: readonly Worst[];
}

/** A yardstick, and the engine's minutes on the very same calls. */
export interface YardstickFigures {
  readonly minutesMean: number;
  readonly engineMinutesMean: number;
  readonly foundFirst: number;
  readonly n: number;
}

const WORST_SHOWN = 40;

export function figuresOf(
  results: readonly CallResult[],
  about: Pick<Figures, 'seed' | 'contentVersion' | 'by' | 'optimum'>,
): Figures {
  const plays = (drawing: Drawing): Plays => ({
    clean: playFigures(ofKind(results, 'clean', drawing)),
    noisy: playFigures(ofKind(results, 'noisy', drawing)),
    mismatch: playFigures(ofKind(results, 'mismatch', drawing)),
  });
  return {
    seed: about.seed,
    contentVersion: about.contentVersion,
    by: about.by,
    calls: results.length,
    ...plays('prior'),
    uniform: plays('uniform'),
    catalogueOrder: yardstickFigures(results, 'catalogue'),
    fixedSequence: yardstickFigures(results, 'sequence'),
    random: yardstickFigures(results, 'random'),
    optimum: about.optimum,
    worst: worstOf(results),
  };
}

const ofKind = (results: readonly CallResult[], play: PlayName, drawing: Drawing): CallResult[] =>
  results.filter((one) => one.order === 'engine' && one.play === play && one.drawing === drawing);

export function playFigures(calls: readonly CallResult[]): PlayFigures | null {
  if (calls.length === 0) return null;
  const n = calls.length;
  const count = (holds: (call: CallResult) => boolean): number => calls.filter(holds).length;
  const minutes = calls.map((one) => one.minutes);
  const wrongPulls = count((one) => one.wrongPull);
  return {
    n,
    foundFirst: count((one) => one.found) / n,
    foundInVisit: count((one) => one.visit?.foundInVisit === true) / n,
    wrongPull: wrongPulls / n,
    wrongPullUpper95: upper95(wrongPulls, n),
    minutesMean: mean(minutes),
    minutesP90: quantile(minutes, 0.9),
    checksMean: mean(calls.map((one) => one.checks.length)),
    energisedMean: mean(calls.map((one) => one.energised)),
    unsafe: calls.reduce((sum, one) => sum + one.unsafe.length, 0),
    calibration: calibration(calls.map((one) => ({ stated: one.probability, right: one.isRight }))),
  };
}

function yardstickFigures(results: readonly CallResult[], order: Order): YardstickFigures | null {
  const calls = results.filter((one) => one.order === order);
  if (calls.length === 0) return null;
  const engine = new Map(ofKind(results, 'clean', 'prior').map((one) => [one.call, one.minutes]));
  return {
    minutesMean: mean(calls.map((one) => one.minutes)),
    engineMinutesMean: mean(calls.flatMap((one) => engine.get(one.call) ?? [])),
    foundFirst: calls.filter((one) => one.found).length / calls.length,
    n: calls.length,
  };
}

/** What went most wrong first: unsafe, wrong pull, wrong repair, not named; then what took longest. */
function worstOf(results: readonly CallResult[]): Worst[] {
  return results
    .filter((one) => one.order === 'engine')
    .sort((one, other) => gravity(other) - gravity(one) || other.minutes - one.minutes)
    .slice(0, WORST_SHOWN)
    .map((one) => ({
      fault: `${one.fault} ${one.variant}`,
      installation: [one.row, ...unknownOf(one)].join('; '),
      minutes: one.minutes,
      why: whyOf(one),
    }));
}

function gravity(call: CallResult): number {
  if (call.unsafe.length > 0) return 4;
  if (call.wrongPull) return 3;
  if (call.advises && !call.isRight) return 2;
  return call.found ? 0 : 1;
}

function unknownOf({ hidden, missing }: CallResult): string[] {
  return [
    ...(hidden.length > 0 ? [`not told: ${hidden.join(', ')}`] : []),
    ...(missing === undefined ? [] : [`without ${missing}`]),
  ];
}

export function whyOf(call: CallResult): string {
  const said = `${call.play}, ${call.drawing}: said ${call.kind} ${call.action} at ${call.probability.toFixed(4)}`;
  const really = call.isRight ? 'which is right' : `and it was ${call.trueAction}`;
  const severity = call.severity === undefined ? '' : `, severity ${call.severity.toPrecision(3)}`;
  const unsafe = call.unsafe.length > 0 ? `; unsafe: ${call.unsafe.join(', ')}` : '';
  return `${said}, ${really}${severity}${unsafe}; asked ${call.checks.join(' ')}`;
}
