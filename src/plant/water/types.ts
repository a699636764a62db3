import type { WaterEdit, WaterQuestion, WaterSystem } from '../../schema/water.ts';

/**
 * What the water side is told and what it answers. Like the electrical side it knows parts and
 * physics, and has never heard of a fault id, a window or a technician.
 */
export type WaterInput = WaterSystem;

export interface WaterInjection {
  readonly edits: readonly WaterEdit[];
  /** In SI or a plain factor, for the edits that use it. */
  readonly severity: number | undefined;
  readonly beside?:
    | { readonly edits: readonly WaterEdit[]; readonly severity: number | undefined }
    | undefined;
}

/** What the motor does for the pump. */
export interface Drive {
  /** It turns when the switch calls. */
  readonly turns: boolean;
  /** Share of its speed at full load; negative when backwards. */
  readonly speed: number;
  /** It turns whatever the switch says: welded contacts. */
  readonly always: boolean;
  /** The switch's own contacts conduct when it calls. */
  readonly follows: boolean;
}

/** Circumstances of a reading; each has a usual value. */
export interface WaterMoment {
  /** Cubic metres a second drawn at a tap. */
  readonly draw?: number | undefined;
  /** Gauge pressure at which a flow is asked for, pascals. */
  readonly pressure?: number | undefined;
  /** Seconds of running before the reading, or since the pump was switched off. */
  readonly seconds?: number | undefined;
  /** The pump is switched off at the disconnect. */
  readonly off?: boolean | undefined;
  /** The valve nearest the well is shut. */
  readonly shut?: boolean | undefined;
}

export type WaterReading =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'answer'; readonly answer: string }
  /** It does not come about here: a cut-out that is never reached, a fill that never ends. */
  | { readonly kind: 'never' }
  | { readonly kind: 'none'; readonly reason: 'not-a-water-reading' };

export interface WaterState {
  read(question: WaterQuestion, moment?: WaterMoment): WaterReading;
  /** Share of the load at class flow that the shaft is asked for while it runs; none when it turns nothing. */
  load(moment?: WaterMoment): number;
}

/** A sound water system, ready to be faulted. */
export interface WaterPlant {
  state(injection: WaterInjection, drive?: Drive): WaterState;
}

/** A motor that does as it is told. */
export const WILLING: Drive = { turns: true, speed: 1, always: false, follows: true };
