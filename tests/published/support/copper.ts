/**
 * Resistance of copper at another temperature.
 *
 * @source law: R2 = R1 · (234.5 + T2) / (234.5 + T1), temperatures in °C
 */
export function copperAt(ohms: number, { from, to }: { from: number; to: number }): number {
  return (ohms * (234.5 + to)) / (234.5 + from);
}

/** Diameter in mils of an American wire gauge. Source: wire-gauge-standard, each step the 39th root of 92. */
export const gaugeMils = (gauge: number): number => 5 * 92 ** ((36 - gauge) / 39);
