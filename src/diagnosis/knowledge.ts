import type { Check, Instrument } from '../schema/check.ts';
import type { Action, Fault } from '../schema/fault.ts';
import type { Conductor, Motor, MotorModel } from '../schema/motor.ts';
import type { Box, Element, Netlist } from '../schema/netlist.ts';
import type { Fitting, HardRule, Judgement } from '../schema/smaller.ts';
import type { WaterSystem } from '../schema/water.ts';

type Table<T> = Readonly<Record<string, T>>;

/** The part of a Catalog that the diagnosis works from. A Catalog is one; a test may hand a small one. */
export interface Knowledge {
  readonly motors: Table<Motor>;
  readonly motorModels: Table<MotorModel>;
  readonly conductors: Table<Conductor>;
  readonly netlists: Table<Netlist>;
  readonly boxes: Table<Box>;
  readonly elements: Table<Element>;
  readonly faults: Table<Fault>;
  readonly actions: Table<Action>;
  readonly checks: Table<Check>;
  readonly instruments: Table<Instrument>;
  readonly judgements: Table<Judgement>;
  readonly rules: Table<HardRule>;
  readonly water: Table<WaterSystem>;
  readonly fittings: Table<Fitting>;
}
