import type { Person } from '../../src/schema/basics.ts';
import type { SiteFacts } from './site.ts';
import { isAnyOpen, mayActAs } from './work.ts';

/**
 * What to do after "stop, unsafe", from wherever the work was: ids in order, texts in the words.
 *
 * Nothing here asks anybody to reach past an open cover; a supply that was locked is left locked.
 */
export const SAFE_STATE = [
  'stop-hands-off',
  'step-back',
  'keep-others-away',
  'switch-off-at-a-dry-labelled-place',
  'leave-the-lock-on',
  'treat-capacitors-as-charged',
  'guard-the-open-well',
  'shut-the-door-and-leave',
  'call-the-fire-service-if-it-smells-or-buzzes',
  'fetch-a-qualified-person',
] as const;
export type SafeStateId = (typeof SAFE_STATE)[number];

export function safeState(site: SiteFacts, who: Person): SafeStateId[] {
  if (!mayActAs(who, 'trainee-accompanied')) return forOnlookers();
  const open = isAnyOpen(site);
  const holds: Readonly<Record<SafeStateId, boolean>> = {
    'stop-hands-off': true,
    'step-back': open,
    'keep-others-away': true,
    'switch-off-at-a-dry-labelled-place': site.supply === 'live',
    'leave-the-lock-on': site.supply === 'locked' || site.supply === 'unsure' || site.supply === 'off',
    'treat-capacitors-as-charged': site.places.box !== 'closed' && site.charge === 'possible',
    'guard-the-open-well': site.places.well !== 'closed',
    'shut-the-door-and-leave': false,
    'call-the-fire-service-if-it-smells-or-buzzes': true,
    'fetch-a-qualified-person': who !== 'qualified',
  };
  return SAFE_STATE.filter((id) => holds[id]);
}

/** A caller or a trainee alone touches nothing at all. */
function forOnlookers(): SafeStateId[] {
  return [
    'stop-hands-off',
    'keep-others-away',
    'shut-the-door-and-leave',
    'call-the-fire-service-if-it-smells-or-buzzes',
    'fetch-a-qualified-person',
  ];
}
