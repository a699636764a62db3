import { z } from 'zod';
import { boxFamily, id, quantityOf, rangeOf } from './basics.ts';

/** One length of cable between two places; every field may be missing, which means unknown. */
export const cableRun = z.strictObject({
  conductor: id.optional(),
  length: quantityOf('length').optional(),
});
export type CableRun = z.infer<typeof cableRun>;

/**
 * What is known of an installation. Every field is optional and a missing field means unknown:
 * the engine asks for it only where it would change what comes next.
 */
export const installation = z.strictObject({
  supply: z.strictObject({ volts: quantityOf('voltage').optional() }).optional(),
  breaker: quantityOf('current').optional(),
  family: boxFamily.optional(),
  box: id.optional(),
  motor: id.optional(),
  /** Known when the row is not: narrows the rows. */
  power: quantityOf('power').optional(),
  leads: z.enum(['2-wire', '3-wire']).optional(),
  buried: cableRun.optional(),
  drop: cableRun.optional(),
  /** Printed on the cans. */
  startCapacitor: rangeOf('capacitance').optional(),
  runCapacitor: quantityOf('capacitance').optional(),
  cutIn: quantityOf('pressure').optional(),
  cutOut: quantityOf('pressure').optional(),
  cutOffSwitch: z.boolean().optional(),
  secondSource: z.boolean().optional(),
  /** What else is there or is known to be missing, by fitting id. */
  fittings: z.record(id, z.boolean()).optional(),
  /** Depths from the well top. */
  well: z
    .strictObject({
      staticLevel: quantityOf('length').optional(),
      intake: quantityOf('length').optional(),
      casing: quantityOf('length').optional(),
      specificCapacity: quantityOf('specificCapacity').optional(),
    })
    .optional(),
  /** The flow that names the pump end, the head it gives there, and against a shut valve. */
  pump: z
    .strictObject({
      classFlow: quantityOf('flow').optional(),
      classHead: quantityOf('length').optional(),
      shutOffHead: quantityOf('length').optional(),
    })
    .optional(),
  tank: z.strictObject({ volume: quantityOf('volume').optional() }).optional(),
  checkAboveGround: z.boolean().optional(),
});
export type Installation = z.infer<typeof installation>;
/** As written in a case file: quantities with their printed units. */
export type InstallationInput = z.input<typeof installation>;
