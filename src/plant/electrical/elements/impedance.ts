import type { Element } from '../../../schema/netlist.ts';
import type { Conditions } from '../../conditions.ts';
import type { LayoutPart } from '../../layout.ts';
import type { PlantInput } from '../../types.ts';
import type { PartCondition } from '../edits.ts';
import { capacitorImpedance } from './capacitor.ts';
import { conductorImpedance } from './conductor.ts';
import { passiveImpedance } from './passive.ts';
import { windingImpedance } from './winding.ts';

/**
 * What does a part oppose to current when it conducts?
 *
 * `re` and `im` at line frequency, `dc` to an ohmmeter. Infinity means no path at all. A winding of a
 * modelled motor has none of its own at line frequency, it is a port of the motor: Infinity.
 */
export interface Impedance {
  readonly re: number;
  readonly im: number;
  readonly dc: number;
}

export interface ElementContext {
  readonly input: PlantInput;
  readonly conditions: Conditions;
}

/** A part as an element sees it: its constants, and the factor that a fault puts on its value. */
export interface Standing<Kind extends LayoutPart['kind'] = LayoutPart['kind']> {
  readonly kind: Kind;
  readonly element: Element;
  readonly scale: number;
}

/** Healthy or scaled impedance of a part; opening, shorting and series resistance come on top. */
export function impedanceOf(part: LayoutPart, { scale }: PartCondition, context: ElementContext): Impedance {
  const { kind } = part;
  const element = elementOf(context.input, kind);
  switch (kind) {
    case 'capacitor-start':
    case 'capacitor-run':
      return capacitorImpedance({ kind, element, scale }, context);
    case 'conductor-buried':
    case 'conductor-drop':
      return conductorImpedance(kind, scale, context);
    case 'winding-main':
    case 'winding-start':
      return windingImpedance({ kind, element, scale }, context);
    case 'insulation':
      return passiveImpedance(element, scale * context.conditions.insulation);
    case 'source':
      return { ...passiveImpedance(element, scale), dc: Infinity };
    default:
      return passiveImpedance(element, scale * ratingShare(element, context.input) ** 2);
  }
}

/**
 * What a coil of this installation is rated at, as a share of the rating its record is written for:
 * one wound for half the volts has half the turns, so a quarter of the ohms.
 */
export const ratingShare = ({ ratedVolts }: Element, { motor }: PlantInput): number =>
  ratedVolts === undefined ? 1 : motor.volts / ratedVolts;

/** @throws when content has no record of that kind */
export function elementOf(input: PlantInput, kind: LayoutPart['kind']): Element {
  const element = input.elements[kind];
  if (element === undefined) throw new Error(`plant: no element ${kind}; add content/elements/${kind}.json`);
  return element;
}
