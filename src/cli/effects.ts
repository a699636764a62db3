import { requestOf } from '../diagnosis/belief/channel.ts';
import { type Hypothesis, hypothesesOf } from '../diagnosis/belief/hypotheses.ts';
import { type Piece, piecesOf, severityAt } from '../diagnosis/belief/piece.ts';
import { figureOf } from '../diagnosis/judgements.ts';
import { setUp } from '../plant/plant.ts';
import { type PlantReading, UNKNOWNS } from '../plant/types.ts';
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
  | { readonly kind: 'answer'; readonly answer: string }
);

/** Shares below this are not worth a row. */
const SMALLEST_SHARE = 0.01;
/** Nine in ten of a normal lie within so many standard deviations. */
const NINE_IN_TEN = 1.645;

export function effectRows(around: Around, ready: Ready, main: readonly string[]): EffectRow[] {
  const { catalog } = around;
  const { choice, system } = ready;
  const plant = setUp(choice.input, choice.spreads);
  const checks = ready.checks.filter(({ id }) => main.includes(id));
  const here = hypothesesOf(catalog, system).filter((one) => one.choice === 0);
  return here.flatMap((hypothesis) =>
    piecesOf(hypothesis, plant, SMALLEST_SHARE).map((piece) => ({
      hypothesis,
      severity: severityAt(hypothesis, piece.stratum, 0),
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
  return [{ check, kind: 'value', regime: centre.regime, ...spanOf(around, { piece, check, centre }) }];
}

interface Centred {
  readonly piece: Piece;
  readonly check: Check;
  readonly centre: Extract<PlantReading, { kind: 'value' }>;
}

/** Middle, low and high end: in proportion where the reading has a size, else as it is. */
function spanOf({ catalog }: Around, { piece, check, centre }: Centred) {
  const value = Math.max(0, centre.value);
  const least = LEAST_READING;
  let variance = modelError(catalog, centre.regime) ** 2;
  for (const axis of [...UNKNOWNS, ...(piece.hasSeverity ? (['severity'] as const) : [])]) {
    const moved = piece.stateAt(axis, 1).read(requestOf(check));
    if (moved.kind !== 'value') continue;
    variance += Math.log(Math.max(least, moved.value) / Math.max(least, value)) ** 2;
  }
  const times = Math.exp(NINE_IN_TEN * Math.sqrt(variance));
  return { value, low: value / times, high: value * times };
}
/** Below this a reading is nothing in any unit of the checks: microamperes, microvolts, micro-ohms, picofarads. */
const LEAST_READING = 1e-9;

function modelError({ judgements }: Around['catalog'], regime: string): number {
  return regime === 'static' ? 0 : figureOf(judgements, 'model-error', regime);
}

/** Share of the sites with a fault (in one variant) on which the motor starts. */
export function startShare(rows: readonly EffectRow[]): number {
  const all = rows.reduce((sum, row) => sum + row.share, 0);
  return rows.filter((row) => row.mode.starts).reduce((sum, row) => sum + row.share, 0) / all;
}
