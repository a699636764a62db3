/**
 * Does the pressure switch call for water?
 *
 * It closes at cut-in and opens at cut-out; between them it stays as it was. It feels what its tube
 * brings: a blocked tube brings the pressure of the day it closed, a torn diaphragm brings nothing.
 * A low-pressure cut-off opens for good once the pressure fell below it, until a hand restores it.
 */
export interface PressureSwitch {
  /** Pascals, gauge. */
  readonly cutIn: number;
  readonly cutOut: number;
  readonly cutOff: number | undefined;
  readonly cutOffOpen: boolean;
  /** What the switch feels whatever the pressure is; undefined when its tube is clear. */
  readonly feels: number | undefined;
}

/** What the switch feels when this is the pressure. */
export const feltBy = (at: PressureSwitch, pressure: number): number => at.feels ?? pressure;

/**
 * Whether it calls at a pressure.
 *
 * @param was whether it called just before: decides between cut-in and cut-out
 */
export function calls(at: PressureSwitch, pressure: number, was: boolean): boolean {
  if (at.cutOffOpen) return false;
  const felt = feltBy(at, pressure);
  if (felt <= at.cutIn) return true;
  return felt >= at.cutOut ? false : was;
}

/** Whether a fall to this pressure opens the low-pressure cut-off. */
export const tripsCutOff = (at: PressureSwitch, pressure: number): boolean =>
  at.cutOff !== undefined && feltBy(at, pressure) < at.cutOff;
