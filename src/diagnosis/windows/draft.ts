import type { Evidence } from '../../schema/basics.ts';
import type { Conductor } from '../../schema/motor.ts';
import type { Knowledge } from '../knowledge.ts';
import type { System } from '../system.ts';
import type { ExpectedWindow, WindowPart } from '../types.ts';
import type { MeterClass } from './meter.ts';

/** What every kind of window is made from, and what it hands back before the meter is added. */
export interface Asked {
  readonly knowledge: Knowledge;
  readonly system: System;
  readonly meter: MeterClass;
  /** The motor has run lately, so its copper may be warm. */
  readonly justRun: boolean;
}

/** The contribution of one choice of the installation, before the meter. */
export interface Draft {
  readonly kind: 'range' | 'open' | 'unknown';
  readonly parts: readonly WindowPart[];
  readonly quality: ExpectedWindow['quality'];
  readonly unbounded?: 'low' | 'high';
  readonly missing?: readonly string[];
}

/** The evidence entries that vouch for a field of a record. */
export function evidenceFor(from: readonly Evidence[], field: string): readonly Evidence[] {
  const named = from.filter((one) => one.of?.some((name) => name === field || name.startsWith(`${field}.`)));
  return named.length > 0 ? named : from.filter((one) => one.of === undefined);
}

/** Evidence of the conductors of a run, each named once. */
export function cableEvidence(...conductors: readonly Conductor[]): readonly Evidence[] {
  return [...new Map(conductors.map((one) => [one.id, one])).values()].flatMap((one) => one.from);
}
