/**
 * What is a unit worth? The only conversion factors of the project.
 *
 * Every quantity is a plain number in SI (temperature in degrees Celsius), branded with the
 * quantity it measures, so that volts cannot be handed where ohms are wanted. `of` is the only
 * door in; screens and the command line format on the way out with `inUnit`.
 *
 * Leaves out dimensional algebra: a formula brands its own result.
 *
 * @source table: nist-sp-811 (exact inch, pound-force and gallon factors)
 */
interface Unit {
  readonly quantity: string;
  readonly factor: number;
  readonly offset?: number;
}

export const UNITS = {
  ohm: { quantity: 'resistance', factor: 1 },
  mohm: { quantity: 'resistance', factor: 1e-3 },
  kohm: { quantity: 'resistance', factor: 1e3 },
  Mohm: { quantity: 'resistance', factor: 1e6 },
  'ohm/m': { quantity: 'resistancePerLength', factor: 1 },
  'ohm/kft': { quantity: 'resistancePerLength', factor: 1 / 304.8 },
  V: { quantity: 'voltage', factor: 1 },
  mV: { quantity: 'voltage', factor: 1e-3 },
  A: { quantity: 'current', factor: 1 },
  mA: { quantity: 'current', factor: 1e-3 },
  W: { quantity: 'power', factor: 1 },
  kW: { quantity: 'power', factor: 1e3 },
  hp: { quantity: 'power', factor: 745.6999 },
  F: { quantity: 'capacitance', factor: 1 },
  uF: { quantity: 'capacitance', factor: 1e-6 },
  nF: { quantity: 'capacitance', factor: 1e-9 },
  Hz: { quantity: 'frequency', factor: 1 },
  s: { quantity: 'time', factor: 1 },
  min: { quantity: 'time', factor: 60 },
  h: { quantity: 'time', factor: 3600 },
  m: { quantity: 'length', factor: 1 },
  ft: { quantity: 'length', factor: 0.3048 },
  in: { quantity: 'length', factor: 0.0254 },
  degC: { quantity: 'temperature', factor: 1 },
  degF: { quantity: 'temperature', factor: 5 / 9, offset: (-32 * 5) / 9 },
  Pa: { quantity: 'pressure', factor: 1 },
  psi: { quantity: 'pressure', factor: 6894.757 },
  'psi/min': { quantity: 'pressureRate', factor: 6894.757 / 60 },
  m3: { quantity: 'volume', factor: 1 },
  gal: { quantity: 'volume', factor: 3.785412e-3 },
  'm3/s': { quantity: 'flow', factor: 1 },
  gpm: { quantity: 'flow', factor: 3.785412e-3 / 60 },
  'm/s': { quantity: 'speed', factor: 1 },
  'ft/min': { quantity: 'speed', factor: 0.3048 / 60 },
  'gpm/ft': { quantity: 'specificCapacity', factor: 3.785412e-3 / 60 / 0.3048 },
  'N.m': { quantity: 'torque', factor: 1 },
  ratio: { quantity: 'ratio', factor: 1 },
  '%': { quantity: 'ratio', factor: 0.01 },
} as const satisfies Record<string, Unit>;

export type UnitName = keyof typeof UNITS;
export type QuantityName = (typeof UNITS)[UnitName]['quantity'];
export type UnitOf<Q extends QuantityName> = {
  [U in UnitName]: (typeof UNITS)[U]['quantity'] extends Q ? U : never;
}[UnitName];

declare const quantity: unique symbol;
/** A finite SI number that measures `Q`. */
export type Quantity<Q extends QuantityName = QuantityName> = number & { readonly [quantity]: Q };

/** Two ends of a span, `low` ≤ `high`, both in SI. */
export interface Range<Q extends QuantityName = QuantityName> {
  readonly low: Quantity<Q>;
  readonly high: Quantity<Q>;
}

/**
 * A number with its printed unit, as an SI quantity.
 *
 * @throws when the value is NaN or infinite: a missing reading is a kind of reading, never a number
 *
 * @example
 * of(1.5, 'kohm') // => 1500
 */
export function of<U extends UnitName>(value: number, unit: U): Quantity<(typeof UNITS)[U]['quantity']> {
  if (!Number.isFinite(value)) {
    throw new Error(`units: ${value} ${unit} is not a finite quantity; use a reading kind instead`);
  }
  const { factor, offset = 0 }: Unit = UNITS[unit];
  return (value * factor + offset) as Quantity<(typeof UNITS)[U]['quantity']>;
}

/**
 * The number to print for a quantity in a unit of its own kind.
 *
 * @example
 * inUnit(of(2, 'ft'), 'in') // => 24
 */
export function inUnit<Q extends QuantityName>(value: Quantity<Q>, unit: UnitOf<Q>): number {
  const { factor, offset = 0 }: Unit = UNITS[unit];
  return (value - offset) / factor;
}

/** The units that measure a quantity, in the order of the table above. */
export function unitsOf(name: QuantityName): UnitName[] {
  return (Object.keys(UNITS) as UnitName[]).filter((unit) => UNITS[unit].quantity === name);
}
