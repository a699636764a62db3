import { capacitanceOf } from '../electrical/elements/capacitor.ts';
import type { Circuit } from '../electrical/install.ts';
import type { PlantReading } from '../types.ts';

/**
 * What does a capacitance meter show on a capacitor with one lead off?
 *
 * Its microfarads as they stand; nothing when it is open. A bridged one never charges: the meter
 * shows over-range, which is one farad here, more than any instrument can show.
 */
export const OVER_RANGE_FARADS = 1;

export function capacitanceAcross(circuit: Circuit, part: number): PlantReading {
  const { kind } = circuit.layout.parts[part]!;
  if (kind !== 'capacitor-start' && kind !== 'capacitor-run')
    return { kind: 'none', reason: 'not-a-plant-reading' };
  const condition = circuit.faulted.parts[part]!;
  const farads = condition.shorted
    ? OVER_RANGE_FARADS
    : capacitanceOf(kind, condition.scale, circuit.context);
  return { kind: 'value', value: condition.open ? 0 : farads, regime: 'static' };
}
