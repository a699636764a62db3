import type { Check } from '../../schema/check.ts';
import { figureOf } from '../judgements.ts';
import type { SystemChoice } from '../system.ts';
import { type Asked, type Draft, evidenceFor } from './draft.ts';
import { soundValue } from './sound.ts';

/**
 * Expected amps and watts: the published values at full and at service-factor load, as the anchored
 * plant shows them, widened at the low end by a pump that is lightly loaded.
 */
export function ampsWindow(asked: Asked, check: Check, choice: SystemChoice): Draft {
  const { model, motor, nominalLoad } = choice.input;
  if (model === undefined) return { kind: 'unknown', parts: [], quality: 'table', missing: ['motor'] };
  const most = model.serviceFactorLoad.torque / model.fullLoad.torque;
  const at = (load: number): number | undefined =>
    soundValue(choice.input, choice.spreads, check, { load: (load - nominalLoad) / choice.spreads.load });
  const full = at(1);
  const service = at(most);
  const light = at(figureOf(asked.knowledge.judgements, 'load-limits', 'light'));
  if (full === undefined || service === undefined || light === undefined) {
    return { kind: 'unknown', parts: [], quality: 'table', missing: ['motor'] };
  }
  const low = Math.min(full, service);
  const high = Math.max(full, service);
  return {
    kind: 'range',
    parts: [
      {
        name: 'table',
        low,
        high,
        from: [...evidenceFor(motor.from, 'fullLoad'), ...evidenceFor(motor.from, 'serviceFactorLoad')],
      },
      {
        name: 'load',
        low: Math.min(0, light - low),
        high: Math.max(0, light - high),
        from: asked.knowledge.judgements['load-limits']?.from ?? [],
      },
    ],
    quality: 'table',
  };
}
