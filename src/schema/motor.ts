import { z } from 'zod';
import { from, id, quantityOf, rangeOf, words } from './basics.ts';

/** Amps on one line conductor (two-lead motor) or on each of the three leads. */
const leadAmps = z.union([
  z.strictObject({ line: quantityOf('current') }),
  z.strictObject({
    yellow: quantityOf('current'),
    black: quantityOf('current'),
    red: quantityOf('current'),
  }),
]);

const load = z.strictObject({ amps: leadAmps, watts: quantityOf('power').optional() });

/**
 * One row of a published motor table: what this motor draws and what its windings measure.
 *
 * Ohms are lead to lead at the motor, cable excluded, temperature not stated by the source. A row
 * with `auxiliary` is the same motor with extra run capacitance: evidence for the model, never a
 * nameplate to choose.
 */
export const motor = z.strictObject({
  id,
  leads: z.enum(['2-wire', '3-wire']),
  frame: quantityOf('length'),
  power: quantityOf('power'),
  volts: quantityOf('voltage'),
  circuit: z.enum(['start-inside', 'start-only', 'start-and-run']),
  auxiliary: z.literal(true).optional(),
  serviceFactor: z.number().min(1).max(2).optional(),
  fullLoad: load.optional(),
  serviceFactorLoad: load.optional(),
  winding: z
    .union([
      z.strictObject({ lineToLine: rangeOf('resistance') }),
      z.strictObject({ main: rangeOf('resistance'), start: rangeOf('resistance') }),
    ])
    .optional(),
  lockedRotor: quantityOf('current').optional(),
  startCapacitor: rangeOf('capacitance').optional(),
  runCapacitor: quantityOf('capacitance').optional(),
  breaker: z.strictObject({ most: quantityOf('current'), usual: quantityOf('current') }).optional(),
  /** Where the motor's own thermal protector sits. */
  protector: z.enum(['inside', 'in-box', 'unknown']),
  from,
  note: words.optional(),
});
export type Motor = z.infer<typeof motor>;

/**
 * Fitted parameters of the two-winding model of one motor row; the id is the row's.
 *
 * Ohms at rated frequency referred to the main winding; `turnsRatio` is effective start turns over
 * main turns; torque and slip at the two published loads. Meaning of each: src/plant/electrical.
 */
export const motorModel = z.strictObject({
  id,
  coldMain: quantityOf('resistance'),
  coldStart: quantityOf('resistance'),
  hotFactor: z.number().positive(),
  turnsRatio: z.number().positive(),
  leakage: quantityOf('resistance'),
  startLeakageFactor: z.number().positive(),
  magnetising: quantityOf('resistance'),
  rotor: quantityOf('resistance'),
  ironLoss: quantityOf('resistance'),
  friction: quantityOf('power'),
  skinFactor: z.number().positive(),
  saturationFactor: z.number().positive(),
  runCapacitor: quantityOf('capacitance').optional(),
  startCapacitor: quantityOf('capacitance').optional(),
  fullLoad: z.strictObject({ torque: quantityOf('torque'), slip: z.number().positive() }),
  serviceFactorLoad: z.strictObject({ torque: quantityOf('torque'), slip: z.number().positive() }),
  from,
  note: words.optional(),
});
export type MotorModel = z.infer<typeof motorModel>;

/** Resistance of one conductor of a size, with the span that printed tables disagree over. */
export const conductor = z.strictObject({
  id,
  metal: z.enum(['copper', 'aluminium']),
  gauge: z.number().int(),
  perLength: quantityOf('resistancePerLength'),
  temperature: quantityOf('temperature'),
  /** Factors on `perLength` that span the printed tables. */
  spread: z.strictObject({ low: z.number().positive(), high: z.number().positive() }),
  from,
  note: words.optional(),
});
export type Conductor = z.infer<typeof conductor>;
