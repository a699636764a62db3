import { z } from 'zod';
import { boxFamily, from, id, node, place, quantityOf, rangeOf, words } from './basics.ts';

const point = z.tuple([z.number(), z.number()]);

/** What lies between two nodes. Its electrical constants stand once, in content/elements. */
export const partKind = z.enum([
  'source',
  'wire',
  'breaker-pole',
  /** A breaker pole whose device also watches what does not come back on its own poles. */
  'ground-fault-pole',
  'disconnect-pole',
  'fuse',
  /** Contact of a relay that stops the pump when its load falls. */
  'protector-pole',
  'switch-pole',
  'cut-off-pole',
  'loop-device',
  'lid-contact',
  'lead-terminal',
  'overload',
  'capacitor-start',
  'capacitor-run',
  'bleed',
  'relay-coil',
  'relay-contact',
  'sense-coil',
  'sense-switch',
  'contactor-coil',
  'contactor-pole',
  'conductor-buried',
  'conductor-drop',
  'splice',
  'winding-main',
  'winding-start',
  'start-switch-inside',
  'protector',
  'insulation',
  'earth',
  /** No part of an installation: what a low-impedance voltmeter puts between its probes. */
  'voltmeter',
  /** The same: what a capacitance meter measures with. */
  'capacitance-meter',
]);
export type PartKind = z.infer<typeof partKind>;

const part = z.strictObject({
  id: node,
  kind: partKind,
  between: z.tuple([node, node]),
  /** Centre of its symbol on the sheet of its place; a wire needs none. */
  at: point.optional(),
  /** Which way the symbol lies. */
  turn: z.enum(['across', 'down']).optional(),
  /** Corner points of the line between its terminals, in order, when it is not straight. */
  via: z.array(point).optional(),
  lead: z.enum(['yellow', 'black', 'red', 'one', 'two', 'ground']).optional(),
});
export type Part = z.infer<typeof part>;

const terminal = z.strictObject({
  id: node,
  at: point,
  label: words.optional(),
  /** A screw, clip or bare end that a probe can reach. */
  probe: z.boolean(),
});
export type Terminal = z.infer<typeof terminal>;

/** Where a fragment is drawn and opened; `service` and `motor` are never opened by hand. */
export const sheet = z.enum(['service', 'panel', 'switch', 'box', 'well', 'motor']);
export type Sheet = z.infer<typeof sheet>;

/**
 * One piece of an installation: parts, the nodes they lie between, and where they are drawn.
 *
 * Pieces join wherever they name the same node. The sheet is a local grid of `size` units, x to the
 * right and y down; the picture decides how large each sheet is shown.
 */
export const netlist = z.strictObject({
  id,
  sheet,
  size: point,
  terminals: z.array(terminal),
  parts: z.array(part),
  from,
  note: words.optional(),
});
export type Netlist = z.infer<typeof netlist>;

/**
 * A control-box kind: which pieces make its installation, and what the trade needs to know of it.
 *
 * `pieces` are netlist ids in drawing order, from the service to the motor.
 */
export const box = z.strictObject({
  id,
  family: boxFamily,
  pieces: z.array(id).min(1),
  leads: z.enum(['2-wire', '3-wire']),
  power: rangeOf('power'),
  /** Lid that pulls apart from its base and so isolates the motor leads. */
  plugApart: z.boolean(),
  holdsCapacitor: z.boolean(),
  overloads: z.enum(['none', 'main', 'start-and-main', 'pilot']),
  switchCarries: z.enum(['motor-current', 'coil', 'both']),
  /** Motor circuits that this box may serve. */
  serves: z.array(z.enum(['start-inside', 'start-only', 'start-and-run'])).min(1),
  from,
  note: words.optional(),
});
export type Box = z.infer<typeof box>;

/** Electrical constants of one kind of part, healthy. A kind needs only the fields it has. */
export const element = z.strictObject({
  id: partKind,
  resistance: quantityOf('resistance').optional(),
  reactance: quantityOf('resistance').optional(),
  /** Rated volts that the constants of a coil stand for: at another rating volts go along, ohms with their square. */
  ratedVolts: quantityOf('voltage').optional(),
  /** At which a meter measures. */
  frequency: quantityOf('frequency').optional(),
  /** Equivalent series resistance as a share of the capacitor's reactance. */
  seriesShare: z.number().nonnegative().optional(),
  pickUp: quantityOf('voltage').optional(),
  dropOut: quantityOf('voltage').optional(),
  /** One standard deviation of the pick-up among sound relays. */
  pickUpSpread: quantityOf('voltage').optional(),
  /** Share of rated volts at which a contactor pulls in. */
  pullInShare: z.number().optional(),
  /** Share of rated volts below which a contactor lets go. */
  dropOutShare: z.number().optional(),
  /** Multiple of full-load amps at which a current-sensing relay fires. */
  fireShare: z.number().optional(),
  /** Share of synchronous speed at which a current-sensing relay lets go. */
  releaseSpeed: z.number().optional(),
  /** One standard deviation of that speed, as a share of synchronous speed. */
  releaseSpread: z.number().positive().optional(),
  /** Share of full-load amps below which a motor is not heard. */
  humShare: z.number().optional(),
  /** Resistance of the touching spot where turns are shorted. */
  turnShort: quantityOf('resistance').optional(),
  /**
   * When it opens under current, in multiples of its rating: at once above `atOnce`, never below
   * `holds`, else after `seconds` / (multiple² − holds²).
   */
  trip: z
    .strictObject({
      atOnce: z.number().positive().optional(),
      holds: z.number().positive(),
      seconds: z.number().positive(),
    })
    .optional(),
  /** What may be missing on the way back before the device opens at once: sum of the currents of its poles. */
  residual: quantityOf('current').optional(),
  /** Once the current is gone, heat falls to 1/e of itself in this time. */
  coolsIn: quantityOf('time').optional(),
  /** Share of the heat that opened it at which it closes again, or lets itself be reset. */
  closesAt: z.number().positive().lt(1).optional(),
  /** Resistance when made open by hand or by design. */
  open: quantityOf('resistance').optional(),
  from,
  note: words.optional(),
});
export type Element = z.infer<typeof element>;

export { place };
