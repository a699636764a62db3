import type { Quantity } from '../units/units.ts';
import type { PlantInput, Spreads, UnknownName, Unknowns } from './types.ts';
import type { WaterInput } from './water/types.ts';

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
  const shift = (name: UnknownName): number => (unknowns[name] ?? 0) * (spreads[name] ?? 0);
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
export const loaded = (conditions: Conditions, pumpLoad: number): Conditions =>
  pumpLoad === 1 ? conditions : { ...conditions, load: conditions.load * pumpLoad };

/**
 * The water system with its unknowns moved: the level by a share of the water over the intake, precharge
 * by an addition, the rest by a factor.
 */
export function waterAt(input: WaterInput, spreads: Spreads, unknowns: Unknowns): WaterInput {
  const shift = (name: UnknownName): number => (unknowns[name] ?? 0) * (spreads[name] ?? 0);
  const { well, pump, tank } = input;
  const times = <Q extends Quantity>(value: Q, name: UnknownName): Q => (value * Math.exp(shift(name))) as Q;
  const plus = <Q extends Quantity>(value: Q, name: UnknownName): Q => Math.max(0, value + shift(name)) as Q;
  return {
    ...input,
    well: {
      ...well,
      staticLevel: Math.max(
        0,
        well.staticLevel + shift('waterLevel') * Math.max(0, well.intake - well.staticLevel),
      ) as Quantity<'length'>,
      specificCapacity: times(well.specificCapacity, 'wellYield'),
    },
    pump: {
      ...pump,
      classHead: times(pump.classHead, 'pumpHead'),
      shutOffHead: times(pump.shutOffHead, 'pumpHead'),
    },
    tank: {
      ...tank,
      volume: times(tank.volume, 'tankVolume'),
      precharge: plus(tank.precharge, 'precharge'),
    },
  };
}
