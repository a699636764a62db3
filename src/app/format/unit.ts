import {
  inUnit,
  type Quantity,
  type QuantityName,
  UNITS,
  type UnitName,
  type UnitOf,
} from '../../units/units.ts';

/**
 * Which unit would a person expect, and how is it written? Signs are those of the trade and of SI;
 * they are the same in every language, so they are no words.
 */
const SIGNS: Readonly<Partial<Record<UnitName, string>>> = {
  ohm: 'Ω',
  mohm: 'mΩ',
  kohm: 'kΩ',
  Mohm: 'MΩ',
  uF: 'µF',
  degC: '°C',
  degF: '°F',
  'gpm/ft': 'gpm/ft',
};

/** Units a person expects for each quantity, smallest first; the first from which the number is 1 or more is not always best, so each carries the SI size it starts at. */
const LADDERS: Readonly<
  Partial<Record<QuantityName, readonly { readonly unit: UnitName; readonly from: number }[]>>
> = {
  resistance: [
    { unit: 'ohm', from: 0 },
    { unit: 'kohm', from: 1e3 },
    { unit: 'Mohm', from: 1e5 },
  ],
  voltage: [{ unit: 'V', from: 0 }],
  current: [{ unit: 'A', from: 0 }],
  capacitance: [{ unit: 'uF', from: 0 }],
  power: [
    { unit: 'W', from: 0 },
    { unit: 'kW', from: 1e4 },
  ],
  length: [{ unit: 'ft', from: 0 }],
  pressure: [{ unit: 'psi', from: 0 }],
  pressureRate: [{ unit: 'psi/min', from: 0 }],
  flow: [{ unit: 'gpm', from: 0 }],
  speed: [{ unit: 'ft/min', from: 0 }],
  volume: [{ unit: 'gal', from: 0 }],
  temperature: [{ unit: 'degF', from: Number.NEGATIVE_INFINITY }],
  time: [
    { unit: 's', from: 0 },
    { unit: 'min', from: 1200 },
  ],
};

/** A known unit, or nothing: content and stored readings name units by text. */
export function unitNamed(name: string): UnitName | undefined {
  return Object.hasOwn(UNITS, name) ? (name as UnitName) : undefined;
}

/**
 * The sign of a unit.
 *
 * @example
 * signOf('kohm') // => 'kΩ'
 * @example
 * signOf('psi') // => 'psi'
 */
export function signOf(unit: string): string {
  const known = unitNamed(unit);
  return known === undefined ? unit : (SIGNS[known] ?? known);
}

/**
 * The unit a person expects for an SI amount: ohms under a thousand, kilohms, megohms from a tenth
 * of one, since insulation is spoken of in megohms.
 *
 * @example
 * expectedUnit('resistance', 1500) // => 'kohm'
 * @example
 * expectedUnit('resistance', 500000) // => 'Mohm'
 */
export function expectedUnit(quantity: QuantityName, amount: number): UnitName {
  const ladder = LADDERS[quantity] ?? [];
  const found = ladder.findLast(({ from }) => Math.abs(amount) >= from) ?? ladder[0];
  if (found === undefined) throw new Error(`format: no unit is expected for ${quantity}; add it to LADDERS`);
  return found.unit;
}

/** An SI amount as a number of a unit. */
export function inNamedUnit(amount: number, unit: UnitName): number {
  return inUnit(amount as Quantity, unit as UnitOf<QuantityName>);
}

/** The quantity that a unit measures. */
export function quantityOfUnit(unit: UnitName): QuantityName {
  return UNITS[unit].quantity;
}
