/**
 * What do a column of water and the air above it weigh?
 *
 * Cold fresh water, standard gravity and the standard atmosphere. Leaves out temperature: between
 * freezing and a warm summer water loses half a percent.
 */
const DENSITY = 1000;
const GRAVITY = 9.80665;
/** Pascals under one metre of water. */
export const PER_METRE = DENSITY * GRAVITY;

/**
 * Height of the column that a pressure holds up, metres.
 *
 * @source law: hydrostatics
 *
 * @example
 * headOf(9806.65) // => 1
 */
export const headOf = (pressure: number): number => pressure / PER_METRE;

/** Pressure under a column, pascals. @source law: hydrostatics */
export const pressureOf = (head: number): number => head * PER_METRE;

/**
 * Pressure of the air at a height above the sea, pascals absolute.
 *
 * @source law: standard atmosphere, troposphere (101325 Pa, 288.15 K, 6.5 K per km)
 *
 * @example
 * atmosphereAt(0) // => 101325
 */
export function atmosphereAt(altitude: number): number {
  return 101325 * (1 - (0.0065 * altitude) / 288.15) ** 5.25588;
}

/**
 * Power that a flow carries at a head, watts.
 *
 * @source law: weight times height over time
 */
export const waterPower = (flow: number, head: number): number => PER_METRE * flow * head;
