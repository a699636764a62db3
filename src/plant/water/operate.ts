import { headOf, pressureOf } from './column.ts';
import { type Closed, type LeakPlace, outsideHead, type WaterParts } from './edits.ts';
import { frictionHead, throughHole } from './pipe.ts';
import { pumpHead, shaftShare } from './pump.ts';
import { rootOf } from './root.ts';
import { flowToIntake, pumpingLevel } from './well.ts';

/**
 * What does the pump give the tank at a gauge pressure, and what does that cost its shaft?
 *
 * At a given pressure at the tank the flow out of the pump is found by closing in on it: the more it pumps,
 * the less head is left at the tank, after lift, friction and holes. Where the well gives less than
 * the pump would take, the level stands at the intake, the flow is what the well gives, and air comes
 * along. Steady at every moment: leaves out the time that water in the pipes takes to change speed.
 *
 * @source method: operating point at the meeting of pump and system curve
 */
export interface Running {
  /** Seconds since the pump started; Infinity for as long as it takes. */
  readonly seconds: number;
  /** Share of full-load speed. */
  readonly speed: number;
}

export interface Delivery {
  /** Cubic metres a second out of the pump, and gained by the tank (negative: lost). */
  readonly pumped: number;
  readonly gained: number;
  /** Depth of the water in the well. */
  readonly level: number;
  /** Share of the shaft load at class flow. */
  readonly load: number;
  /** The pump takes more than the well gives. */
  readonly air: boolean;
}

export function deliver(parts: WaterParts, pressure: number, at: Running): Delivery {
  const { well, pump } = parts;
  if (parts.noLift !== undefined || at.speed <= 0) return unmoved(parts, pressure);
  const most = Math.min(at.speed * pump.flowFactor * pump.openFlow, flowToIntake(well, at.seconds));
  if (most <= 0) return unmoved(parts, pressure);
  if (parts.parted) return intoTheWell(parts, pressure, { ...at, most });
  if (parts.closed.has('check')) return standing(parts, pressure, at.speed);
  const spare = (flow: number): number => spareHead(parts, { pressure, flow }, at);
  if (spare(most) >= 0) return starved(parts, pressure, { ...at, most });
  const pumped = rootOf(spare, { low: 0, high: most });
  const level = pumpingLevel(well, pumped, at.seconds);
  const up = climb(parts, { bottom: columnAt(parts, pumped, at), flow: pumped, level });
  const gained = pumped > 0 ? up.flow : -seeping(parts, pressure, level);
  return { pumped, gained, level, load: shaftShare(pump, pumped, at.speed), air: false };
}

/**
 * Gauge pressure with the valve nearest the well shut and the gauge on the pump's side, pascals: what
 * the pump holds up after its holes have taken their share. Brief, so the well is still full.
 */
export function deadHead(parts: WaterParts, speed: number): number {
  const { well, pump } = parts;
  const lifts = parts.noLift === undefined && !parts.parted && !parts.closed.has('check');
  if (!lifts || speed <= 0 || well.staticLevel >= well.intake) return 0;
  const at = { seconds: 0, speed };
  const shut: WaterParts = { ...parts, closed: new Set<Closed>(['line']) };
  const most = speed * pump.flowFactor * pump.openFlow;
  const spare = (flow: number): number => spareHead(shut, { pressure: 0, flow }, at);
  const flow = rootOf(spare, { low: 0, high: most });
  const up = climb(shut, { bottom: columnAt(parts, flow, at), flow, level: well.staticLevel });
  return Math.max(0, pressureOf(up.column - parts.input.gaugeHeight));
}

/** Metres above the well top that the pump can hold up at its outlet, gas and level counted. */
function columnAt(parts: WaterParts, flow: number, at: Running): number {
  const head = (1 - parts.gas) * pumpHead(parts.pump, flow, at.speed);
  return head - pumpingLevel(parts.well, flow, at.seconds);
}

/** Head left over at the tank when the pump moves this much. */
function spareHead(parts: WaterParts, of: { pressure: number; flow: number }, at: Running): number {
  const level = pumpingLevel(parts.well, of.flow, at.seconds);
  const up = climb(parts, { bottom: columnAt(parts, of.flow, at), flow: of.flow, level });
  if (parts.closed.has('line')) return -up.flow;
  return up.column - headOf(of.pressure) - parts.input.gaugeHeight;
}

interface Climb {
  /** Metres of water above the well top. */
  column: number;
  flow: number;
}

/** From the pump to the tank: friction of each length, what each hole takes. */
function climb(parts: WaterParts, from: { bottom: number; flow: number; level: number }): Climb {
  const { drop, line, input } = parts;
  const at: Climb = { column: from.bottom, flow: from.flow };
  const riser = parts.leaks.filter((leak) => leak.at === 'riser').sort((a, b) => b.depth - a.depth);
  let depth = drop.length;
  for (const leak of riser) {
    at.column -= frictionHead({ ...drop, length: depth - leak.depth }, at.flow);
    lose(parts, at, { place: 'riser', depth: leak.depth, level: from.level });
    depth = leak.depth;
  }
  at.column -= frictionHead({ ...drop, length: depth }, at.flow);
  lose(parts, at, { place: 'pitless', depth: input.pitlessDepth, level: from.level });
  if (parts.closed.has('line')) return at;
  at.column -= frictionHead(line, at.flow);
  lose(parts, at, { place: 'buried', depth: 0, level: from.level });
  return at;
}

function lose(parts: WaterParts, at: Climb, where: { place: LeakPlace; depth: number; level: number }): void {
  const head = at.column + where.depth - outsideHead(where.depth, where.level);
  for (const leak of parts.leaks)
    if (leak.at === where.place && leak.depth === where.depth) at.flow -= throughHole(leak.hole, head);
}

/** The well gives less than the pump takes: flow of the well, pressure as it comes. */
function starved(parts: WaterParts, pressure: number, at: Running & { most: number }): Delivery {
  const { pump, well } = parts;
  const level = pumpingLevel(well, at.most, at.seconds);
  const target = headOf(pressure) + parts.input.gaugeHeight;
  const short = flowToIntake(well, at.seconds) <= at.most;
  const bottom = leastColumn(
    (column) => {
      return climb(parts, { bottom: column, flow: at.most, level }).column - target;
    },
    columnAt(parts, at.most, at),
  );
  const up = climb(parts, { bottom, flow: at.most, level });
  const wet = shaftShare(pump, at.most, at.speed);
  const wetShare = at.most / Math.max(at.most, at.speed * pump.classFlow);
  const load = short ? pump.dryLoad + (wet - pump.dryLoad) * wetShare : wet;
  return { pumped: at.most, gained: up.flow, level, load, air: short };
}

/** The least column at the pump that still reaches the tank; all there is where none does. */
function leastColumn(over: (column: number) => number, most: number): number {
  return rootOf((column) => -over(column), { low: -Math.abs(most) - 1, high: most });
}

/** Nothing is lifted: the shaft turns free, or in air. */
function unmoved(parts: WaterParts, pressure: number): Delivery {
  const { well, pump } = parts;
  const load = parts.noLift === 'free' ? 0 : pump.dryLoad;
  const air = well.staticLevel >= well.intake;
  return {
    pumped: 0,
    gained: -seeping(parts, pressure, well.staticLevel),
    level: well.staticLevel,
    load,
    air: air || parts.noLift === 'dry',
  };
}

/** A shut check valve: the pump stands against its shut-off head, the tank is cut off from it. */
function standing(parts: WaterParts, pressure: number, speed: number): Delivery {
  const level = parts.well.staticLevel;
  const gained = -seeping(parts, pressure, level);
  return { pumped: 0, gained, level, load: shaftShare(parts.pump, 0, speed), air: false };
}

/** The pipe has parted: the pump lifts water from the well back into the well. */
function intoTheWell(parts: WaterParts, pressure: number, at: Running & { most: number }): Delivery {
  const level = parts.well.staticLevel;
  const flow = at.speed * parts.pump.flowFactor * parts.pump.openFlow;
  const gained = -seeping(parts, pressure, level);
  return { pumped: flow, gained, level, load: shaftShare(parts.pump, flow, at.speed), air: false };
}

/**
 * Cubic metres a second that leave the pipes with no water coming up: holes on the well side, and a
 * foot valve that passes. Cut off by a check valve above ground, or by ice in the line.
 */
export function seeping(parts: WaterParts, pressure: number, level: number): number {
  const { input } = parts;
  const cut = input.checkAboveGround || parts.closed.has('line');
  let sum = 0;
  for (const leak of parts.leaks) {
    if (leak.at === 'tank' || leak.at === 'house') continue;
    const isWellSide = leak.at !== 'buried' || input.checkAboveGround;
    if (cut && isWellSide) continue;
    const head = headOf(pressure) + input.gaugeHeight + leak.depth - outsideHead(leak.depth, level);
    sum += Math.max(0, throughHole(leak.hole, head));
  }
  return sum;
}
