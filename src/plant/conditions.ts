import type { PlantInput, Spreads, UnknownName, Unknowns } from './types.ts';

/**
 * What the continuous unknowns of an installation amount to, as numbers the network can use.
 *
 * Each unknown is a standard score times its spread: lengths, ohms, microfarads, insulation and
 * breakaway as factors e^x (they cannot go negative), volts as 1 + x, load as an addition.
 */
export interface Conditions {
  /** Line to line, volts. */
  readonly volts: number;
  /** Shaft load and breakaway torque as shares of full-load torque. */
  readonly load: number;
  readonly breakaway: number;
  /** Factors on the nominal value. */
  readonly dropLength: number;
  readonly mainOhms: number;
  readonly startOhms: number;
  readonly startCapacitor: number;
  readonly insulation: number;
}

/** Below this share of full load a pump is not a load any more; keeps the score's tail physical. */
const LEAST_LOAD = 0.02;

export function conditionsOf(input: PlantInput, spreads: Spreads, unknowns: Unknowns): Conditions {
  const shift = (name: UnknownName): number => (unknowns[name] ?? 0) * spreads[name];
  return {
    volts: input.volts * Math.max(0, 1 + shift('volts')),
    load: Math.max(LEAST_LOAD, input.nominalLoad + shift('load')),
    breakaway: input.nominalBreakaway * Math.exp(shift('breakaway')),
    dropLength: Math.exp(shift('dropLength')),
    mainOhms: Math.exp(shift('mainOhms')),
    startOhms: Math.exp(shift('startOhms')),
    startCapacitor: Math.exp(shift('startCapacitor')),
    insulation: Math.exp(shift('insulation')),
  };
}

/** The same with the shaft load that the water asks for. */
export function loaded(conditions: Conditions, pumpLoad: number | undefined): Conditions {
  return pumpLoad === undefined ? conditions : { ...conditions, load: conditions.load * pumpLoad };
}
