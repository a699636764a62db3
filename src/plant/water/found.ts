import { pressureOf } from './column.ts';
import type { WaterParts } from './edits.ts';
import { deliver, type Running } from './operate.ts';
import { calls, tripsCutOff } from './pressure-switch.ts';
import { type Loss, losingAbove } from './rest.ts';
import { rootOf } from './root.ts';
import type { Drive } from './types.ts';

/**
 * At what pressure is the system found: between its settings, stuck below them, above them, or empty?
 *
 * Pressure decides whether the switch calls, the call whether the motor turns, the motor what becomes
 * of the pressure. Only the ends of that round are looked at: it cycles, it runs for ever, or it never
 * runs and the house has drawn the tank empty.
 */
export interface Found {
  readonly state: 'cycles' | 'runs-on' | 'never-runs';
  /** Pascals: the pressure at which the pump stops, or where it settles. */
  readonly pressure: number;
}

export function found(parts: WaterParts, drive: Drive, use: Loss = { open: true, draw: 0 }): Found {
  if (!runsAtAll(parts, drive)) return { state: 'never-runs', pressure: 0 };
  const settled = settledPressure(parts, { speed: drive.speed, seconds: Infinity }, use);
  const { cutOut } = parts.switch;
  const stops = !drive.always && !calls(parts.switch, settled, true);
  return stops ? { state: 'cycles', pressure: cutOut } : { state: 'runs-on', pressure: settled };
}

/** Once the pressure has gone, does the motor come on? A tube that closed between the settings closed at rest. */
function runsAtAll(parts: WaterParts, drive: Drive): boolean {
  if (!drive.turns) return false;
  if (drive.always) return true;
  return drive.follows && !cutOffTripped(parts) && calls(parts.switch, 0, false);
}

/**
 * A tank charged above cut-in gives its last water before the switch calls: the pressure plunges, and
 * a low-pressure cut-off opens with every draw.
 */
export const plunges = ({ tank, switch: at }: WaterParts): boolean => tank.precharge > at.cutIn;
const cutOffTripped = (parts: WaterParts): boolean =>
  parts.switch.cutOffOpen || (plunges(parts) && tripsCutOff(parts.switch, 0));

/**
 * Pressure at which the pump gives just what leaves, never above the relief valve; nothing when it
 * gives less even against no pressure.
 */
export function settledPressure(parts: WaterParts, at: Running, loss: Loss): number {
  const spare = (pressure: number): number =>
    deliver(parts, pressure, at).gained - losingAbove(parts, pressure, loss);
  const high = Math.min(parts.input.relief, pressureOf(parts.pump.shutOffHead));
  return rootOf(spare, { low: 0, high });
}
