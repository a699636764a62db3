/**
 * How long does a tank take to fill, and how often does the pump start?
 *
 * Closed forms for a flow that does not change with pressure, and a sum over pressure steps for one
 * that does. Leaves out the seconds of start and stop.
 *
 * @source law: volume over flow
 */
export interface Cycle {
  readonly on: number;
  readonly off: number;
}

/**
 * Seconds on and off with a steady draw; Infinity on when the draw is all that the pump gives.
 *
 * @param of drawdown in cubic metres, delivery and draw in cubic metres a second
 *
 * @example
 * steadyCycle({ drawdown: 60, delivery: 3, draw: 1 }) // => { on: 30, off: 60 }
 */
export function steadyCycle(of: { drawdown: number; delivery: number; draw: number }): Cycle {
  const spare = of.delivery - of.draw;
  return {
    on: spare > 0 ? of.drawdown / spare : Infinity,
    off: of.draw > 0 ? of.drawdown / of.draw : Infinity,
  };
}

/**
 * Seconds of the shortest cycle there is: that with a draw of half the delivery.
 *
 * @example
 * fastestCycle(60, 4) // => 60
 */
export const fastestCycle = (drawdown: number, delivery: number): number => (4 * drawdown) / delivery;

const STEPS = 12;

/**
 * Seconds to go from one pressure to another at a flow that depends on pressure; Infinity when the
 * flow stops on the way or goes the other way.
 *
 * @param between where from, where to, and the cubic metres for each pascal at a pressure
 * @param flow cubic metres a second gained at a pressure, positive whichever way the pressure goes
 * @source method: Numerical Recipes, section 4.1 (Simpson's rule)
 */
export function secondsBetween(
  between: { from: number; to: number; perPressure(pressure: number): number },
  flow: (pressure: number) => number,
): number {
  const step = (between.to - between.from) / STEPS;
  let sum = 0;
  for (let n = 0; n <= STEPS; n++) {
    const pressure = between.from + n * step;
    const gained = flow(pressure);
    if (gained <= 0) return Infinity;
    const weight = n === 0 || n === STEPS ? 1 : n % 2 === 1 ? 4 : 2;
    sum += (weight * between.perPressure(pressure)) / gained;
  }
  return (Math.abs(step) * sum) / 3;
}
