import { type Layout, partsOf } from '../layout.ts';
import type { Faulted } from './edits.ts';
import { type ElementContext, elementOf } from './elements/impedance.ts';
import { type Machine, machineOf, type ShortedTurns } from './motor.ts';

/**
 * Which motor stands in this installation, with what its unknowns and its faults do to the windings?
 *
 * The model's own cold ohms are taken, not the row's: the other parameters were fitted with them.
 */

/** Ohms that stand for a broken winding: its current is then nothing, and no equation goes singular. */
const BROKEN_OHMS = 1e7;

/**
 * The motor of an installation; undefined without a model.
 *
 * @throws when a modelled installation has no main or no start winding
 */
export function machineIn(layout: Layout, faulted: Faulted, context: ElementContext): Machine | undefined {
  const { model } = context.input;
  if (model === undefined) return undefined;
  const main = faulted.parts[windingIn(layout, 'winding-main')]!;
  const start = faulted.parts[windingIn(layout, 'winding-start')]!;
  return machineOf(model, {
    mainOhms: model.coldMain * context.conditions.mainOhms * model.hotFactor,
    startOhms: model.coldStart * context.conditions.startOhms * model.hotFactor,
    mainSeries: main.open ? BROKEN_OHMS : main.seriesOhms,
    startSeries: start.open ? BROKEN_OHMS : start.seriesOhms,
    shorted: shortedTurns(context, 'main', main.scale) ?? shortedTurns(context, 'start', start.scale),
  });
}

/** @throws when the installation has none */
export function windingIn(layout: Layout, kind: 'winding-main' | 'winding-start'): number {
  const part = partsOf(layout, kind)[0];
  if (part === undefined) throw new Error(`plant: the installation has no ${kind}; add a motor piece`);
  return part;
}

function shortedTurns(
  context: ElementContext,
  winding: 'main' | 'start',
  scale: number,
): ShortedTurns | undefined {
  if (scale >= 1) return undefined;
  const spot = elementOf(context.input, `winding-${winding}`).turnShort ?? 0;
  return { winding, share: Math.min(1, 1 - scale), spot };
}
