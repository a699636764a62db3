import { requestOf } from '../diagnosis/belief/channel.ts';
import { type Hypothesis, severityAt, signsOf } from '../diagnosis/belief/hypotheses.ts';
import { buildModel } from '../diagnosis/belief/model.ts';
import type { Piece } from '../diagnosis/belief/piece.ts';
import { figureOf } from '../diagnosis/judgements.ts';
import { meterLimits } from '../diagnosis/windows/meter.ts';
import { type PlantReading, UNKNOWNS, WATER_UNKNOWNS } from '../plant/types.ts';
import type { Check } from '../schema/check.ts';
import type { Around } from './command.ts';
import type { Ready } from './installation.ts';

/**
 * What does every fault do to the main readings of one installation?
 *
 * A fault is shown in the same pieces that belief holds: one for each stratum of its severity and each
 * mode of the plant, with the share of installations that end in that mode. So a motor that starts on
 * one site and stalls on the next has two rows, each with its probability. Every number carries the
 * span that nine sound installations in ten would show with this fault: what is unknown of the
 * installation, what is left of the severity, and the error of the model in this regime.
 */
export interface EffectRow {
  readonly hypothesis: Hypothesis;
  /** In SI or as a factor; undefined where the fault has none. */
  readonly severity: number | undefined;
  readonly mode: Piece['mode'];
  /** Share of the sites with this fault. */
  readonly share: number;
  readonly readings: readonly EffectReading[];
}

export type EffectReading = { readonly check: Check } & (
  | {
      readonly kind: 'value';
      readonly value: number;
      readonly low: number;
      readonly high: number;
      readonly regime: string;
    }
  | { readonly kind: 'open' }
  | { readonly kind: 'answer'; readonly answer: string }
);

/** Nine in ten of a normal lie within so many standard deviations. */
const NINE_IN_TEN = 1.645;
/** Nothing, where an instrument says nothing of its own error. */
const LEAST_READING = 1e-9;

/** Readings that every fault is shown by, and those that only the water side moves. */
export interface Wanted {
  readonly main: readonly string[];
  readonly water: readonly string[];
}

export function effectRows(around: Around, ready: Ready, wanted: Wanted): EffectRow[] {
  const { pieces } = buildModel(around.catalog, ready.system, 'ordinary');
  return pieces
    .filter(({ hypothesis }) => hypothesis.choice === 0 && hypothesis.cause === undefined)
    .map((piece) => {
      const { hypothesis, stratum, mode, share } = piece;
      const { fault } = hypothesis;
      const ids = [...wanted.main, ...(isWet(hypothesis) ? wanted.water : [])];
      const checks = ready.checks.filter(({ id }) => ids.includes(id));
      const strata = fault.severity?.strata ?? 1;
      return {
        hypothesis,
        severity: severityAt(fault, { stratum, strata }, 0),
        mode,
        share,
        readings: checks.flatMap((check) => effectOn(around, piece, check)),
      };
    });
}

/** A fault of the water side, or the sound system that it is compared with. */
const isWet = ({ water, fault }: Hypothesis): boolean => water.length > 0 || fault.verdict === 'normal';

function effectOn(around: Around, piece: Piece, check: Check): EffectReading[] {
  const signed = likeliestSign(around, piece, check);
  if (signed !== undefined) return [{ check, kind: 'answer', answer: signed }];
  const centre = piece.stateAt('centre', 0).read(requestOf(check));
  if (centre.kind === 'answer') return [{ check, kind: 'answer', answer: centre.answer }];
  if (centre.kind === 'none') return [];
  const { top, absolute } = meterLimits(around.catalog, check, 'ordinary');
  if (top !== undefined && centre.value > top) return [{ check, kind: 'open' }];
  const floor = Math.max(LEAST_READING, absolute);
  const { high, ...span } = spanOf(around, { piece, check, centre, floor });
  return [{ check, kind: 'value', regime: centre.regime, ...span, high: Math.min(high, top ?? high) }];
}

/** A sign stands where the plant would have answered. */
function likeliestSign({ catalog }: Around, piece: Piece, check: Check): string | undefined {
  const share = (how: string): number => figureOf(catalog.judgements, 'frequency-words', how);
  const [first, ...more] = signsOf(piece.hypothesis, check.id);
  return more.reduce(
    (best, one) => (best === undefined || share(one.how) > share(best.how) ? one : best),
    first,
  )?.answer;
}

interface Centred {
  readonly piece: Piece;
  readonly check: Check;
  readonly centre: Extract<PlantReading, { kind: 'value' }>;
  /** What the instrument cannot tell from nothing. */
  readonly floor: number;
}

/**
 * Middle, low and high end. What moves the reading down counts for the low end, what moves it up for
 * the high end: a stalled motor that might as well not fire its start branch is lopsided.
 */
function spanOf({ catalog }: Around, { piece, check, centre, floor }: Centred) {
  const size = (reading: PlantReading): number =>
    reading.kind === 'value' ? Math.log(Math.max(floor, reading.value)) : middle;
  const middle = Math.log(Math.max(floor, centre.value));
  const error = modelError(catalog, check, centre.regime) ** 2;
  let down = error;
  let up = error;
  const unknowns = 'water' in check.predict ? WATER_UNKNOWNS : UNKNOWNS;
  for (const axis of [...unknowns, ...(piece.hasSeverity ? (['severity'] as const) : [])]) {
    const moves = [-1, 1].map((step) => size(piece.stateAt(axis, step).read(requestOf(check))) - middle);
    down += Math.min(0, ...moves) ** 2;
    up += Math.max(0, ...moves) ** 2;
  }
  const value = centre.value > floor ? centre.value : 0;
  const low = Math.exp(middle - NINE_IN_TEN * Math.sqrt(down));
  return {
    value,
    low: value === 0 || low <= floor ? 0 : low,
    high: Math.exp(middle + NINE_IN_TEN * Math.sqrt(up)),
  };
}

/** Amps and watts come out of the motor model; volts and ohms do not. */
function modelError({ judgements }: Around['catalog'], check: Check, regime: string): number {
  const reads = 'reads' in check.predict ? check.predict.reads : 'volts';
  const isModelled = reads === 'amps' || reads === 'amps-at-start' || reads === 'watts';
  return isModelled && regime !== 'static' ? figureOf(judgements, 'model-error', regime) : 0;
}

/** Share of the sites with a fault (in one variant) on which the motor starts. */
export function startShare(rows: readonly EffectRow[]): number {
  const all = rows.reduce((sum, row) => sum + row.share, 0);
  return rows.filter((row) => row.mode.starts).reduce((sum, row) => sum + row.share, 0) / all;
}
