import { z } from 'zod';
import { id, person, place, words } from './basics.ts';
import { installation } from './installation.ts';

/**
 * The case file: an append-only list of events, versioned and strict, read and written by the app
 * and the command line alike. State is the fold of the events (src/records/fold.ts).
 */
export const caseId = z
  .string()
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'a case id is lower-case words joined by hyphens')
  .max(60);

/** `case:sequence:device`; sequence = 1 + the highest the device knew. */
export const eventId = z.string().regex(/^[a-z0-9-]+:\d{6}:[a-z0-9-]+$/, 'an event id is case:000001:device');

export const notTakenReason = z.enum(['no-tool', 'cannot-reach', 'not-safe', 'not-now']);
export type NotTakenReason = z.infer<typeof notTakenReason>;

/**
 * What the instrument or the person said. A number always carries its unit; open, unstable and not
 * taken are kinds of reading, never numbers.
 */
export const reading = z.union([
  z.strictObject({
    value: z.tuple([
      z.number().nonnegative(),
      z.enum([
        ...['ohm', 'kohm', 'Mohm', 'mohm', 'V', 'mV', 'A', 'mA', 'uF', 'nF', 'W', 'kW'],
        ...['psi', 'psi/min', 'gpm', 'gal', 'ft', 'ft/min', 's', 'min'],
      ] as const),
    ]),
  }),
  z.strictObject({ open: z.literal(true) }),
  z.strictObject({ unstable: z.literal(true) }),
  z.strictObject({ answer: id }),
  z.strictObject({ notTaken: notTakenReason }),
]);
export type Reading = z.infer<typeof reading>;

const stamp = {
  /** Given to every event on reading; may be left out when a case is written by hand. */
  id: eventId.optional(),
  at: z.iso.datetime({ offset: true }).optional(),
};

/** A fact about the work site, said by a person: an event of the worksite machine. */
export const siteEvent = z.strictObject({
  type: id,
  place: place.optional(),
});
export type SiteEvent = z.infer<typeof siteEvent>;

export const event = z.discriminatedUnion('kind', [
  z.strictObject({ ...stamp, kind: z.literal('opened'), site: words.max(80).optional() }),
  z.strictObject({ ...stamp, kind: z.literal('person'), role: person }),
  z.strictObject({
    ...stamp,
    kind: z.literal('kit'),
    instruments: z.array(id),
    meter: z.enum(['ordinary', 'bench']),
  }),
  z.strictObject({
    ...stamp,
    kind: z.literal('installation'),
    /** Laid over what was known before, field by field. */
    set: installation,
    /** Fields that turn out not to be known after all; dropped before `set` is laid over. */
    unknown: z.array(installation.keyof()).optional(),
  }),
  z.strictObject({ ...stamp, kind: z.literal('circumstances'), happened: z.array(id) }),
  z.strictObject({
    ...stamp,
    kind: z.literal('answer'),
    check: id,
    reading,
    /** The event that this one corrects. Both stay. */
    corrects: eventId.optional(),
    /** Taken after a repair: the next visit's baseline, no evidence about what was found. */
    asLeft: z.literal(true).optional(),
  }),
  z.strictObject({ ...stamp, kind: z.literal('site'), event: siteEvent }),
  z.strictObject({
    ...stamp,
    kind: z.literal('visit'),
    type: id,
    note: words.max(500).optional(),
    /** Events that count no longer: a step back. They stay in the trail. */
    withdraws: z.array(eventId).min(1).optional(),
  }),
]);
export type CaseEvent = z.infer<typeof event>;

/** As written, stored and sent: quantities with their printed units. */
export type CaseEventInput = z.input<typeof event>;

export const caseFile = z.strictObject({
  format: z.literal('ohmwell-case'),
  version: z.literal(1),
  case: caseId,
  events: z.array(event).max(5000),
});
export type CaseFile = z.infer<typeof caseFile>;
