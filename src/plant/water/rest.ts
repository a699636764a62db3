import { headOf } from './column.ts';
import { secondsBetween } from './cycle.ts';
import type { WaterParts } from './edits.ts';
import { seeping } from './operate.ts';
import { throughHole } from './pipe.ts';
import { pressureWith, type Tank, waterIn, waterPerPressure } from './tank.ts';

/**
 * What happens to the pressure while the pump stands still?
 *
 * What leaves through holes leaves the tank, and the pressure follows by Boyle, in sixty steps. A
 * check valve above ground hides the well side; a shut house valve hides the house.
 */
export interface Loss {
  /** The house valve is open. */
  readonly open: boolean;
  /** Cubic metres a second used on purpose. */
  readonly draw: number;
}

/** The tank as it still works: a shut or choked port leaves no cushion at all. */
export function workingTank(parts: WaterParts): Tank {
  return parts.closed.has('tank') ? { ...parts.tank, volume: 0 } : parts.tank;
}

/** Cubic metres a second that the tank loses on the house side, at its shell, and to use. */
export function losingAbove(parts: WaterParts, pressure: number, loss: Loss): number {
  const open = loss.open && !parts.closed.has('house');
  let sum = open ? parts.demand + loss.draw : 0;
  for (const { at, hole } of parts.leaks)
    if (at === 'tank' || (at === 'house' && open)) sum += Math.max(0, throughHole(hole, headOf(pressure)));
  return sum;
}

/** The same with everything that leaves on the well side while the pump stands. */
export const losingAtRest = (parts: WaterParts, pressure: number, loss: Loss): number =>
  losingAbove(parts, pressure, loss) + seeping(parts, pressure, parts.well.staticLevel);

const STEPS = 60;

/** Pressure after standing for some seconds; nothing once the tank has given its water. */
export function pressureAfter(parts: WaterParts, from: number, of: Loss & { seconds: number }): number {
  const tank = workingTank(parts);
  const step = of.seconds / STEPS;
  let pressure = from;
  let water = waterIn(tank, from);
  for (let n = 0; n < STEPS; n++) {
    const lost = losingAtRest(parts, pressure, of) * step;
    if (lost <= 0) return pressure;
    const middle = water > lost / 2 ? pressureWith(tank, water - lost / 2) : 0;
    water -= losingAtRest(parts, middle, of) * step;
    if (water <= 0) return 0;
    pressure = pressureWith(tank, water);
  }
  return pressure;
}

/** Seconds until the tank has nothing left; Infinity when it loses nothing. */
export function secondsToEmpty(parts: WaterParts, from: number, of: Loss): number {
  const tank = workingTank(parts);
  if (losingAtRest(parts, from, of) <= 0) return Infinity;
  if (waterIn(tank, from) <= 0) return 0;
  const perPressure = (pressure: number): number => waterPerPressure(tank, pressure);
  return secondsBetween({ from, to: tank.precharge, perPressure }, (pressure) =>
    losingAtRest(parts, pressure, of),
  );
}

/**
 * Whether the first water drawn after standing brings air: the column in the drop pipe has run away
 * behind the tank's back, or after the tank was empty.
 */
export function drawsAir(parts: WaterParts, of: { seconds: number; off: boolean }): boolean {
  const passing = parts.leaks.some(({ at }) => at === 'riser' || at === 'check' || at === 'pitless');
  if (parts.parted || parts.gas > 0) return true;
  if (!passing) return false;
  if (parts.input.checkAboveGround) return true;
  const { cutOut } = parts.switch;
  return of.off && secondsToEmpty(parts, cutOut, { open: false, draw: 0 }) < of.seconds;
}
