import type { Channel } from '../../diagnosis/belief/channel.ts';
import { AXIS_COUNT } from '../../diagnosis/belief/dimensions.ts';
import { project, standard } from '../../diagnosis/belief/gaussian.ts';
import { toScale } from '../../diagnosis/belief/scale.ts';
import type { Judgements } from '../../diagnosis/judgements.ts';

/**
 * Which of these faults would a reading tell apart for sure?
 *
 * Two numbers are told apart when their distance on the common scale leaves each less than one chance in
 * a hundred to be taken for the other; numbers that are bridged by others between them stay together.
 * An answer tells apart what gives it nearly always.
 */
export interface Alike {
  readonly judgements: Judgements;
  actionOf(hypothesis: number): string;
  channelOf(hypothesis: number, check: string): Channel;
}

/** Deviations beyond which one of a hundred lies. */
const APART = 2.33;
const NEARLY_ALWAYS = 0.9;

/** What is left, parted by the readings of one round; parts in the order of their first member. */
export function classesOf(alike: Alike, left: readonly number[], checks: readonly string[]): number[][] {
  return checks.reduce<number[][]>(
    (parts, check) => parts.flatMap((part) => partedBy(alike, part, check)),
    [[...left]],
  );
}

function partedBy(alike: Alike, left: readonly number[], check: string): number[][] {
  const shown = left.map((hypothesis) => ({ hypothesis, ...shownBy(alike.channelOf(hypothesis, check)) }));
  if (shown.some(({ kind }) => kind === 'nothing')) return [[...left]];
  const parts: number[][] = [];
  const answers = new Map<string, number[]>();
  let reach = Number.NEGATIVE_INFINITY;
  for (const one of shown.sort((a, b) => a.low - b.low || a.hypothesis - b.hypothesis)) {
    if (one.kind === 'answer') {
      answers.set(one.answer, [...(answers.get(one.answer) ?? []), one.hypothesis]);
      continue;
    }
    if (one.low > reach || parts.length === 0) parts.push([]);
    parts.at(-1)!.push(one.hypothesis);
    reach = Math.max(reach, one.high);
  }
  return [...parts, ...answers.values()];
}

interface Shown {
  readonly kind: 'number' | 'answer' | 'nothing';
  readonly low: number;
  readonly high: number;
  readonly answer: string;
}

function shownBy(channel: Channel): Shown {
  const nothing: Shown = { kind: 'nothing', low: 0, high: 0, answer: '' };
  if (channel.kind === 'silent') return nothing;
  if (channel.kind === 'answers') {
    const sure = Object.entries(channel.probability).find(([, share]) => share >= NEARLY_ALWAYS);
    return sure === undefined ? nothing : { kind: 'answer', low: 0, high: 0, answer: sure[0] };
  }
  const { centre, variance } = project(standard(AXIS_COUNT), channel.line);
  const top = channel.top === undefined ? Number.POSITIVE_INFINITY : toScale(channel.top, channel.scale);
  const wide = APART * Math.sqrt(variance);
  if (centre - wide > top)
    return { kind: 'number', low: Number.MAX_VALUE, high: Number.MAX_VALUE, answer: '' };
  return { kind: 'number', low: centre - wide, high: centre + wide, answer: '' };
}
