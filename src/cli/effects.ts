import { requestOf } from '../diagnosis/belief/channel.ts';
import { type Hypothesis, hypothesesOf, severityAt } from '../diagnosis/belief/hypotheses.ts';
import { type Marched, marginSlopes, type Piece, piecesOf } from '../diagnosis/belief/piece.ts';
import { figureOf } from '../diagnosis/judgements.ts';
import { meterLimits } from '../diagnosis/windows/meter.ts';
import { setUp } from '../plant/plant.ts';
import { type Plant, type PlantReading, UNKNOWNS } from '../plant/types.ts';
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

/** Shares below this are not worth a row. */
const SMALLEST_SHARE = 0.01;
const eachOf = (plant: Plant) => ({
  smallestShare: SMALLEST_SHARE,
  slopes: () => marginSlopes(plant),
  modes: (_: string, march: Marched) => march.modes(march.margins()),
});
/** Nine in ten of a normal lie within so many standard deviations. */
const NINE_IN_TEN = 1.645;
/** Nothing, where an instrument says nothing of its own error. */
const LEAST_READING = 1e-9;

export function effectRows(around: Around, ready: Ready, main: readonly string[]): EffectRow[] {
  const { catalog } = around;
  const { choice, system } = ready;
  const plant = setUp(choice.input, choice.spreads);
  const checks = ready.checks.filter(({ id }) => main.includes(id));
  const here = hypothesesOf(catalog, system).filter((one) => one.choice === 0 && one.cause === undefined);
  return here.flatMap((hypothesis) =>
    piecesOf(hypothesis, plant, eachOf(plant)).map((piece) => ({
      hypothesis,
      severity: severityAt(
        hypothesis.fault,
        { stratum: piece.stratum, strata: hypothesis.fault.severity?.strata ?? 1 },
        0,
      ),
      mode: piece.mode,
      share: piece.share,
      readings: checks.flatMap((check) => effectOn(around, piece, check)),
    })),
  );
}

function effectOn(around: Around, piece: Piece, check: Check): EffectReading[] {
  const request = requestOf(check);
  const centre = piece.stateAt('centre', 0).read(request);
  if (centre.kind === 'answer') return [{ check, kind: 'answer', answer: centre.answer }];
  if (centre.kind === 'none') return [];
  const { top, absolute } = meterLimits(around.catalog, check, 'ordinary');
  if (top !== undefined && centre.value > top) return [{ check, kind: 'open' }];
  const floor = Math.max(LEAST_READING, absolute);
  return [
    { check, kind: 'value', regime: centre.regime, ...spanOf(around, { piece, check, centre, floor }) },
  ];
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
  for (const axis of [...UNKNOWNS, ...(piece.hasSeverity ? (['severity'] as const) : [])]) {
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
