import type { ElementContext, Impedance } from './impedance.ts';

/**
 * One conductor of a cable run, at the temperature its table is printed for. Reactance is left out:
 * it is under a tenth of the resistance for the sizes that feed small pumps.
 *
 * @source law: resistance per length times length
 */
export function conductorImpedance(
  kind: 'conductor-buried' | 'conductor-drop',
  scale: number,
  { input, conditions }: ElementContext,
): Impedance {
  const run = kind === 'conductor-buried' ? input.buried : input.drop;
  const stretch = kind === 'conductor-drop' ? conditions.dropLength : 1;
  const ohms = run.conductor.perLength * run.length * stretch * scale;
  return { re: ohms, im: 0, dc: ohms };
}
