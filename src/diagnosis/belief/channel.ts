import {
  type PlantReading,
  type PlantState,
  type ReadingRequest,
  type UnknownName,
  WATER_UNKNOWNS,
} from '../../plant/types.ts';
import type { Check } from '../../schema/check.ts';
import type { Fault } from '../../schema/fault.ts';
import { figure, figureOf } from '../judgements.ts';
import type { Knowledge } from '../knowledge.ts';
import { type MeterClass, meterScale } from '../windows/meter.ts';
import { AXIS_COUNT, axisOf } from './dimensions.ts';
import type { Line } from './gaussian.ts';
import { signsOf } from './hypotheses.ts';
import type { Piece } from './piece.ts';
import { type ScaleShape, toScale } from './scale.ts';

/**
 * What one piece says one check will read: a line on the common scale, or a probability for each
 * answer, or nothing.
 */
export type Channel =
  | {
      readonly kind: 'number';
      readonly line: Line;
      readonly scale: ScaleShape;
      readonly top: number | undefined;
    }
  | { readonly kind: 'answers'; readonly probability: Readonly<Record<string, number>> }
  | { readonly kind: 'silent' };

const SILENT: Channel = { kind: 'silent' };
const SEVERITY_STEP = 1.2;

/**
 * How far each unknown is moved to find a slope. Lengths, ohms and capacitance act almost in
 * proportion, so one side is enough; volts and load bend. Breakaway torque decides the mode and
 * nothing else, and the mode is forced.
 */
interface Reach {
  readonly step: number;
  readonly bothWays: boolean;
  readonly onlyPowered: boolean;
}

const REACHES: readonly (readonly [UnknownName, Reach])[] = [
  ['dropLength', { step: 1, bothWays: false, onlyPowered: false }],
  ['volts', { step: 1, bothWays: true, onlyPowered: true }],
  ['load', { step: 1, bothWays: true, onlyPowered: true }],
  ['mainOhms', { step: 1, bothWays: false, onlyPowered: false }],
  ['startOhms', { step: 1, bothWays: false, onlyPowered: false }],
  ['startCapacitor', { step: 1, bothWays: false, onlyPowered: false }],
  ['insulation', { step: 1, bothWays: false, onlyPowered: false }],
];

/** Level, yield and the rest bend the water readings, and move no other. */
const WATER_REACHES: typeof REACHES = WATER_UNKNOWNS.map((name) => [
  name,
  { step: 1, bothWays: false, onlyPowered: false },
]);

export function channelOf(
  knowledge: Knowledge,
  check: Check,
  asked: { piece: Piece; meter: MeterClass; base?: Channel | undefined },
): Channel {
  const { piece, meter } = asked;
  if ('sumTest' in check.predict) return SILENT;
  const signs = signsOf(piece.hypothesis, check.id);
  if ('signs' in check.predict || signs.length > 0) return signsChannel(knowledge, check, signs);
  const request = requestOf(check);
  const centre = piece.stateAt('centre', 0).read(request);
  if (centre.kind === 'none') return SILENT;
  if (centre.kind === 'answer') return answersChannel(check, piece, request);
  return numberChannel(knowledge, {
    check,
    piece,
    request,
    centre,
    scale: meterScale(knowledge, check, meter),
    base: asked.base,
  });
}

/** How the plant is asked for a check: the site that the check needs is the site of the reading. */
export function requestOf(check: Check): ReadingRequest {
  const { site } = check;
  return {
    at: check.at,
    predict: check.predict,
    site: {
      powered: site.supply !== 'locked',
      calling: site.supply !== 'locked' || site.calling === true,
      leads: site.leads === 'lifted' || site.leads === 'split' ? site.leads : 'connected',
      cooled: site.cooled,
    },
  };
}

interface NumberAsked {
  readonly check: Check;
  readonly piece: Piece;
  readonly request: ReadingRequest;
  readonly centre: Extract<PlantReading, { kind: 'value' }>;
  readonly scale: { shape: ScaleShape; top: number | undefined };
  /** Prediction whose slopes hold here too; only the severity is this piece's own. */
  readonly base: Channel | undefined;
}

function numberChannel(knowledge: Knowledge, asked: NumberAsked): Channel {
  const { piece, request, centre, scale } = asked;
  const slopes = new Float64Array(AXIS_COUNT);
  const z = (state: PlantState): number | undefined => {
    const reading = state.read(request);
    return reading.kind === 'value' ? toScale(reading.value, scale.shape) : undefined;
  };
  const middle = toScale(centre.value, scale.shape);
  const fill = (axis: UnknownName | 'severity' | 'causeSeverity', reach: Reach): void => {
    const up = z(piece.stateAt(axis, reach.step));
    const down = reach.bothWays ? z(piece.stateAt(axis, -reach.step)) : undefined;
    slopes[axisOf(axis)] = slope({ up, down, middle, step: reach.step });
  };
  const powered = request.site.powered;
  const reaches = 'water' in request.predict ? WATER_REACHES : REACHES;
  if (asked.base?.kind === 'number') slopes.set(asked.base.line.slopes);
  else for (const [axis, reach] of reaches) if (powered || !reach.onlyPowered) fill(axis, reach);
  if (piece.hasSeverity) fill('severity', { step: SEVERITY_STEP, bothWays: true, onlyPowered: false });
  if (piece.hasCauseSeverity)
    fill('causeSeverity', { step: SEVERITY_STEP, bothWays: true, onlyPowered: false });
  addModelError(knowledge, asked, slopes);
  return { kind: 'number', line: { centre: middle, slopes }, scale: scale.shape, top: scale.top };
}

function slope(at: {
  up: number | undefined;
  down: number | undefined;
  middle: number;
  step: number;
}): number {
  const { up, down, middle, step } = at;
  if (up !== undefined && down !== undefined) return (up - down) / (2 * step);
  if (up !== undefined) return (up - middle) / step;
  if (down !== undefined) return (middle - down) / step;
  return 0;
}

/** Amps and watts of one regime share their model error; one shared axis keeps them from counting as many witnesses. */
function addModelError(knowledge: Knowledge, asked: NumberAsked, slopes: Float64Array): void {
  const { check, centre, scale } = asked;
  const reads = 'reads' in check.predict ? check.predict.reads : 'volts';
  const modelled = reads === 'amps' || reads === 'amps-at-start' || reads === 'watts';
  if (!modelled || centre.regime === 'static') return;
  const error = figureOf(knowledge.judgements, 'model-error', centre.regime);
  const axis = centre.regime === 'saturated' ? 'modelSaturated' : 'modelRunning';
  const up = toScale(centre.value * (1 + error), scale.shape);
  const down = toScale(centre.value * (1 - error), scale.shape);
  slopes[axisOf(axis)] = (up - down) / 2;
}

/**
 * A category that the plant derives, averaged over the piece, so that a near miss is no certainty. A
 * piece that is one of several strata is narrow enough to be its middle.
 */
function answersChannel(check: Check, piece: Piece, request: ReadingRequest): Channel {
  const answers = 'answers' in check.reads ? check.reads.answers : [];
  const states: PlantState[] = [piece.stateAt('centre', 0)];
  if (piece.hasSeverity && !piece.isStratum)
    states.push(piece.stateAt('severity', SEVERITY_STEP), piece.stateAt('severity', -SEVERITY_STEP));
  const share = 1 / states.length;
  const probability: Record<string, number> = Object.fromEntries(answers.map((answer) => [answer, 0]));
  for (const state of states) {
    const reading = state.read(request);
    if (reading.kind !== 'answer') return SILENT;
    probability[reading.answer] = (probability[reading.answer] ?? 0) + share;
  }
  return { kind: 'answers', probability };
}

/** A category that faults carry signs for; a fault without a sign shows what a sound system shows. */
function signsChannel(knowledge: Knowledge, check: Check, own: NonNullable<Fault['signs']>): Channel {
  if (!('answers' in check.reads)) return SILENT;
  const { answers } = check.reads;
  const signs = own.length > 0 ? own : (check.usual ?? []);
  if (signs.length === 0 && check.expected === undefined) return SILENT;
  const given: Record<string, number> = {};
  for (const sign of signs) given[sign.answer] = figureOf(knowledge.judgements, 'frequency-words', sign.how);
  if (signs.length === 0 && check.expected !== undefined) {
    given[check.expected] = figure(knowledge.judgements, 'sound-shows-expected');
  }
  return { kind: 'answers', probability: spread(answers, given, check.expected) };
}

/**
 * Probabilities of all answers from those that are given: what is left falls to the expected answer
 * where it is not given itself, else evenly to the others; then all are scaled to one.
 */
function spread(
  answers: readonly string[],
  given: Readonly<Record<string, number>>,
  expected: string | undefined,
): Record<string, number> {
  const open = answers.filter((answer) => given[answer] === undefined);
  const sum = Object.values(given).reduce((total, one) => total + one, 0);
  const rest = Math.max(0, 1 - sum);
  const takes = expected !== undefined && open.includes(expected) ? [expected] : open;
  const all = answers.map((answer): [string, number] => [
    answer,
    given[answer] ?? (takes.includes(answer) ? rest / takes.length : 0),
  ]);
  const total = all.reduce((running, [, one]) => running + one, 0) || 1;
  return Object.fromEntries(all.map(([answer, one]) => [answer, one / total]));
}
