import type { Element } from '../../../schema/netlist.ts';
import type { Impedance } from './impedance.ts';

/**
 * A resistance, with a reactance where the part is wound: wires, poles, contacts, overloads, splices,
 * coils, bleeds, insulation, earths. Its constants stand in content; an ohmmeter sees the resistance.
 *
 * @throws when the record of its kind gives no resistance
 */
export function passiveImpedance(element: Element, scale: number): Impedance {
  const { resistance, reactance } = element;
  if (resistance === undefined) {
    throw new Error(
      `plant: element ${element.id} has no resistance; add it to content/elements/${element.id}.json`,
    );
  }
  return { re: resistance * scale, im: (reactance ?? 0) * scale, dc: resistance * scale };
}
