import type { WaterEdit } from '../../schema/water.ts';
import { atmosphereAt, headOf } from './column.ts';
import { type Hole, holeWith, type Pipe } from './pipe.ts';
import type { PressureSwitch } from './pressure-switch.ts';
import type { PumpEnd } from './pump.ts';
import type { Tank } from './tank.ts';
import type { WaterInjection, WaterInput } from './types.ts';
import { storageOf, type Well } from './well.ts';

/**
 * What do the edits of a fault do to the water system? The only interpreter of water edits there is.
 *
 * It turns a record and its edits into the parts that the formulas work on. A fault that needs a
 * special case here is a fault whose edits are wrong.
 *
 * What no edit says, and why:
 * - contacts of the switch (open, pitted, welded, insects, wet), a pump that is locked, drags or has
 *   worn its thrust bearing, a heat tape that leaks: they are edits of the electrical side;
 * - sand, a broken screen, slime, water falling in from a seam, a plain steel tank that has lost its air
 *   control: a look, an ear or a jar tells them, so their faults carry signs;
 * - chatter, a switch too far from its tank, the slam of a second check valve: waves of less than a
 *   second, and the formulas here are steady at every moment;
 * - a switch of the wrong kind: it reads as it should until it burns;
 * - a meter that is wrong: it belongs to the instrument.
 */
export interface WaterParts {
  readonly input: WaterInput;
  well: Well;
  bottom: number;
  pump: PumpEnd;
  readonly drop: Pipe;
  readonly line: Pipe;
  tank: Tank;
  /** Water stands at the air valve. */
  waterAtAirValve: boolean;
  switch: PressureSwitch;
  /** What the shaft finds when no water is moved; undefined when it is moved. */
  noLift: 'dry' | 'free' | undefined;
  parted: boolean;
  gas: number;
  readonly leaks: WaterLeak[];
  readonly closed: Set<Closed>;
  /** Pascals lost at class flow between tank and taps, clean filters included. */
  houseLoss: number;
  gauge: { readonly offset: number; readonly stuck: number | undefined };
  demand: number;
}

export type LeakPlace = Extract<WaterEdit, { edit: 'leak' }>['at'];
export type Closed = Extract<WaterEdit, { edit: 'close' }>['at'];

export interface WaterLeak {
  readonly at: LeakPlace;
  /** Metres below the well top; nothing for a leak at the tank or in the house. */
  readonly depth: number;
  readonly hole: Hole;
}

/** @throws when an edit needs a severity that is not given, or a leak in the drop pipe names no depth */
export function applyWaterEdits(input: WaterInput, injection: WaterInjection): WaterParts {
  const parts = soundParts(input);
  for (const { edits, severity } of injection.beside === undefined
    ? [injection]
    : [injection, injection.beside])
    for (const edit of edits) apply(parts, edit, severity);
  return parts;
}

function soundParts(input: WaterInput): WaterParts {
  const { well, pump, drop, line, tank } = input;
  return {
    input,
    well: { ...well, storage: storageOf(well.casing) },
    bottom: well.depth,
    pump: { ...pump, headFactor: 1, flowFactor: 1 },
    drop: { ...drop, length: well.intake },
    line,
    tank: { volume: tank.volume, precharge: tank.precharge, atmosphere: atmosphereAt(input.altitude) },
    waterAtAirValve: false,
    switch: { ...input.switch, cutOff: input.switch.cutOff, cutOffOpen: false, feels: undefined },
    noLift: undefined,
    parted: false,
    gas: 0,
    leaks: [],
    closed: new Set(),
    houseLoss: input.house.filterLoss,
    gauge: { offset: 0, stuck: undefined },
    demand: 0,
  };
}

/** Below anything a switch can be set to: a diaphragm that is pressed by nothing. */
const NO_THRUST = -1e9;

function apply(parts: WaterParts, edit: WaterEdit, given: number | undefined): void {
  const { well, pump, tank } = parts;
  const severity = (): number => severityOf(edit, given);
  switch (edit.edit) {
    case 'head':
      parts.pump = { ...pump, headFactor: pump.headFactor * severity() };
      return;
    case 'intake':
      parts.pump = { ...pump, flowFactor: pump.flowFactor * severity() };
      return;
    case 'no-lift':
      parts.noLift = edit.shaft;
      return;
    case 'parted':
      parts.parted = true;
      return;
    case 'gas':
      parts.gas = Math.min(1, severity());
      return;
    case 'leak':
      parts.leaks.push(leakOf(parts.input, edit, severity()));
      return;
    case 'close':
      parts.closed.add(edit.at);
      return;
    case 'restrict':
      parts.houseLoss += severity();
      return;
    case 'precharge':
      parts.tank = { ...tank, precharge: Math.max(0, tank.precharge + severity()) };
      return;
    case 'air':
      parts.tank = { ...tank, volume: tank.volume * severity() };
      parts.waterAtAirValve = true;
      return;
    case 'volume':
      parts.tank = { ...tank, volume: tank.volume * severity() };
      return;
    case 'setting':
      parts.switch = moved(parts.switch, edit.of, severity());
      return;
    case 'tube':
      parts.switch = { ...parts.switch, feels: severity() };
      return;
    case 'thrust-lost':
      parts.switch = { ...parts.switch, feels: NO_THRUST };
      return;
    case 'cut-off-open':
      parts.switch = { ...parts.switch, cutOffOpen: true };
      return;
    case 'gauge':
      parts.gauge =
        edit.shows === 'stuck' ? { offset: 0, stuck: severity() } : { offset: severity(), stuck: undefined };
      return;
    case 'level':
      parts.well = { ...well, staticLevel: lowered(well, severity()) };
      return;
    case 'yield':
      parts.well = { ...well, specificCapacity: well.specificCapacity * severity() };
      return;
    case 'bottom':
      parts.bottom -= severity();
      return;
    case 'demand':
      parts.demand += severity();
      return;
    default:
      unknownEdit(edit);
  }
}

function unknownEdit(edit: never): never {
  throw new Error(`plant: unknown water edit ${JSON.stringify(edit)}; add it to the interpreter`);
}

const lowered = ({ staticLevel, intake }: Well, share: number): number =>
  staticLevel + share * Math.max(0, intake - staticLevel);

function severityOf(edit: WaterEdit, severity: number | undefined): number {
  if (severity === undefined || !Number.isFinite(severity))
    throw new Error(
      `plant: water edit ${edit.edit} needs a severity and got ${severity}; give the fault a span`,
    );
  return severity;
}

function moved(at: PressureSwitch, which: 'cut-in' | 'cut-out' | 'both', by: number): PressureSwitch {
  const cutIn = which === 'cut-out' ? at.cutIn : at.cutIn + by;
  const cutOut = which === 'cut-in' ? at.cutOut : at.cutOut + by;
  return { ...at, cutIn, cutOut };
}

/** The hole that lets the severity out at rest, with a sound system at cut-out. */
function leakOf(input: WaterInput, edit: Extract<WaterEdit, { edit: 'leak' }>, flow: number): WaterLeak {
  const depth = leakDepth(input, edit);
  const atTop = headOf(input.switch.cutOut) + input.gaugeHeight;
  const column = edit.at === 'tank' || edit.at === 'house' ? headOf(input.switch.cutOut) : atTop + depth;
  return { at: edit.at, depth, hole: holeWith(flow, column - outsideHead(depth, input.well.staticLevel)) };
}

function leakDepth(input: WaterInput, { at, depth }: Extract<WaterEdit, { edit: 'leak' }>): number {
  switch (at) {
    case 'riser':
      if (depth === undefined)
        throw new Error('plant: a leak in the drop pipe does not name a depth; add one');
      return Math.min(depth, input.well.intake);
    case 'check':
      return input.well.intake;
    case 'pitless':
      return input.pitlessDepth;
    default:
      return 0;
  }
}

/** Metres of water that press on a hole from outside. */
export const outsideHead = (depth: number, level: number): number => Math.max(0, depth - level);
