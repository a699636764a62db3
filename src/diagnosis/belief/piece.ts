import type { Injection, Margins, Mode, Plant, PlantState, UnknownName } from '../../plant/types.ts';
import { UNKNOWNS } from '../../plant/types.ts';
import { AXIS_COUNT, axisOf } from './dimensions.ts';
import { type Gaussian, type Line, onSide, standard } from './gaussian.ts';
import type { Hypothesis } from './hypotheses.ts';

/**
 * A hypothesis held in pieces: one for each stratum of its severity and each mode of the plant.
 *
 * A fault that spans decades, or that makes the motor start on one site and stall on the next, is no
 * single Gaussian; within one stratum and one mode it nearly is. The mode is forced when a piece is
 * asked, and its Gaussian is conditioned on the margin of that mode, so that "it did start" teaches
 * what the breakaway torque cannot be.
 */
export interface Piece {
  readonly hypothesis: Hypothesis;
  readonly stratum: number;
  readonly mode: Mode;
  /** Share of the hypothesis that this piece holds; the pieces of one hypothesis sum to one. */
  readonly share: number;
  readonly start: Gaussian;
  /** The plant in this piece with one axis moved; built when first asked for. */
  stateAt(axis: UnknownName | 'severity' | 'centre', step: number): PlantState;
  readonly hasSeverity: boolean;
}

/** Beyond this margin the other mode holds next to nothing: one standard deviation of a margin is about a half. */
const SURE = 3;

/** All pieces of a hypothesis whose share is worth holding. */
export function piecesOf(hypothesis: Hypothesis, plant: Plant, smallestShare: number): Piece[] {
  const strata = hypothesis.fault.severity?.strata ?? 1;
  const pieces: Piece[] = [];
  for (let stratum = 0; stratum < strata; stratum++) {
    for (const { mode, share, gaussian } of modesOf(hypothesis, plant, stratum)) {
      if (share < smallestShare) continue;
      pieces.push({
        hypothesis,
        stratum,
        mode,
        share: share / strata,
        start: gaussian,
        stateAt: statesOf(hypothesis, plant, { stratum, mode }),
        hasSeverity: hypothesis.fault.severity !== undefined,
      });
    }
  }
  return pieces;
}

/** Severity at a step of standard deviations from the middle of a stratum, in SI or as a factor. */
export function severityAt(hypothesis: Hypothesis, stratum: number, step: number): number | undefined {
  const severity = hypothesis.fault.severity;
  if (severity === undefined) return undefined;
  const middle = (stratum + 0.5) / severity.strata;
  const share = Math.min(1, Math.max(0, middle + step / (severity.strata * Math.sqrt(12))));
  const { low, high } = severity.span;
  return severity.scale === 'log' ? low * (high / low) ** share : low + (high - low) * share;
}

function injectionAt(hypothesis: Hypothesis, stratum: number, step: number): Injection {
  return { edits: hypothesis.edits, severity: severityAt(hypothesis, stratum, step) };
}

function statesOf(
  hypothesis: Hypothesis,
  plant: Plant,
  at: { stratum: number; mode: Mode },
): Piece['stateAt'] {
  const kept = new Map<string, PlantState>();
  return (axis, step) => {
    const key = `${axis}${step}`;
    const known = kept.get(key);
    if (known !== undefined) return known;
    const injection = injectionAt(hypothesis, at.stratum, axis === 'severity' ? step : 0);
    const unknowns = axis === 'severity' || axis === 'centre' ? {} : { [axis]: step };
    const state = plant.state(injection, unknowns, at.mode);
    kept.set(key, state);
    return state;
  };
}

interface ModeShare {
  readonly mode: Mode;
  readonly share: number;
  readonly gaussian: Gaussian;
}

function modesOf(hypothesis: Hypothesis, plant: Plant, stratum: number): ModeShare[] {
  const margins = plant.state(injectionAt(hypothesis, stratum, 0), {}).margins;
  const prior = standard(AXIS_COUNT);
  const startSure = certain(margins.start);
  const releaseSure = certain(margins.release);
  if (startSure && releaseSure) {
    return [
      { mode: { starts: margins.start > 0, releases: margins.release > 0 }, share: 1, gaussian: prior },
    ];
  }
  const slopes = marginSlopes(hypothesis, plant, { stratum, centre: margins });
  const start: Line = { centre: margins.start, slopes: slopes.start };
  const release: Line = { centre: margins.release, slopes: slopes.release };
  const stalls = split(prior, start, false, startSure ? Number(margins.start <= 0) : undefined);
  const starts = split(prior, start, true, startSure ? Number(margins.start > 0) : undefined);
  const lets = split(starts.gaussian, release, true, releaseSure ? Number(margins.release > 0) : undefined);
  const holds = split(
    starts.gaussian,
    release,
    false,
    releaseSure ? Number(margins.release <= 0) : undefined,
  );
  return [
    { mode: { starts: false, releases: false }, share: stalls.share, gaussian: stalls.gaussian },
    { mode: { starts: true, releases: true }, share: starts.share * lets.share, gaussian: lets.gaussian },
    { mode: { starts: true, releases: false }, share: starts.share * holds.share, gaussian: holds.gaussian },
  ];
}

const certain = (margin: number): boolean => !Number.isFinite(margin) || Math.abs(margin) > SURE;

function split(gaussian: Gaussian, margin: Line, above: boolean, sure: number | undefined) {
  return sure === undefined ? onSide(gaussian, margin, above) : { gaussian, share: sure };
}

/** Margins move almost in proportion, so one side is enough. */
function marginSlopes(hypothesis: Hypothesis, plant: Plant, at: { stratum: number; centre: Margins }) {
  const start = new Float64Array(AXIS_COUNT);
  const release = new Float64Array(AXIS_COUNT);
  const fill = (axis: UnknownName | 'severity', moved: Margins, reach: number): void => {
    start[axisOf(axis)] = slopeOf(moved.start, at.centre.start, reach);
    release[axisOf(axis)] = slopeOf(moved.release, at.centre.release, reach);
  };
  const injection = injectionAt(hypothesis, at.stratum, 0);
  for (const axis of UNKNOWNS) fill(axis, plant.state(injection, { [axis]: 1 }).margins, 1);
  if (hypothesis.fault.severity !== undefined) {
    fill('severity', plant.state(injectionAt(hypothesis, at.stratum, 1), {}).margins, 1);
  }
  return { start, release };
}

function slopeOf(moved: number, centre: number, reach: number): number {
  return Number.isFinite(moved) && Number.isFinite(centre) ? (moved - centre) / reach : 0;
}
