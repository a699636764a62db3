import type { SiteView } from '../../../machines/call/types.ts';
import type { Part, Sheet } from '../../schema/netlist.ts';

/**
 * What the claims about the site change in the picture: which conductors carry thorns, how contacts
 * stand, what is lifted. It reads the strip's facts and nothing else.
 */
export interface SiteLook {
  /** A conductor of this sheet counts as live. */
  isLive(sheet: Sheet): boolean;
  isMade(part: Part): boolean;
  isLifted(part: Part): boolean;
  isProved(sheet: Sheet): boolean;
  isOpen(sheet: Sheet): boolean;
}

export function siteLook(site: SiteView): SiteLook {
  const place = (sheet: Sheet): 'closed' | 'open' | 'proved' =>
    sheet === 'service' ? 'closed' : sheet === 'motor' ? site.places.well : site.places[sheet];
  return {
    isLive: (sheet) => sheet === 'service' || (site.supply !== 'locked' ? true : place(sheet) !== 'proved' && sheet !== 'motor'),
    isMade: (part) => (part.kind === 'breaker-pole' ? site.supply === 'live' : part.kind !== 'contactor-pole' && part.kind !== 'start-switch-inside'),
    isLifted: (part) =>
      (part.kind === 'lead-terminal' && site.leads !== 'connected') || (part.kind === 'splice' && site.leads === 'split'),
    isProved: (sheet) => place(sheet) === 'proved',
    isOpen: (sheet) => place(sheet) !== 'closed',
  };
}
