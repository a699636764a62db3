import { createActor, type SnapshotFrom } from 'xstate';
import type { Place } from '../../src/schema/basics.ts';
import type { SiteEvent } from '../../src/schema/case.ts';
import type { SiteView } from '../call/types.ts';
import { worksiteEvent } from './events.ts';
import { worksiteMachine } from './worksite.machine.ts';

/**
 * The work site as plain facts, read off the worksite machine: what permission, the missing steps
 * and the strip on the screen are worked out from.
 */
export interface SiteFacts {
  /** `unsure`: off or locked when last said, not since; counts as live, and as not measurable. */
  readonly supply: 'live' | 'off' | 'locked' | 'unsure';
  readonly places: Readonly<Record<Place, 'closed' | 'open' | 'proved'>>;
  readonly leads: 'connected' | 'lifted' | 'split';
  readonly charge: 'possible' | 'bled';
  readonly electronics: 'in-circuit' | 'disconnected';
  readonly people: 'near' | 'clear';
  readonly disinfection: 'none' | 'due' | 'done';
  readonly stopped: boolean;
  readonly pressure: 'up' | 'relieved';
  readonly deadHeadKit: 'not-shown' | 'shown';
  readonly substitute: 'none' | 'fitted';
  readonly secondSource: 'possible' | 'none-seen';
  readonly reset: 'unknown' | 'unused' | 'used';
  readonly overload: 'unknown' | 'unused' | 'used';
  readonly insulation: 'untested' | 'good' | 'bad';
}

/** The facts of one snapshot of the machine: its regions, by name. */
export function siteFacts({ value }: Pick<SnapshotFrom<typeof worksiteMachine>, 'value'>): SiteFacts {
  const { panel, switch: switchPlace, box, well, work, ...rest } = value;
  return Object.freeze({
    ...rest,
    places: Object.freeze({ panel, switch: switchPlace, box, well }),
    stopped: work === 'stopped',
  });
}

/**
 * Fold of all that was said about the site, in order.
 *
 * Claims from another device belong in it too, followed by a lapse: covers, leads and duties stay as
 * they were left, while nothing that protects a person is believed.
 */
export function foldSite(said: readonly SiteEvent[]): SiteFacts {
  const actor = createActor(worksiteMachine).start();
  for (const one of said) {
    const event = worksiteEvent(one);
    if (event !== undefined) actor.send(event);
  }
  const facts = siteFacts(actor.getSnapshot());
  actor.stop();
  return facts;
}

/**
 * What the strip says, for the place where the present step is done.
 *
 * @param holdsCapacitor unknown counts as true
 */
export function siteView(site: SiteFacts, here: Place | undefined, holdsCapacitor = true): SiteView {
  const { places, leads, charge, disinfection, secondSource, stopped } = site;
  return {
    word: word(site, here, holdsCapacitor),
    supply: site.supply === 'unsure' ? 'live' : site.supply,
    places,
    leads,
    charge,
    disinfection,
    secondSource,
    stopped,
    here,
    lapsed: site.supply === 'unsure',
  };
}

function word(site: SiteFacts, here: Place | undefined, holdsCapacitor: boolean): SiteView['word'] {
  if (site.supply !== 'locked') return 'live';
  if (here === undefined || site.places[here] !== 'proved') return 'locked';
  return here === 'box' && holdsCapacitor && site.charge === 'possible' ? 'not-bled' : 'proved';
}
