/**
 * How much water does a captive-air tank hold at a pressure, and what does losing some do?
 *
 * The air is kept apart from the water and keeps its temperature: volume times absolute pressure
 * stays. Below the precharge the tank holds no water at all and nothing holds the pressure up.
 *
 * @source law: Boyle
 */
export interface Tank {
  /** Cubic metres of air when no water is in. */
  readonly volume: number;
  /** Pascals, gauge, with no water in. */
  readonly precharge: number;
  /** Pascals absolute of the air outside. */
  readonly atmosphere: number;
}

/** Cubic metres of water at a gauge pressure. */
export function waterIn(tank: Tank, pressure: number): number {
  const outside = tank.atmosphere;
  if (pressure <= tank.precharge) return 0;
  return tank.volume * (1 - (tank.precharge + outside) / (pressure + outside));
}

/** Gauge pressure at which the tank holds this much water; the precharge when it holds none. */
export function pressureWith(tank: Tank, water: number): number {
  const outside = tank.atmosphere;
  if (water <= 0) return tank.precharge;
  return ((tank.precharge + outside) * tank.volume) / (tank.volume - water) - outside;
}

/**
 * Water given between two gauge pressures, cubic metres; never negative.
 *
 * @example
 * drawdown({ volume: 1, precharge: 100000, atmosphere: 100000 }, { from: 300000, to: 100000 }) // => 0.5
 */
export function drawdown(tank: Tank, { from, to }: { from: number; to: number }): number {
  return Math.max(0, waterIn(tank, from) - waterIn(tank, to));
}

/** Cubic metres of water for each pascal, at a gauge pressure; none below the precharge. */
export function waterPerPressure(tank: Tank, pressure: number): number {
  if (pressure < tank.precharge) return 0;
  const outside = tank.atmosphere;
  return (tank.volume * (tank.precharge + outside)) / (pressure + outside) ** 2;
}
