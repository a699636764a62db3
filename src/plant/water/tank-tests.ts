import { of as quantity } from '../../units/units.ts';
import { secondsBetween } from './cycle.ts';
import type { WaterParts } from './edits.ts';
import { deliver } from './operate.ts';
import { losingAbove, losingAtRest, pressureAfter, workingTank } from './rest.ts';
import { drawdown, waterPerPressure } from './tank.ts';
import type { WaterMoment } from './types.ts';

/**
 * What do the tests at the tank read: bucket, watch and gauge between cut-in and cut-out?
 *
 * A tank charged above cut-in gives its water only down to the precharge, so the span that is timed
 * starts there.
 */
function span(parts: WaterParts): { low: number; high: number } {
  const { cutIn, cutOut } = parts.switch;
  return { low: Math.min(cutOut, Math.max(cutIn, parts.tank.precharge)), high: cutOut };
}

/** Cubic metres from cut-out to cut-in, pump off. */
export function drawdownSeen(parts: WaterParts): number {
  const { low, high } = span(parts);
  return drawdown(workingTank(parts), { from: high, to: low });
}

/**
 * Seconds from cut-in to cut-out with a draw; Infinity when cut-out is never reached. The level in
 * the well is taken half way through the fill, which is found in a second pass.
 */
export function secondsFilling(parts: WaterParts, speed: number, draw: number): number {
  const tank = workingTank(parts);
  const { low, high } = span(parts);
  const perPressure = (pressure: number): number => waterPerPressure(tank, pressure);
  const fill = (seconds: number): number =>
    secondsBetween({ from: low, to: high, perPressure }, (pressure) => {
      const given = deliver(parts, pressure, { speed, seconds }).gained;
      return given - losingAbove(parts, pressure, { open: true, draw });
    });
  const first = fill(0);
  return Number.isFinite(first) ? fill(first / 2) : first;
}

/** Seconds from cut-out to cut-in with a draw, the pump standing. */
export function secondsEmptying(parts: WaterParts, draw: number): number {
  const tank = workingTank(parts);
  const { low, high } = span(parts);
  const perPressure = (pressure: number): number => waterPerPressure(tank, pressure);
  return secondsBetween({ from: high, to: low, perPressure }, (pressure) =>
    losingAtRest(parts, pressure, { open: true, draw }),
  );
}

const ONE_MINUTE = quantity(1, 'min');

/** Pascals a second lost from cut-out (or the pressure named) over the first minute, pump off. */
export function leakDown(parts: WaterParts, of: WaterMoment & { open: boolean }): number {
  const from = of.pressure ?? parts.switch.cutOut;
  const seconds = of.seconds ?? ONE_MINUTE;
  const after = pressureAfter(parts, from, { open: of.open, draw: of.draw ?? 0, seconds });
  return (from - after) / seconds;
}
