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

/** Part of a sixty-hertz plant: radians a second of the line. */
export const LINE_RADIANS = 2 * Math.PI * 60;

/** Healthy or scaled impedance of a part; opening, shorting and series resistance come on top. */
export function impedanceOf(part: LayoutPart, condition: PartCondition, context: ElementContext): Impedance {
  const element = elementOf(context.input, part.kind);
  switch (part.kind) {
    case 'capacitor-start':
    case 'capacitor-run':
      return capacitorImpedance(part.kind, condition.scale, element, context);
    case 'conductor-buried':
    case 'conductor-drop':
      return conductorImpedance(part.kind, condition.scale, context);
    case 'winding-main':
    case 'winding-start':
      return windingImpedance(part.kind, condition.scale, element, context);
    case 'insulation':
      return passiveImpedance(element, condition.scale * context.conditions.insulation);
    case 'source':
      return { ...passiveImpedance(element, condition.scale), dc: Infinity };
    default:
      return passiveImpedance(element, condition.scale);
  }
}

/** @throws when content has no record of that kind */
export function elementOf(input: PlantInput, kind: LayoutPart['kind']): Element {
  const element = input.elements[kind];
  if (element === undefined) throw new Error(`plant: no element ${kind}; add content/elements/${kind}.json`);
  return element;
}
