import type { Check, Instrument } from '../schema/check.ts';
import type { Action, Fault } from '../schema/fault.ts';
import type { Conductor, Motor, MotorModel } from '../schema/motor.ts';
import type { Box, Element, Netlist } from '../schema/netlist.ts';
import type {
  Calibration,
  Circumstance,
  Fitting,
  HardRule,
  Hazard,
  Judgement,
  Sequence,
  SiteStepRecord,
  Source,
  SparePart,
} from '../schema/smaller.ts';
import type { WaterSystem } from '../schema/water.ts';
import type { ActionWords, CheckWords, FaultWords, Names, SiteStepWords } from '../schema/words.ts';

/** Records of one kind by id, in the order of their ids. */
export type Table<T> = Readonly<Record<string, T>>;

/** All texts of one language. */
export interface Words {
  readonly language: string;
  readonly checks: Table<CheckWords>;
  readonly faults: Table<FaultWords>;
  readonly actions: Table<ActionWords>;
  readonly siteSteps: Table<SiteStepWords>;
  readonly names: Table<Names>;
}

/**
 * Everything the engine knows, checked and frozen. The plant, the diagnosis and the machines are
 * handed one; they never read content themselves, so a test can hand them a catalog of three faults.
 */
export interface Catalog {
  /** Hash of the content: the same cases on the same version give the same answers. */
  readonly version: string;
  readonly sources: Table<Source>;
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
  readonly circumstances: Table<Circumstance>;
  readonly hazards: Table<Hazard>;
  readonly parts: Table<SparePart>;
  readonly judgements: Table<Judgement>;
  readonly rules: Table<HardRule>;
  readonly siteSteps: Table<SiteStepRecord>;
  readonly water: Table<WaterSystem>;
  readonly fittings: Table<Fitting>;
  readonly sequences: Table<Sequence>;
  readonly calibration: Table<Calibration>;
  readonly words: Table<Words>;
}

/** What is wrong, where, and what to do about it. */
export interface Problem {
  /** `faults/start-capacitor-open › from[0] › source` */
  readonly at: string;
  readonly message: string;
  readonly hint: string;
}
