import type { z } from 'zod';
import { check, instrument } from '../schema/check.ts';
import { action, fault } from '../schema/fault.ts';
import { conductor, motor, motorModel } from '../schema/motor.ts';
import { box, element, netlist } from '../schema/netlist.ts';
import {
  calibration,
  circumstance,
  fitting,
  hardRule,
  hazard,
  judgement,
  sequence,
  siteStep,
  source,
  sparePart,
} from '../schema/smaller.ts';
import { waterSystem } from '../schema/water.ts';
import { actionWords, checkWords, faultWords, names, siteStepWords } from '../schema/words.ts';

/** Folder of content → shape of its records. The editor's JSON Schemas are written from the same table. */
export const RECORD_SHAPES = {
  sources: source,
  motors: motor,
  'motor-models': motorModel,
  conductors: conductor,
  netlists: netlist,
  boxes: box,
  elements: element,
  faults: fault,
  actions: action,
  checks: check,
  instruments: instrument,
  circumstances: circumstance,
  hazards: hazard,
  parts: sparePart,
  judgements: judgement,
  rules: hardRule,
  'site-steps': siteStep,
  water: waterSystem,
  fittings: fitting,
  sequences: sequence,
  calibration,
} as const;
export type RecordFolder = keyof typeof RECORD_SHAPES;

/** Folder below content/words/<language> → shape of its records. */
export const WORD_SHAPES = {
  checks: checkWords,
  faults: faultWords,
  actions: actionWords,
  'site-steps': siteStepWords,
  names,
} as const;
export type WordFolder = keyof typeof WORD_SHAPES;

export type RecordOf<F extends RecordFolder> = z.infer<(typeof RECORD_SHAPES)[F]>;
export type WordsOf<F extends WordFolder> = z.infer<(typeof WORD_SHAPES)[F]>;

/** Where a file stands and what it holds, before anything is believed of it. */
export interface RawFile {
  /** Path below content/, without the ending: `faults/start-capacitor-open`. */
  readonly path: string;
  readonly data: unknown;
}
