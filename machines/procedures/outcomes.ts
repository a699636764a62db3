import { OUTCOMES, type Outcome } from '../../src/diagnosis/types.ts';
import type { Check } from '../../src/schema/check.ts';

/**
 * Which outcomes can a check have? A procedure must have a way on from every one of them.
 *
 * Nothing but volts and amps reads "none"; nothing but ohms and capacitance reads "open". A category
 * has its answers. Whatever it is, it may also not be taken.
 */
export function outcomesOf(check: Pick<Check, 'reads'>): readonly Outcome[] {
  const { reads } = check;
  if ('answers' in reads) return [...reads.answers, 'not-taken'];
  const never = NEVER[reads.quantity];
  return OUTCOMES.filter((outcome) => !never.includes(outcome));
}

type NumberQuantity = Extract<Check['reads'], { quantity: unknown }>['quantity'];

const NEVER: Readonly<Record<NumberQuantity, readonly Outcome[]>> = {
  voltage: ['open'],
  current: ['open'],
  resistance: ['none'],
  capacitance: ['none'],
  power: ['none', 'open'],
  pressure: ['none', 'open'],
  pressureRate: ['none', 'open'],
  flow: ['none', 'open'],
  volume: ['none', 'open'],
  length: ['none', 'open'],
  speed: ['none', 'open'],
  /** A time that never ends is over-range. */
  time: ['none'],
};

/** What a fork is told of a check that this installation has. */
export const HERE = 'here';

/** What a procedure is told of a check that this installation does not have. */
export const NOT_HERE = 'not-here';
