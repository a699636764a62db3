import { z } from 'zod';
import { from, id, quantityOf, words } from './basics.ts';

/** A round pipe: inside bore, length, and the friction coefficient of its wall. */
const pipe = z.strictObject({
  bore: quantityOf('length'),
  length: quantityOf('length'),
  /** Hazen–Williams coefficient, without unit: smooth is high. */
  smoothness: z.number().positive(),
});

/**
 * The water half of an installation, nothing unknown: well, pump end, pipes, tank, switch, house.
 *
 * Depths count downwards from the well top, heights upwards. Pressures are gauge pressures.
 */
export const waterSystem = z.strictObject({
  id,
  altitude: quantityOf('length'),
  well: z.strictObject({
    casing: quantityOf('length'),
    depth: quantityOf('length'),
    staticLevel: quantityOf('length'),
    intake: quantityOf('length'),
    specificCapacity: quantityOf('specificCapacity'),
  }),
  pump: z.strictObject({
    /** The flow that names the pump, and the head it gives there. */
    classFlow: quantityOf('flow'),
    classHead: quantityOf('length'),
    shutOffHead: quantityOf('length'),
    /** Flow against no head at all. */
    openFlow: quantityOf('flow'),
    /** Flow at which the shaft asks for most. */
    peakLoadFlow: quantityOf('flow'),
    /** Shaft load against a shut valve and without water, as shares of the load at class flow. */
    deadHeadLoad: z.number().min(0).max(1),
    dryLoad: z.number().min(0).max(1),
  }),
  /** From the pump to the well top; its length is the depth of the intake. */
  drop: pipe.omit({ length: true }),
  /** From the well top to the tank. */
  line: pipe,
  pitlessDepth: quantityOf('length'),
  /** Gauge and tank above the well top; negative where they stand lower. */
  gaugeHeight: quantityOf('length'),
  /** A check valve between the well and the gauge hides the well side from it at rest. */
  checkAboveGround: z.boolean(),
  tank: z.strictObject({
    volume: quantityOf('volume'),
    precharge: quantityOf('pressure'),
    /** Shortest fill that does not wear the motor and its switch. */
    leastFill: quantityOf('time'),
    /** A tight system with no tap open starts no more often than this. */
    leastRest: quantityOf('time'),
  }),
  switch: z.strictObject({
    cutIn: quantityOf('pressure'),
    cutOut: quantityOf('pressure'),
    cutOff: quantityOf('pressure').optional(),
  }),
  relief: quantityOf('pressure'),
  /** How long the pump has usually run when somebody reads amps. */
  readAfter: quantityOf('time'),
  /** Two gauges that differ by no more than this agree. */
  gaugesAgree: quantityOf('pressure'),
  house: z.strictObject({
    /** What a tap is opened to when somebody looks at the water. */
    usualDraw: quantityOf('flow'),
    /** Pressure lost in filters at class flow. */
    filterLoss: quantityOf('pressure'),
    /** Pressure at a tap below which people call the water weak. */
    weakTap: quantityOf('pressure'),
  }),
  from,
  note: words.optional(),
});
export type WaterSystem = z.infer<typeof waterSystem>;

/**
 * One edit of a sound water system. Where an edit needs a severity it is SI or a plain factor; the
 * remark says which. The water side has one interpreter for these; it never sees a fault id.
 */
export const waterEdit = z.union([
  /** Head of the pump times the severity: worn or fused stages, too few stages. */
  z.strictObject({ edit: z.literal('head') }),
  /** Flow that the intake lets through, times the severity; shut-off head stays. */
  z.strictObject({ edit: z.literal('intake') }),
  /** No water is moved: air or gas in the stages, or a shaft that turns nothing. */
  z.strictObject({ edit: z.literal('no-lift'), shaft: z.enum(['dry', 'free']) }),
  /** The drop pipe has parted: the pump pumps into the well. */
  z.strictObject({ edit: z.literal('parted') }),
  /** Share of gas in what the pump lifts: the severity. */
  z.strictObject({ edit: z.literal('gas') }),
  /** A hole; severity: its flow at rest with the gauge at cut-out. Depth for a hole in the drop pipe. */
  z.strictObject({
    edit: z.literal('leak'),
    at: z.enum(['riser', 'pitless', 'buried', 'check', 'tank', 'house']),
    depth: quantityOf('length').optional(),
  }),
  /** Shut altogether: by ice, a jammed check valve, a hand. */
  z.strictObject({ edit: z.literal('close'), at: z.enum(['line', 'check', 'tank', 'house']) }),
  /** Pressure lost in the house line at class flow, beside that of a clean filter: the severity. */
  z.strictObject({ edit: z.literal('restrict') }),
  /** Precharge plus the severity. */
  z.strictObject({ edit: z.literal('precharge') }),
  /** Share of the tank's air that is left: the severity; water stands at the air valve. */
  z.strictObject({ edit: z.literal('air') }),
  /** Volume of the tank times the severity. */
  z.strictObject({ edit: z.literal('volume') }),
  /** Cut-in, cut-out or both plus the severity. */
  z.strictObject({ edit: z.literal('setting'), of: z.enum(['cut-in', 'cut-out', 'both']) }),
  /** The switch feels the severity, whatever the pressure is. */
  z.strictObject({ edit: z.literal('tube') }),
  /** The switch feels nothing at all, as with a torn diaphragm. */
  z.strictObject({ edit: z.literal('thrust-lost') }),
  /** The low-pressure cut-off stands open. */
  z.strictObject({ edit: z.literal('cut-off-open') }),
  /** The gauge shows the pressure plus the severity, or the severity for ever. */
  z.strictObject({ edit: z.literal('gauge'), shows: z.enum(['offset', 'stuck']) }),
  /** The severity is the share of the water over the intake that is gone; above one the intake is dry. */
  z.strictObject({ edit: z.literal('level') }),
  /** What the well gives per length of drawdown, times the severity. */
  z.strictObject({ edit: z.literal('yield') }),
  /** The bottom of the well has risen by the severity. */
  z.strictObject({ edit: z.literal('bottom') }),
  /** Steady use of the house: the severity. */
  z.strictObject({ edit: z.literal('demand') }),
]);
export type WaterEdit = z.infer<typeof waterEdit>;

/** What the water side can be asked; pressures, flows, lengths, times and volumes in SI. */
export const waterQuestion = z.enum([
  'gauge-at-rest',
  'gauge-running',
  'cut-in',
  'cut-out',
  'plateau',
  'dead-head',
  'flow-at-pressure',
  'open-discharge',
  'fill-time',
  'drawdown',
  'cycle-on',
  'cycle-off',
  'leak-down-isolated',
  'leak-down-open',
  'static-level',
  'pumping-level',
  'recovery-rate',
  'bottom-tells',
  'precharge',
  'filter-drop',
  'tap-pressure',
  'gauge-error',
  'tube-error',
  'gauge-zone',
  'air-valve',
  'discharge',
  'first-draw',
  'switch-tells',
  'water-at-tap',
  'stops',
  'starts-unused',
  'relief',
  'fills-isolated',
  'cycling',
  'gauge-tells',
  'tube-tells',
]);
export type WaterQuestion = z.infer<typeof waterQuestion>;
