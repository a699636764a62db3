import type { Injection, Margins, Mode, Plant, PlantState, UnknownName } from '../../plant/types.ts';
import { UNKNOWNS } from '../../plant/types.ts';
import { AXIS_COUNT, axisOf } from './dimensions.ts';
import { type Gaussian, type Line, onSide, standard } from './gaussian.ts';
import { type Hypothesis, injectionOf, severityAt, touched } from './hypotheses.ts';

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
  stateAt(axis: Moved, step: number): PlantState;
  readonly hasSeverity: boolean;
  /** One of several strata of its severity. */
  readonly isStratum: boolean;
  /** It has a cause beside it that may have gone more or less far. */
  readonly hasCauseSeverity: boolean;
}

/** What one state of a piece has moved. */
type Moved = UnknownName | 'severity' | 'causeSeverity' | 'centre';

/** Beyond this margin the other mode holds next to nothing: one standard deviation of a margin is about a half. */
const SURE = 3;

export interface PiecesAsked {
  readonly smallestShare: number;
  /** How the margins of the sound installation move; asked for once a margin is near. */
  slopes(): MarginSlopes;
  /**
   * Modes are a matter of the electrical side: hypotheses that touch it alike share them. (The load that
   * a water fault leaves moves the margin of the release by less than its spread.)
   */
  modes(electrical: string, make: Marched): readonly ModeShare[];
}

/** What a march from standstill costs: its margins first, its modes only where they are not known yet. */
export interface Marched {
  margins(): Margins;
  modes(margins: Margins): readonly ModeShare[];
}

/** All pieces of a hypothesis whose share is worth holding. */
export function piecesOf(hypothesis: Hypothesis, plant: Plant, asked: PiecesAsked): Piece[] {
  const strata = hypothesis.fault.severity?.strata ?? 1;
  const pieces: Piece[] = [];
  for (let stratum = 0; stratum < strata; stratum++) {
    const modes = asked.modes(touched(hypothesis, stratum).electrical, {
      margins: () => plant.state(injectionAt(hypothesis, stratum, 0), {}).margins,
      modes: (margins) => modesOf(hypothesis, plant, { stratum, margins, sound: asked.slopes }),
    });
    for (const { mode, share, gaussian } of modes) {
      if (share < asked.smallestShare) continue;
      pieces.push({
        hypothesis,
        stratum,
        mode,
        share: share / strata,
        start: gaussian,
        stateAt: statesOf(hypothesis, plant, { stratum, mode }),
        hasSeverity: hypothesis.fault.severity !== undefined,
        isStratum: strata > 1,
        hasCauseSeverity: hypothesis.cause?.fault.severity !== undefined,
      });
    }
  }
  return pieces;
}

function injectionAt(hypothesis: Hypothesis, stratum: number, step: number, causeStep = 0): Injection {
  const strata = hypothesis.fault.severity?.strata ?? 1;
  return injectionOf(hypothesis, severityAt(hypothesis.fault, { stratum, strata }, step), causeStep);
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
    const injection = injectionAt(
      hypothesis,
      at.stratum,
      axis === 'severity' ? step : 0,
      axis === 'causeSeverity' ? step : 0,
    );
    const isUnknown = axis !== 'severity' && axis !== 'causeSeverity' && axis !== 'centre';
    const unknowns = isUnknown ? { [axis]: step } : {};
    const state = plant.state(injection, unknowns, at.mode);
    kept.set(key, state);
    return state;
  };
}

export interface ModeShare {
  readonly mode: Mode;
  readonly share: number;
  readonly gaussian: Gaussian;
}

function modesOf(
  hypothesis: Hypothesis,
  plant: Plant,
  at: { stratum: number; margins: Margins; sound(): MarginSlopes },
): ModeShare[] {
  const { stratum, margins } = at;
  const prior = standard(AXIS_COUNT);
  const startSure = certain(margins.start);
  const releaseSure = certain(margins.release);
  if (startSure && releaseSure) {
    return [
      { mode: { starts: margins.start > 0, releases: margins.release > 0 }, share: 1, gaussian: prior },
    ];
  }
  const slopes = ownSlopes(hypothesis, plant, { stratum, margins, sound: at.sound() });
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

/** How the margins of a sound installation move with each unknown. */
export interface MarginSlopes {
  readonly start: Float64Array;
  readonly release: Float64Array;
}

/** Margins move almost in proportion, so one side is enough. */
export function marginSlopes(plant: Plant): MarginSlopes {
  const sound: Injection = { edits: [], severity: undefined };
  const centre = plant.state(sound, {}).margins;
  const start = new Float64Array(AXIS_COUNT);
  const release = new Float64Array(AXIS_COUNT);
  for (const axis of UNKNOWNS) {
    const moved = plant.state(sound, { [axis]: 1 }).margins;
    start[axisOf(axis)] = slopeOf(moved.start, centre.start);
    release[axisOf(axis)] = slopeOf(moved.release, centre.release);
  }
  return { start, release };
}

/**
 * What moves the margins of a faulted one moves them as it would the sound one: volts, load and
 * breakaway act alike whatever is wrong. Only the severity is the fault's own.
 */
function ownSlopes(
  hypothesis: Hypothesis,
  plant: Plant,
  at: { stratum: number; margins: Margins; sound: MarginSlopes },
): MarginSlopes {
  const start = Float64Array.from(at.sound.start);
  const release = Float64Array.from(at.sound.release);
  if (hypothesis.fault.severity !== undefined) {
    const moved = plant.state(injectionAt(hypothesis, at.stratum, 1), {}).margins;
    start[axisOf('severity')] = slopeOf(moved.start, at.margins.start);
    release[axisOf('severity')] = slopeOf(moved.release, at.margins.release);
  }
  return { start, release };
}

function slopeOf(moved: number, centre: number): number {
  return Number.isFinite(moved) && Number.isFinite(centre) ? moved - centre : 0;
}
