import type { Check } from '../../schema/check.ts';
import { of, UNITS, type UnitName } from '../../units/units.ts';
import type { ScaleShape } from '../belief/scale.ts';
import { figure } from '../judgements.ts';
import type { Knowledge } from '../knowledge.ts';

/** What the meter of a check is off by, and where its display ends. */

export type MeterClass = 'ordinary' | 'bench';

interface MeterLimits {
  readonly relative: number;
  /** In SI. */
  readonly absolute: number;
  /** Highest value the display shows, in SI. */
  readonly top: number | undefined;
}

/** Limits of error as content gives them; a class that the instrument lacks falls back to ordinary. */
export function meterLimits(knowledge: Knowledge, check: Check, meter: MeterClass): MeterLimits {
  const instrument = knowledge.instruments[check.instrument];
  const classes = instrument?.classes;
  if (classes === undefined) return { relative: 0, absolute: 1, top: undefined };
  const limits = classes[meter] ?? classes.ordinary;
  return {
    relative: limits.relative,
    absolute: inSI(limits.absolute),
    top: instrument?.top === undefined ? undefined : inSI(instrument.top),
  };
}

/**
 * The common scale of a check: one standard deviation is a part of the limit of error, and readings
 * that rest on the running model scatter a little on top, each by itself.
 */
export function meterScale(
  knowledge: Knowledge,
  check: Check,
  meter: MeterClass,
): { shape: ScaleShape; top: number | undefined } {
  const limits = meterLimits(knowledge, check, meter);
  const part = figure(knowledge.judgements, 'limit-to-deviation');
  const reads = 'reads' in check.predict ? check.predict.reads : undefined;
  const modelled = reads === 'amps' || reads === 'amps-at-start' || reads === 'watts';
  const scatter = modelled ? figure(knowledge.judgements, 'model-scatter') : 0;
  return {
    shape: { relative: Math.hypot(limits.relative * part, scatter), absolute: limits.absolute * part },
    top: limits.top,
  };
}

function inSI([value, unit]: readonly [number, string]): number {
  if (!(unit in UNITS)) throw new Error(`diagnosis: ${unit} is not a unit; mend content/instruments`);
  return of(value, unit as UnitName);
}
