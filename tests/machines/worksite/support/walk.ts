import { type AnyMachineSnapshot, type AnyStateMachine, initialTransition } from 'xstate';
import { getAdjacencyMap } from 'xstate/graph';
import { everyEvent, type WorksiteEvent } from '../../../../machines/worksite/events.ts';
import { type SiteFacts, siteFacts } from '../../../../machines/worksite/site.ts';
import { worksiteMachine } from '../../../../machines/worksite/worksite.machine.ts';

/**
 * The complete walk of the worksite machine.
 *
 * The machine is a core (supply, places, leads, charge, electronics, people, disinfection, work) and
 * regions of memory that the core never asks, nor any of them another (a test reads this off the
 * guards). So the core is walked whole, and each change is taken with every value of every memory
 * region beside it; the reachable set lies inside core × memory.
 */
export const MEMORY = {
  pressure: ['up', 'relieved'],
  deadHeadKit: ['not-shown', 'shown'],
  substitute: ['none', 'fitted'],
  secondSource: ['possible', 'none-seen'],
  reset: ['unknown', 'unused', 'used'],
  overload: ['unknown', 'unused', 'used'],
  insulation: ['untested', 'good', 'bad'],
} as const satisfies { [K in keyof SiteFacts]?: readonly SiteFacts[K][] };
export type MemoryRegion = keyof typeof MEMORY;
export const MEMORY_REGIONS = Object.keys(MEMORY) as MemoryRegion[];

export interface Change {
  readonly before: SiteFacts;
  readonly event: WorksiteEvent;
  readonly after: SiteFacts;
}

const isMemory = (region: string): region is MemoryRegion => region in MEMORY;

/** The part of a state that the rest of the machine can ask about. */
function coreKey({ value }: AnyMachineSnapshot): string {
  return JSON.stringify(Object.entries(value).filter(([region]) => !isMemory(region)));
}

/** Every reachable value of the core, as the facts it stands for, with memory as it begins. */
export function* walkCore(machine: AnyStateMachine = worksiteMachine): Generator<SiteFacts> {
  for (const { state } of coreStates(machine)) yield siteFacts(state);
}

/** Every change of every core state, beside every value of every memory region. */
export function* everyChange(machine: AnyStateMachine = worksiteMachine): Generator<Change> {
  for (const { state, next } of coreStates(machine)) {
    yield* changes(state, next);
    for (const memory of MEMORIES.slice(1)) {
      const here = withValues(machine, state, memory);
      yield* changes(here, nextOf(machine, here));
    }
  }
}

type Next = Readonly<Record<string, { event: WorksiteEvent; state: AnyMachineSnapshot }>>;

/** Walked as it is asked for, so that a broken machine is left at the first mistake. */
function* coreStates(machine: AnyStateMachine): Generator<{ state: AnyMachineSnapshot; next: Next }> {
  const [first] = initialTransition(machine);
  const seen = new Set([coreKey(first)]);
  const waiting: AnyMachineSnapshot[] = [first];
  for (let state = waiting.pop(); state !== undefined; state = waiting.pop()) {
    const next = nextOf(machine, state);
    yield { state, next };
    for (const one of Object.values(next)) {
      const key = coreKey(one.state);
      if (seen.has(key)) continue;
      seen.add(key);
      waiting.push(withValues(machine, one.state, MEMORIES[0] ?? {}));
    }
  }
}

/** Memory in step: the first value of every region, then the second, then the third. */
const MEMORIES: readonly Readonly<Record<string, string>>[] = memoriesInStep();

function memoriesInStep(): Record<string, string>[] {
  const most = Math.max(...Object.values(MEMORY).map((values) => values.length));
  return Array.from({ length: most }, (_, turn) =>
    Object.fromEntries(
      Object.entries(MEMORY).map(([region, values]) => [region, values[turn % values.length] ?? '']),
    ),
  );
}

function withValues(
  machine: AnyStateMachine,
  state: AnyMachineSnapshot,
  memory: Readonly<Record<string, string>>,
): AnyMachineSnapshot {
  return machine.resolveState({ value: { ...state.value, ...memory }, context: {} });
}

/** What each event makes of one state. */
function nextOf(machine: AnyStateMachine, here: AnyMachineSnapshot): Next {
  const map = getAdjacencyMap(machine, {
    fromState: here,
    events: everyEvent(),
    serializeState: (one) => (one === here ? 'here' : 'elsewhere'),
    stopWhen: (one) => one !== here,
  });
  const [from] = Object.values(map);
  if (from === undefined) throw new Error('tests: the walk lost the state that it started from');
  return from.transitions;
}

function* changes(state: AnyMachineSnapshot, next: Next): Generator<Change> {
  const before = siteFacts(state);
  for (const { event, state: after } of Object.values(next)) yield { before, event, after: siteFacts(after) };
}

/** Is there one that fails? Stops at the first. */
export function isAny<T>(all: Iterable<T>, fails: (one: T) => boolean): boolean {
  for (const one of all) if (fails(one)) return true;
  return false;
}

/** Facts with every combination of the given memory regions. */
export function withMemory(site: SiteFacts, regions: readonly MemoryRegion[]): SiteFacts[] {
  return regions.reduce<SiteFacts[]>(
    (facts, region) => facts.flatMap((one) => MEMORY[region].map((value) => ({ ...one, [region]: value }))),
    [site],
  );
}

export function firstSite(): SiteFacts {
  return siteFacts(initialTransition(worksiteMachine)[0]);
}
