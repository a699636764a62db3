import type { Person } from '../schema/basics.ts';
import type { CaseState, StandingSiteEvent } from '../schema/case-state.ts';
import { type Installation, installation } from '../schema/installation.ts';
import { splitAnswers, standingAnswers } from './answers.ts';
import { highestSequence, idParts, inOrder } from './event-id.ts';
import type { Known } from './fits.ts';
import type { RecordedEvent } from './recorded.ts';
import { trailOf } from './trail.ts';
import { withdrawnIn } from './withdrawn.ts';

/**
 * What do the events of a case add up to? A pure fold: no clock, no storage, no content.
 *
 * Order is (sequence, device). A correction takes the place of what it corrects, a withdrawn event
 * counts no longer, and both stay in the trail. Nobody named as the person counts as a caller, the
 * least trusted. Site claims lapse by themselves where the person changes, where a visit is handed over, where another
 * device goes on, and where a step is withdrawn: what was claimed before is then history.
 *
 * @param checks  answers to checks that are not here, or that do not fit their check, stay in the trail
 *                and do not stand; without it every answer stands. `answersThatDoNotFit` reports them.
 * @throws when an event does not have the shape of the schema: files and stores check what they read
 */
export function foldCase(
  caseId: string,
  events: readonly RecordedEvent[],
  checks?: Known['checks'],
): CaseState {
  const ordered = inOrder(events);
  const withdrawn = withdrawnIn(ordered);
  const counting = ordered.filter(({ id }) => !withdrawn.has(id));
  const answers = standingAnswers(counting, checks);
  return {
    case: caseId,
    ...folded(counting),
    ...splitAnswers(answers.standing),
    siteEvents: siteClaims(ordered, withdrawn),
    trail: trailOf(ordered, new Map([...answers.replaced, ...withdrawn])),
    lastSequence: highestSequence(ordered.map(({ id }) => id)),
  };
}

type Simple = Omit<CaseState, 'case' | 'answers' | 'asLeft' | 'siteEvents' | 'trail' | 'lastSequence'>;

const START: Simple = {
  site: undefined,
  person: 'caller',
  meter: 'ordinary',
  instruments: [],
  installation: {},
  circumstances: [],
  visitEvents: [],
};

/** The facts of which the last word stands. */
function folded(events: readonly RecordedEvent[]): Simple {
  return events.reduce(step, START);
}

function step(state: Simple, event: RecordedEvent): Simple {
  switch (event.kind) {
    case 'opened':
      return { ...state, site: event.site ?? state.site };
    case 'person':
      return { ...state, person: event.role };
    case 'kit':
      return { ...state, instruments: event.instruments, meter: event.meter };
    case 'installation':
      return { ...state, installation: overlaid(state.installation, event) };
    case 'circumstances':
      return { ...state, circumstances: event.happened };
    case 'visit':
      return {
        ...state,
        visitEvents: [...state.visitEvents, { event: event.id, type: event.type, note: event.note }],
      };
    case 'answer':
    case 'site':
      return state;
    default: {
      const never: never = event;
      return never;
    }
  }
}

type InstallationEvent = Extract<RecordedEvent, { kind: 'installation' }>;

/** Field by field; what is made of fields of its own, by those too. */
function overlaid(before: Installation, event: InstallationEvent): Installation {
  const gone = new Set<string>(event.unknown ?? []);
  const kept: Installation = Object.fromEntries(Object.entries(before).filter(([field]) => !gone.has(field)));
  const set = installation.parse(event.set);
  const joined: Installation = { ...kept, ...set };
  for (const field of NESTED) {
    if (kept[field] !== undefined && set[field] !== undefined) {
      Object.assign(joined, { [field]: { ...kept[field], ...set[field] } });
    }
  }
  return joined;
}

const NESTED = ['supply', 'buried', 'drop', 'fittings', 'well', 'pump', 'tank'] as const;

/** Claims about the site, in order, with a lapse wherever one falls due by itself. */
function siteClaims(
  ordered: readonly RecordedEvent[],
  withdrawn: ReadonlyMap<string, string>,
): StandingSiteEvent[] {
  const claims: StandingSiteEvent[] = [];
  let person: Person = START.person;
  let device: string | undefined;
  const lapse = (event: string, at: string | undefined): void => {
    if (claims.length > 0 && claims.at(-1)?.said.type !== LAPSED)
      claims.push({ event, at, said: { type: LAPSED } });
  };
  for (const event of ordered) {
    if (withdrawsSite(event, ordered, withdrawn)) lapse(event.id, event.at);
    if (withdrawn.has(event.id)) continue;
    if (event.kind === 'person') {
      if (event.role !== person) lapse(event.id, event.at);
      person = event.role;
    }
    if (event.kind === 'visit' && HAND_OVERS.has(event.type)) lapse(event.id, event.at);
    if (event.kind !== 'site') continue;
    const by = idParts(event.id).device;
    if (device !== undefined && by !== device) lapse(event.id, event.at);
    device = by;
    claims.push({ event: event.id, at: event.at, said: event.event });
  }
  return claims;
}

/** Visit facts after which other hands are at work. */
const HAND_OVERS: ReadonlySet<string> = new Set(['handed-over', 'taken-over']);

/** Type of the site event that takes every claim about supply and proof back. */
export const LAPSED = 'lapsed';

function withdrawsSite(
  event: RecordedEvent,
  ordered: readonly RecordedEvent[],
  withdrawn: ReadonlyMap<string, string>,
): boolean {
  if (event.kind !== 'visit' || event.withdraws === undefined || withdrawn.has(event.id)) return false;
  return event.withdraws.some((id) => ordered.some((one) => one.id === id && one.kind === 'site'));
}
