import { quantile } from '../clock.ts';
import type { Figures, PlayFigures, YardstickFigures } from './figures.ts';
import type { PlayName } from './jobs.ts';
import type { CallResult } from './play-job.ts';
import { mean } from './statistics.ts';

/** The figures as a table that a person reads; every share with what it was counted from. */
export function figuresText(figures: Figures, results: readonly CallResult[]): string {
  const engine = results.filter((one) => one.order === 'engine');
  return [
    `content ${figures.contentVersion}, seed ${figures.seed}, ${figures.calls} calls, proposals by ${figures.by}`,
    ...(['clean', 'noisy', 'mismatch'] as const).flatMap((play) => [
      ...playLines(`${play}, by prior`, figures[play]),
      ...playLines(`${play}, every fault alike`, figures.uniform[play]),
    ]),
    'yardsticks: the same belief and verdict rule, checks in another order',
    yardstickLine('the catalogue in order', figures.catalogueOrder),
    yardstickLine('a competent fixed sequence', figures.fixedSequence),
    yardstickLine('at random', figures.random),
    ...optimumLines(figures.optimum),
    ...visitLines(engine),
    ...shareLines('found first by instrument left behind, noisy', engine, (one) => one.missing),
    ...shareLines('found first by box family or kind', engine, (one) => one.row.split(',')[0]),
    ...faultLines(engine),
    'worst calls',
    ...figures.worst.map(
      ({ fault, installation, minutes, why }) =>
        `  ${fault} | ${installation} | ${minutes.toFixed(0)} min | ${why}`,
    ),
  ].join('\n');
}

const percent = (share: number): string => `${(100 * share).toFixed(share > 0 && share < 0.01 ? 2 : 1)} %`;
const of = (share: number, n: number): string => `${percent(share)} (${Math.round(share * n)} of ${n})`;

function playLines(name: string, play: PlayFigures | null): string[] {
  if (play === null) return [`${name}: not played`];
  const { n } = play;
  return [
    `${name}: ${n} calls`,
    `  found first ${of(play.foundFirst, n)}, in the visit ${of(play.foundInVisit, n)}`,
    `  wrong pull ${of(play.wrongPull, n)}, at most ${percent(play.wrongPullUpper95)} at 95 %`,
    `  minutes ${play.minutesMean.toFixed(1)}, one in ten over ${play.minutesP90.toFixed(1)}`,
    `  checks ${play.checksMean.toFixed(1)}, energised ${play.energisedMean.toFixed(2)}, unsafe ${play.unsafe}`,
    `  stated → held: ${play.calibration.map((bin) => `${percent(bin.stated)} → ${of(bin.held, bin.n)}`).join('; ')}`,
  ];
}

function yardstickLine(name: string, figures: YardstickFigures | null): string {
  if (figures === null) return `  ${name}: not measured`;
  const { minutesMean, engineMinutesMean, foundFirst, n } = figures;
  const share = percent(engineMinutesMean / minutesMean);
  return `  ${name}: ${minutesMean.toFixed(1)} min, found first ${of(foundFirst, n)}; the engine takes ${engineMinutesMean.toFixed(1)} min there, ${share} of it`;
}

function optimumLines(optimum: Figures['optimum']): string[] {
  if (optimum === null) return ['  exact tree: not measured'];
  return optimum.map(({ set, ratio, engineMinutes, exactMinutes, faults, notNamed }) => {
    const minutes = `${engineMinutes.toFixed(1)} min against ${exactMinutes.toFixed(1)} of the exact tree`;
    const missed = notNamed.length === 0 ? '' : `; not named there: ${notNamed.join(', ')}`;
    return `  ${set} (${faults} faults): ${ratio.toFixed(3)}, ${minutes}${missed}`;
  });
}

/** What the visits after the verdict showed, and what else was watched. */
function visitLines(calls: readonly CallResult[]): string[] {
  const visits = calls.flatMap((one) => one.visit ?? []);
  const count = (holds: (visit: (typeof visits)[number]) => boolean): number => visits.filter(holds).length;
  const wrong = calls.filter((one) => one.advises && !one.isRight).length;
  const proved = calls.filter((one) => one.isRight && one.visit?.proved === true).length;
  const failed = calls.flatMap((one) =>
    one.advises && !one.isRight && one.visit !== undefined ? [one.visit.minutes - one.minutes] : [],
  );
  const doubts = visits.flatMap((one) => one.proofDoubts);
  return [
    timeLine(calls),
    'after the verdict',
    `  wrong repairs ${wrong}: proof looked right after ${count((one) => one.proofMissed)}, the same advised again after ${count((one) => one.saidSameAgain)}`,
    `  a failed repair, its proof and the search after it: ${meanOf(failed)} min more`,
    `  right repairs proved ${proved}: proof looked wrong after ${count((one) => one.proofDoubts.length > 0)} ${mostFrequent(doubts)}`,
    `  readings taken again ${sumOf(calls, (one) => one.retakes)}, of these with the site not ready ${sumOf(calls, (one) => one.unreadyRetakes)}`,
    `  repairs advised with a hard rule owed: ${calls.filter((one) => one.advises && one.owed.length > 0).length} ${mostFrequent(calls.filter((one) => one.advises).flatMap((one) => one.owed))}`,
    `  not named, though the leading repair was right: ${calls.filter((one) => !one.advises && one.isRight).length} ${mostFrequent(calls.filter((one) => !one.advises && one.isRight).map((one) => `${one.kind} ${one.action}`))}`,
    `  a dead check within a fifth of the live one chosen: ${calls.filter((one) => one.deadOverlooked > 0).length} calls`,
  ];
}

const meanOf = (numbers: readonly number[]): string =>
  numbers.length === 0 ? 'no' : mean(numbers).toFixed(0);

function timeLine(calls: readonly CallResult[]): string {
  if (calls.length === 0) return 'time of a call: not measured';
  const times = calls.map((one) => one.milliseconds);
  const slow = times.filter((one) => one > SLOW).length;
  return `time of a call on its core: mean ${mean(times).toFixed(0)} ms, 95 in 100 under ${quantile(times, 0.95).toFixed(0)} ms; over ${SLOW} ms ${of(slow / times.length, times.length)}`;
}

const SLOW = 2000;

const sumOf = (calls: readonly CallResult[], what: (call: CallResult) => number): number =>
  calls.reduce((sum, one) => sum + what(one), 0);

function mostFrequent(words: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  const most = [...counts].sort(([, one], [, other]) => other - one).slice(0, 6);
  return most.length === 0 ? '' : `(${most.map(([word, n]) => `${word} ${n}`).join(', ')})`;
}

type Key = (call: CallResult) => string | undefined;

function grouped(calls: readonly CallResult[], key: Key): [string, CallResult[]][] {
  const groups = new Map<string, CallResult[]>();
  for (const call of calls) {
    const name = key(call);
    if (name !== undefined) groups.set(name, [...(groups.get(name) ?? []), call]);
  }
  return [...groups];
}

function shareLines(title: string, calls: readonly CallResult[], key: Key): string[] {
  const lines = grouped(calls, key).map(([name, own]) => {
    const found = own.filter((one) => one.found).length;
    return `  ${name}: ${of(found / own.length, own.length)}`;
  });
  return lines.length === 0 ? [] : [title, ...lines];
}

const FAULTS_SHOWN = 25;

/** Faults found least often, all plays and both ways of drawing together, with what was said instead. */
function faultLines(calls: readonly CallResult[]): string[] {
  const plays: readonly PlayName[] = ['clean', 'noisy', 'mismatch'];
  const shareIn = (own: readonly CallResult[], play: PlayName): string => {
    const there = own.filter((one) => one.play === play);
    return `${play} ${there.filter((one) => one.found).length} of ${there.length}`;
  };
  return [
    'faults found first least often',
    ...grouped(calls, (one) => one.fault)
      .map(([fault, own]) => ({ fault, own, share: own.filter((one) => one.found).length / own.length }))
      .sort((one, other) => one.share - other.share)
      .slice(0, FAULTS_SHOWN)
      .map(({ fault, own }) => {
        const instead = own.filter((one) => !one.found).map((one) => `${one.kind} ${one.action}`);
        return `  ${fault}: ${plays.map((play) => shareIn(own, play)).join(', ')} ${mostFrequent(instead)}`;
      }),
  ];
}
