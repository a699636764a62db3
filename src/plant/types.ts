import type { CheckPoint, Prediction } from '../schema/check.ts';
import type { Edit } from '../schema/fault.ts';
import type { Conductor, Motor, MotorModel } from '../schema/motor.ts';
import type { Element, Netlist } from '../schema/netlist.ts';
import type { WaterEdit } from '../schema/water.ts';
import type { Quantity, Range } from '../units/units.ts';
import type { Drive, WaterInput } from './water/types.ts';

/**
 * What the plant is told and what it answers. The plant knows parts, nodes and physics; it has never
 * heard of a fault id, a window or a technician.
 */

/** An installation with nothing left unknown: every gap filled with its most likely value. */
export interface PlantInput {
  readonly pieces: readonly Netlist[];
  readonly elements: Readonly<Record<string, Element>>;
  readonly motor: Motor;
  /** Absent for rows that no model was fitted to: then only ohms, insulation and static volts are answered. */
  readonly model: MotorModel | undefined;
  readonly volts: Quantity<'voltage'>;
  readonly buried: { readonly conductor: Conductor; readonly length: Quantity<'length'> };
  readonly drop: { readonly conductor: Conductor; readonly length: Quantity<'length'> };
  readonly startCapacitor: Range<'capacitance'> | undefined;
  readonly runCapacitor: Quantity<'capacitance'> | undefined;
  readonly plugApart: boolean;
  /** Shaft load and breakaway torque, as shares of full-load torque. */
  readonly nominalLoad: number;
  readonly nominalBreakaway: number;
  /** The water side; without it only the electrical side answers. */
  readonly water?: WaterInput | undefined;
}

/**
 * The continuous unknowns of an installation, each a standard normal (0 = the nominal value). The
 * names are shared with belief; how far one standard deviation reaches stands in content (`spreads`).
 */
export const UNKNOWNS = [
  'dropLength',
  'volts',
  'load',
  'mainOhms',
  'startOhms',
  'startCapacitor',
  'insulation',
  'breakaway',
] as const;
/** The same of the water side: level and yield of the well, head of the pump, size and air of the tank. */
export const WATER_UNKNOWNS = ['waterLevel', 'wellYield', 'pumpHead', 'tankVolume', 'precharge'] as const;
type ElectricalUnknown = (typeof UNKNOWNS)[number];
export type WaterUnknown = (typeof WATER_UNKNOWNS)[number];
export type UnknownName = ElectricalUnknown | WaterUnknown;
/** Standard scores by name; a missing name counts as 0. */
export type Unknowns = Readonly<Partial<Record<UnknownName, number>>>;
/** One standard deviation of each unknown, as content gives it; the water side's only where there is one. */
export type Spreads = Readonly<Record<ElectricalUnknown, number>> &
  Readonly<Partial<Record<WaterUnknown, number>>>;

/** Which equilibrium the march from standstill ends in. */
export interface Mode {
  readonly starts: boolean;
  /** The start branch lets go at the end of run-up; without meaning where there is none. */
  readonly releases: boolean;
}

/** How far the plant is from the other mode; positive = the event happens. In ln(start torque ÷ breakaway) and (coil volts − pick-up) ÷ 12 V. */
export interface Margins {
  readonly start: number;
  readonly release: number;
}

/** Electrical state of the site while a reading is taken. */
export interface ReadingSite {
  readonly powered: boolean;
  readonly calling: boolean;
  readonly leads: 'connected' | 'lifted' | 'split';
  /** The motor has stood still long enough for its own protector to close again. */
  readonly cooled?: boolean | undefined;
}

export interface ReadingRequest {
  readonly at: CheckPoint;
  readonly predict: Prediction;
  readonly site: ReadingSite;
}

/** Physical regime a value was taken in: readings of one regime share their model error. */
export type Regime = 'static' | 'running' | 'saturated';

export type PlantReading =
  | { readonly kind: 'value'; readonly value: number; readonly regime: Regime }
  | { readonly kind: 'answer'; readonly answer: string }
  | {
      readonly kind: 'none';
      readonly reason: 'no-such-node' | 'floating-node' | 'no-model' | 'not-a-plant-reading';
    };

export type MotorSeen = 'silent' | 'hums-or-trips' | 'runs-badly' | 'runs';

/** One faulted or sound installation in one mode; readings are worked out when first asked for. */
export interface PlantState {
  readonly mode: Mode;
  readonly margins: Margins;
  /**
   * Share of the speed at full load that the motor turns at, with the switch calling or satisfied;
   * undefined without a model. For the pump only: never shown as fact.
   */
  turns(calling: boolean): number | undefined;
  /** Share of the sound shaft load that the water asks for. */
  pumpLoad(): number;
  /** What the motor itself does when called, as eyes and ears tell it. */
  motorSeen(): MotorSeen;
  /** What the motor does for the pump; undefined where no water side is known. */
  drive(): Drive | undefined;
  read(request: ReadingRequest): PlantReading;
}

export interface Injection {
  readonly edits: readonly Edit[];
  readonly water?: readonly WaterEdit[] | undefined;
  /** In SI or a plain factor, for the edits that use it. */
  readonly severity: number | undefined;
  /** A second fault at the same time, as when one has caused the other. */
  readonly beside?: Omit<Injection, 'beside'> | undefined;
}

/** A sound installation, ready to be faulted. */
export interface Plant {
  /**
   * @param forced the mode to evaluate in, whatever the margins say; without it the march decides
   */
  state(injection: Injection, unknowns: Unknowns, forced?: Mode): PlantState;
}
