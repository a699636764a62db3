import { type Channel, channelOf } from '../diagnosis/belief/channel.ts';
import { project } from '../diagnosis/belief/gaussian.ts';
import { below } from '../diagnosis/belief/normal.ts';
import { toScale } from '../diagnosis/belief/scale.ts';
import type { Check, Instrument } from '../schema/check.ts';
import type { Site } from './separate-sites.ts';

/**
 * What would each fault show for a check, as shares of a few dozen bins, and how often does the check
 * tell two faults apart?
 *
 * The bins are the answers of a category, or stretches of the common scale with over-range as the
 * last. A variant is the mixture of its pieces: strata of severity, modes of the plant, each with the
 * spread of its Gaussian and the error of the meter. Told apart is the total variation of two such
 * mixtures: 0 when they show the same, 1 when never; two normals two deviations apart give 0.68.
 *
 * @source method: total variation distance; bins can only make it smaller
 */
export interface Shown {
  /** Row of each hypothesis of the model; equal rows show the same. */
  readonly rowOf: Int32Array;
  readonly rows: readonly Row[];
  /** What an answer loses because people mishear and misread. */
  readonly trust: number;
}

interface Row {
  /** Share of the cases in which anything is shown at all. */
  readonly talks: number;
  /** Shares of the bins, summing to one. */
  readonly bins: Float64Array;
}

export type ShownFor = (check: Check) => Shown;

export function shownAt({ model, catalog }: Site): ShownFor {
  return (check) => {
    const channels = model.pieces.map((piece, index) =>
      check.benchOnly === true
        ? channelOf(model.knowledge, check, { piece, meter: 'bench', base: undefined })
        : model.channel(index, check.id),
    );
    const trust = trustIn(catalog.instruments[check.instrument], check);
    return { ...mixtures(model, channels), trust };
  };
}

type Pieces = Site['model'];

/** Adds up the pieces of each hypothesis; hypotheses of the same pieces share a row. */
function mixtures({ pieces, owner, hypotheses }: Pieces, channels: readonly Channel[]) {
  const parts = new Map<Channel, { readonly number: number; readonly bins: Float64Array | undefined }>();
  const binned = binsFor(pieces, channels);
  const made = hypotheses.map(() => ({ key: '', share: 0, of: new Map<Channel, number>() }));
  channels.forEach((channel, index) => {
    if (!parts.has(channel)) parts.set(channel, { number: parts.size, bins: binned(index) });
    const one = made[owner[index]!]!;
    const share = pieces[index]!.share;
    one.share += share;
    one.of.set(channel, (one.of.get(channel) ?? 0) + share);
  });
  const rows: Row[] = [];
  const numbers = new Map<string, number>();
  const rowOf = Int32Array.from(made, ({ of, share }) => {
    const key = [...of].map(([channel, part]) => `${parts.get(channel)!.number} ${part / share}`).join(', ');
    const known = numbers.get(key);
    if (known !== undefined) return known;
    rows.push(
      mixed([...of].map(([channel, part]) => ({ bins: parts.get(channel)!.bins, part: part / share }))),
    );
    numbers.set(key, rows.length - 1);
    return rows.length - 1;
  });
  return { rowOf, rows };
}

function mixed(parts: readonly { bins: Float64Array | undefined; part: number }[]): Row {
  const talking = parts.flatMap(({ bins, part }) => (bins === undefined ? [] : [{ bins, part }]));
  const talks = talking.reduce((sum, { part }) => sum + part, 0);
  const sum = new Float64Array(talking[0]?.bins.length ?? 0);
  for (const { bins, part } of talking)
    for (let bin = 0; bin < sum.length; bin++) sum[bin] = sum[bin]! + (bins[bin]! * part) / talks;
  return { talks, bins: sum };
}

/** How the prediction of one piece falls into bins that all pieces share; nothing where it predicts nothing. */
function binsFor(pieces: Pieces['pieces'], channels: readonly Channel[]) {
  const answers = [
    ...new Set(channels.flatMap((one) => (one.kind === 'answers' ? Object.keys(one.probability) : []))),
  ];
  const normals = new Map<Channel, Normal>();
  channels.forEach((channel, index) => {
    if (channel.kind !== 'number' || normals.has(channel)) return;
    const { centre, variance } = project(pieces[index]!.start, channel.line);
    const top = channel.top === undefined ? Infinity : toScale(channel.top, channel.scale);
    normals.set(channel, { centre, deviation: Math.sqrt(variance), top });
  });
  const edges = edgesFor([...normals.values()]);
  return (index: number): Float64Array | undefined => {
    const channel = channels[index]!;
    if (channel.kind === 'answers')
      return Float64Array.from(answers, (answer) => channel.probability[answer] ?? 0);
    const normal = normals.get(channel);
    return normal === undefined ? undefined : normalIn(normal, edges);
  };
}

interface Normal {
  readonly centre: number;
  readonly deviation: number;
  /** Where the display ends, on the common scale. */
  readonly top: number;
}

const EDGES_AT = [-2, -1, -0.5, 0, 0.5, 1, 2] as const;
/** Meter errors between two edges, at first; as many edges as this are quick enough. */
const LEAST_GAP = 0.4;
const EDGES_MOST = 160;

/** Close together where predictions are, none where nothing is predicted. */
function edgesFor(normals: readonly Normal[]): number[] {
  const all = normals
    .flatMap(({ centre, deviation, top }) => EDGES_AT.map((at) => Math.min(top, centre + at * deviation)))
    .sort((one, other) => one - other);
  for (let gap = LEAST_GAP; ; gap *= 1.5) {
    const kept: number[] = [];
    for (const edge of all) if (edge - (kept.at(-1) ?? -Infinity) >= gap) kept.push(edge);
    if (kept.length <= EDGES_MOST) return kept;
  }
}

/** Shares between the edges; what lies above the display is the last bin. */
function normalIn({ centre, deviation, top }: Normal, edges: readonly number[]): Float64Array {
  const at = (edge: number): number => below((Math.min(edge, top) - centre) / deviation);
  const bins = new Float64Array(edges.length + 2);
  let before = 0;
  edges.forEach((edge, bin) => {
    const now = at(edge);
    bins[bin] = now - before;
    before = now;
  });
  const shown = at(Infinity);
  bins[edges.length] = shown - before;
  bins[edges.length + 1] = 1 - shown;
  return bins;
}

/** An answer is as good as the best person who gives it. */
function trustIn(instrument: Instrument | undefined, check: Check): number {
  if (!('answers' in check.reads) || instrument?.reliability === undefined) return 1;
  const right = instrument.reliability.qualified ?? 1;
  return right - (1 - right) / (check.reads.answers.length - 1);
}

/** How far apart two rows are, 0 to 1. */
export function toldApart({ rows, trust }: Shown, one: number, other: number): number {
  if (one === other) return 0;
  const [a, b] = [rows[one]!, rows[other]!];
  if (a.talks === 0 || b.talks === 0) return 0;
  let sum = 0;
  for (let bin = 0; bin < a.bins.length; bin++) sum += Math.abs(a.bins[bin]! - b.bins[bin]!);
  return (sum / 2) * Math.min(a.talks, b.talks) * trust;
}
