import type { Check } from '../../schema/check.ts';
import { of } from '../../units/units.ts';
import { figureOf } from '../judgements.ts';
import type { SystemChoice } from '../system.ts';
import type { Asked, Draft } from './draft.ts';
import { soundValue } from './sound.ts';

/** Expected volts: the sound plant at the lowest and the highest supply that the motor may run on. */
export function voltsWindow(asked: Asked, check: Check, choice: SystemChoice): Draft {
  const at = (end: 'low' | 'high'): number | undefined => {
    const volts = choice.input.motor.volts * figureOf(asked.knowledge.judgements, 'supply-limits', end);
    return soundValue({ ...choice.input, volts: of(volts, 'V') }, choice.spreads, check);
  };
  const low = at('low');
  const high = at('high');
  if (low === undefined || high === undefined)
    return { kind: 'unknown', parts: [], quality: 'practice', missing: ['box'] };
  const from = asked.knowledge.judgements['supply-limits']?.from ?? [];
  return { kind: 'range', parts: [{ name: 'supply', low, high, from }], quality: 'practice' };
}
