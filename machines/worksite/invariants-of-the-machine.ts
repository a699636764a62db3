import type { Place } from '../../src/schema/basics.ts';
import type { WorksiteEvent } from './events.ts';
import type { SiteFacts } from './site.ts';

/**
 * What the worksite machine itself promises: of each state that it can reach, and of each change.
 * Whatever people say, in whatever order, these hold.
 */
export interface StateInvariant {
  readonly name: string;
  readonly sentence: string;
  readonly holds: (site: SiteFacts) => boolean;
}

export interface ChangeInvariant {
  readonly name: string;
  readonly sentence: string;
  readonly holds: (before: SiteFacts, event: WorksiteEvent, after: SiteFacts) => boolean;
}

const ALL: readonly Place[] = ['panel', 'switch', 'box', 'well'];
const some = (site: SiteFacts, state: 'open' | 'proved') => ALL.some((place) => site.places[place] === state);
const allClosed = (site: SiteFacts) => ALL.every((place) => site.places[place] === 'closed');
const uncovered = (site: SiteFacts) => ALL.filter((place) => site.places[place] !== 'closed').join(' and ');

export const STATE_INVARIANTS: readonly StateInvariant[] = [
  {
    name: 'proof-only-under-lock',
    sentence: 'A place is proved dead only while the supply is locked.',
    holds: (site) => site.supply === 'locked' || !some(site, 'proved'),
  },
  {
    name: 'bled-only-in-a-proved-box',
    sentence: 'Capacitors count as bled only while the box is proved dead.',
    holds: (site) => site.charge === 'possible' || site.places.box === 'proved',
  },
  {
    name: 'one-live-place',
    sentence: 'With power on one cover is off at most; switch and box together for the control loop.',
    holds: (site) =>
      site.supply !== 'live' ||
      ['', 'panel', 'switch', 'box', 'well', 'switch and box'].includes(uncovered(site)),
  },
  {
    name: 'no-power-into-a-split',
    sentence: 'Power never stands on while the splice at the well head is split.',
    holds: (site) => site.supply !== 'live' || site.leads !== 'split',
  },
  {
    name: 'no-lid-on-a-split',
    sentence: 'The well is not closed over a split splice.',
    holds: (site) => site.leads !== 'split' || site.places.well !== 'closed',
  },
  {
    name: 'open-well-owes-disinfection',
    sentence: 'While the well is open, disinfection is due.',
    holds: (site) => site.places.well === 'closed' || site.disinfection === 'due',
  },
  {
    name: 'stopped-claims-nothing',
    sentence: 'While stopped, nothing counts as locked, proved, bled or clear.',
    holds: (site) =>
      !site.stopped ||
      (site.supply !== 'locked' &&
        !some(site, 'proved') &&
        site.charge === 'possible' &&
        site.people === 'near'),
  },
];

const LAPSES: readonly WorksiteEvent['type'][] = ['lapsed', 'supply-restored', 'stop-unsafe'];

export const CHANGE_INVARIANTS: readonly ChangeInvariant[] = [
  {
    name: 'power-returns-only-when-clear',
    sentence:
      'Power comes back only by switching on, or by the one reset, from off, with covers on, people clear and leads landed.',
    holds: (before, event, after) =>
      before.supply === 'live' ||
      after.supply !== 'live' ||
      (allClosed(before) &&
        before.people === 'clear' &&
        before.supply !== 'locked' &&
        ((event.type === 'energise' && before.leads === 'connected' && before.electronics === 'in-circuit') ||
          (event.type === 'reset-breaker' && before.leads !== 'split'))),
  },
  {
    name: 'locked-only-from-off',
    sentence: 'The lock goes on only after switching off, with people clear.',
    holds: (before, event, after) =>
      after.supply !== 'locked' ||
      before.supply === 'locked' ||
      (event.type === 'lock-and-tag' && before.supply === 'off' && before.people === 'clear'),
  },
  {
    name: 'unlocked-only-when-clear',
    sentence:
      'The lock comes off only with covers on and people clear; a lapse leaves the supply unsure instead.',
    holds: (before, event, after) =>
      before.supply !== 'locked' ||
      after.supply === 'locked' ||
      after.supply === 'unsure' ||
      (event.type === 'unlock' && allClosed(before) && before.people === 'clear'),
  },
  {
    name: 'proved-only-by-proof',
    sentence:
      'A place becomes proved only by its own proof of dead, open and under lock, the tester proved before and after.',
    holds: (before, event, after) =>
      ALL.every(
        (place) =>
          after.places[place] !== 'proved' ||
          before.places[place] === 'proved' ||
          (event.type === 'prove-dead' &&
            event.place === place &&
            before.places[place] === 'open' &&
            before.supply === 'locked'),
      ),
  },
  {
    name: 'bled-only-by-bleeding',
    sentence: 'Capacitors become bled only by bleeding and metering them in a proved box.',
    holds: (before, event, after) =>
      after.charge === 'possible' ||
      before.charge === 'bled' ||
      (event.type === 'bleed-capacitors' && before.places.box === 'proved'),
  },
  {
    name: 'closing-drops-the-proof',
    sentence:
      'A cover that goes on takes its proof with it, and with the box the word that capacitors are bled.',
    holds: (before, event, after) =>
      event.type !== 'close-cover' ||
      before.stopped ||
      after.places[event.place] === 'closed' ||
      (event.place === 'well' && before.leads === 'split'),
  },
  {
    name: 'leads-move-only-where-dead',
    sentence: 'Leads move one step at a time, and only where the place is proved dead.',
    holds: (before, event, after) => {
      if (before.leads === after.leads) return true;
      const atHand = (event.type === 'lift-leads' || event.type === 'land-leads') && event.place;
      if (atHand)
        return before.places[atHand] === 'proved' && before.leads !== 'split' && after.leads !== 'split';
      const atWell = event.type === 'split-at-wellhead' || event.type === 'join-at-wellhead';
      return (
        atWell &&
        before.places.well === 'proved' &&
        before.leads !== 'connected' &&
        after.leads !== 'connected'
      );
    },
  },
  {
    name: 'hands-near-after-work-on-leads',
    sentence:
      'After work on the leads, and after covers go back on under lock, people must be cleared again.',
    holds: (before, event, after) =>
      after.people === 'near' ||
      (before.leads === after.leads && !(event.type === 'close-cover' && before.supply === 'locked')),
  },
  {
    name: 'a-lapse-takes-back-every-claim',
    sentence:
      'After time away, a hand-over, an import, a change of person, a withdrawn step or a stop nothing counts as locked, proved, bled, relieved or clear; covers, leads and duties stay as they were left.',
    holds: (before, { type }, after) =>
      !LAPSES.includes(type) ||
      ((after.supply === 'live' || after.supply === 'unsure') &&
        !some(after, 'proved') &&
        after.charge === 'possible' &&
        after.people === 'near' &&
        after.pressure === 'up' &&
        after.deadHeadKit === 'not-shown' &&
        after.secondSource === 'possible' &&
        uncovered(after) === uncovered(before) &&
        after.leads === before.leads &&
        after.electronics === before.electronics &&
        after.disinfection === before.disinfection),
  },
  {
    name: 'stop-from-everywhere',
    sentence: '"Stop, unsafe" stops from everywhere.',
    holds: (_before, { type }, after) => type !== 'stop-unsafe' || after.stopped,
  },
  {
    name: 'stopped-until-resumed',
    sentence: 'While stopped nothing about supply, covers, leads or people changes; only resuming ends it.',
    holds: (before, { type }, after) =>
      !before.stopped ||
      ((after.stopped || type === 'resume') &&
        after.supply === before.supply &&
        uncovered(after) === uncovered(before) &&
        after.leads === before.leads &&
        after.people === before.people),
  },
  {
    name: 'disinfection-is-not-forgotten',
    sentence: 'Opening the well makes disinfection due; only disinfecting a closed well settles it.',
    holds: (before, { type }, after) =>
      (before.places.well !== 'closed' || after.places.well === 'closed' || after.disinfection === 'due') &&
      (before.disinfection !== 'due' ||
        after.disinfection === 'due' ||
        (type === 'disinfected' && before.places.well === 'closed')),
  },
  {
    name: 'used-stays-used',
    sentence: 'A reset that was made, and a button that was pressed, stay made and pressed.',
    holds: (before, { type }, after) =>
      (before.reset !== 'used' || after.reset === 'used') &&
      (before.overload !== 'used' || after.overload === 'used') &&
      (type !== 'reset-used' || after.reset === 'used') &&
      (type !== 'overload-button-used' || after.overload === 'used') &&
      (type !== 'reset-breaker' || after.reset === 'used'),
  },
  {
    name: 'a-part-is-exchanged-dead',
    sentence: 'A part counts as exchanged only when it was fitted in a box proved dead.',
    holds: (before, _event, after) =>
      after.substitute === 'none' || before.substitute === 'fitted' || before.places.box === 'proved',
  },
];
