import { z } from 'zod';
import { frequency, from, id, node, person, place, quantityOf, words } from './basics.ts';
import { waterQuestion } from './water.ts';

/** Where the probes, the clamp or the eyes go. Nodes and parts are those of the netlist. */
export const checkPoint = z.union([
  /** `tie`: nodes bridged for the reading, as when the far end of a run is twisted together. */
  z.strictObject({ between: z.tuple([node, node]), tie: z.array(node).min(2).optional() }),
  z.strictObject({ across: node }),
  z.strictObject({ clamp: z.array(node).min(1) }),
  /** All named nodes tied together, against ground. */
  z.strictObject({ tied: z.array(node).min(1), to: node }),
  z.strictObject({ look: z.enum(['site', 'panel', 'switch', 'box', 'well', 'tank', 'house', 'phone']) }),
]);
export type CheckPoint = z.infer<typeof checkPoint>;

/**
 * The state of the work site that a check needs. The interlock turns it into permission and the
 * missing steps; proof of dead and bled capacitors follow from `supply: locked` and the place, and
 * are not repeated here.
 */
export const neededSite = z.strictObject({
  supply: z.enum(['live', 'locked', 'any']),
  place: place.optional(),
  cover: z.enum(['open', 'any']),
  /** The pressure switch is calling for water. */
  calling: z.literal(true).optional(),
  leads: z.enum(['connected', 'lifted', 'split', 'any']),
  /** The motor has stood still long enough for its own protector to close again. */
  cooled: z.literal(true).optional(),
});
export type NeededSite = z.infer<typeof neededSite>;

/** What the water side is doing while the reading is taken; without it: a tap open, as long as it takes. */
const moment = z.strictObject({
  /** Drawn at a tap. */
  draw: quantityOf('flow').optional(),
  /** Held on the gauge while a flow is measured. */
  pressure: quantityOf('pressure').optional(),
  /** Running before the reading, or standing before it. */
  time: quantityOf('time').optional(),
  /** The pump is switched off. */
  off: z.literal(true).optional(),
  /** The valve nearest the well is shut. */
  shut: z.literal(true).optional(),
});

/** What the plant is asked so as to predict the check. */
export const prediction = z.union([
  z.strictObject({
    reads: z.enum([
      'ohms',
      'volts',
      'volts-at-start',
      'amps',
      'amps-at-start',
      'capacitance',
      /** Worked out from amps through a capacitor and volts across it, while it works. */
      'capacitance-in-service',
      'insulation',
      'watts',
      /** Alternating current that does not come back on the conductors in the clamp. */
      'residual',
    ]),
    moment: moment.optional(),
  }),
  /** Gauge, bucket, watch, sounder, or what is seen of the water. */
  z.strictObject({ water: waterQuestion, moment: moment.optional() }),
  /** A category that a rule of the plant derives from its state. */
  z.strictObject({
    rule: z.enum([
      'what-is-seen',
      'sound',
      'breaker-lever',
      'contactor-position',
      'contacts-made',
      'trip-class',
    ]),
  }),
  /** A category that faults carry signs for. */
  z.strictObject({ signs: z.literal(true) }),
  /** Worked out from readings of the same set; adds no evidence of its own. */
  z.strictObject({ sumTest: z.tuple([id, id, id]) }),
]);
export type Prediction = z.infer<typeof prediction>;

/** Facts that the interlock takes from readings; the first four are events of the worksite machine. */
export const siteFact = z.enum([
  'insulation-good',
  'insulation-bad',
  'no-reset-made',
  'reset-used',
  'winding-ohms-read',
  'overload-read',
  'breaker-tripped',
]);
export type SiteFact = z.infer<typeof siteFact>;

/**
 * One question to the installation: what is asked, where, with what, in which state of the site,
 * and what the plant must be asked to predict it.
 */
export const check = z.strictObject({
  id,
  /** Readings that share one screen. */
  set: id.optional(),
  at: checkPoint,
  instrument: id,
  site: neededSite,
  /** The least qualified person who may do it. */
  who: person,
  hazards: z.array(id),
  minutes: z.strictObject({ hands: z.number().nonnegative(), wait: z.number().nonnegative() }),
  reads: z.union([
    z.strictObject({
      quantity: z.enum([
        ...['resistance', 'voltage', 'current', 'capacitance', 'power'],
        ...['pressure', 'pressureRate', 'flow', 'volume', 'length', 'speed', 'time'],
      ] as const),
      unit: words,
    }),
    z.strictObject({ answers: z.array(id).min(2) }),
  ]),
  predict: prediction,
  /** Bounds that hold whatever the installation, e.g. an insulation band. */
  band: z
    .strictObject({
      low: quantityOf('resistance').optional(),
      high: quantityOf('resistance').optional(),
    })
    .or(z.strictObject({ low: quantityOf('voltage').optional(), high: quantityOf('voltage').optional() }))
    .or(z.strictObject({ low: quantityOf('current').optional(), high: quantityOf('current').optional() }))
    .or(z.strictObject({ low: quantityOf('pressure').optional(), high: quantityOf('pressure').optional() }))
    .or(
      z.strictObject({
        low: quantityOf('pressureRate').optional(),
        high: quantityOf('pressureRate').optional(),
      }),
    )
    .optional(),
  /** The expected answer of a category check on a sound system. */
  expected: id.optional(),
  /**
   * How often each answer is given where the fault says nothing about it, when more than one answer
   * is sound: a house with standby supply and one without.
   */
  usual: z.array(z.strictObject({ answer: id, how: frequency })).optional(),
  /** Parts that must exist (or must not) beside the nodes and parts of `at`. */
  needs: z.array(node).optional(),
  without: z.array(node).optional(),
  /**
   * Readings and sets that must stand first; some only where something was seen: ohms before any
   * test that could stall a motor which does not start.
   */
  after: z
    .array(
      z.union([
        id,
        z.strictObject({
          seen: z.strictObject({ check: id, answers: z.array(id).min(1) }),
          checks: z.array(id).min(1),
        }),
      ]),
    )
    .optional(),
  /**
   * What the reading tells the interlock: a fact of the work site, or that something has been read.
   * Without `outcomes` any reading that was really taken counts.
   */
  says: z.array(z.strictObject({ fact: siteFact, outcomes: z.array(id).min(1).optional() })).optional(),
  /** Possible only where this fitting is there. */
  fitting: id.optional(),
  /** Not possible with a lid that pulls apart. */
  notPlugApart: z.literal(true).optional(),
  /** Only with a low-ohm meter. */
  benchOnly: z.literal(true).optional(),
  /** Asked before any cover is opened; needs no plant. */
  opening: z.literal(true).optional(),
  from,
  note: words.optional(),
});
export type Check = z.infer<typeof check>;

/** What a class of meter is off by: ± (share of the reading + a fixed part). */
const uncertainty = z.strictObject({
  relative: z.number().nonnegative(),
  absolute: z.tuple([z.number().nonnegative(), words]),
});

export const instrument = z.strictObject({
  id,
  kind: z.enum(['meter', 'senses']),
  classes: z.strictObject({ ordinary: uncertainty, bench: uncertainty.optional() }).optional(),
  /** Above this a display shows over-range. */
  top: z.tuple([z.number(), words]).optional(),
  /** Share of answers that are right, by who answers; only for senses. */
  reliability: z.partialRecord(person, z.number().min(0.5).max(1)).optional(),
  from,
  note: words.optional(),
});
export type Instrument = z.infer<typeof instrument>;
