import type { PlantInput } from '../../types.ts';
import { LINE_RADIANS } from '../line.ts';
import type { ElementContext, Impedance, Standing } from './impedance.ts';

/**
 * A capacitor with its equivalent series resistance as a share of its reactance. An ohmmeter that
 * has charged it sees nothing.
 */
export function capacitorImpedance(
  { kind, element, scale }: Standing<'capacitor-start' | 'capacitor-run'>,
  context: ElementContext,
): Impedance {
  const farads = capacitanceOf(kind, scale, context);
  if (farads <= 0) return { re: Infinity, im: 0, dc: Infinity };
  const reactance = 1 / (LINE_RADIANS * farads);
  return { re: (element.seriesShare ?? 0) * reactance, im: -reactance, dc: Infinity };
}

/** Farads of a capacitor part as it stands; 0 where neither the label, the row nor the model knows one. */
export function capacitanceOf(
  kind: 'capacitor-start' | 'capacitor-run',
  scale: number,
  { input, conditions }: ElementContext,
): number {
  if (kind === 'capacitor-run') return runFarads(input) * scale;
  return startFarads(input) * scale * conditions.startCapacitor;
}

function runFarads(input: PlantInput): number {
  return input.runCapacitor ?? input.motor.runCapacitor ?? input.model?.runCapacitor ?? 0;
}

/** The middle of the printed range: start capacitors are sold by range. */
function startFarads(input: PlantInput): number {
  const range = input.startCapacitor ?? input.motor.startCapacitor;
  if (range !== undefined) return (range.low + range.high) / 2;
  return input.model?.startCapacitor ?? 0;
}
