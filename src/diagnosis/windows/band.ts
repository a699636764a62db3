import type { Check } from '../../schema/check.ts';
import { type Draft, evidenceFor } from './draft.ts';

/** A window that holds whatever the installation: an insulation band, a contact, an overload. */
export function bandWindow(check: Check): Draft {
  const low = check.band?.low;
  const high = check.band?.high;
  const part = {
    name: 'practice',
    low: low ?? 0,
    high: high ?? 0,
    from: evidenceFor(check.from, 'band'),
  } as const;
  const bounds = { kind: 'range', parts: [part], quality: 'practice' } as const;
  if (high === undefined) return { ...bounds, unbounded: 'high' };
  return low === undefined ? { ...bounds, unbounded: 'low' } : bounds;
}
