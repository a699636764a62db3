import type { CallView, NextStep, ProposedBy, SiteStepView } from '../../../machines/call/types.ts';
import { missingSteps } from '../../../machines/worksite/steps.ts';
import type { Catalog } from '../../catalog/catalog.ts';
import { figure } from '../../diagnosis/judgements.ts';
import type { Verdict } from '../../diagnosis/types.ts';
import type { Person } from '../../schema/basics.ts';
import type { CaseState } from '../../schema/case-state.ts';
import type { Check } from '../../schema/check.ts';
import type { InstallationInput } from '../../schema/installation.ts';
import { CaseLog } from './case-log.ts';
import type { Site } from './site.ts';
import { Watch } from './violations.ts';

/**
 * A call played without a screen: the engine asks, the simulated site answers, a watch holds every step
 * against the interlock. Minutes are those of the hands, of the site steps, and waiting at its rate.
 */
export interface Caller {
  readonly catalog: Catalog;
  readonly proposedBy: ProposedBy;
  readonly site: Site;
  readonly who: Person;
  /** What is really there; hidden facts are told from it when asked. */
  readonly real: InstallationInput;
  readonly told: InstallationInput;
  readonly tells: boolean;
  /** Instruments at hand; none named = all. */
  readonly kit: readonly string[];
  /** The check that is asked for by name before each reading; the engine's own choice without it. */
  wants?(view: CallView, state: CaseState, refused: ReadonlySet<string>): string | undefined;
}

/** What a call has cost and shown so far. */
export interface Tally {
  minutes: number;
  energised: number;
  readonly checks: string[];
  readonly unsafe: string[];
  /** Readings to be taken again, and how many of these with the site not in the state they need. */
  retakes: number;
  unreadyRetakes: number;
  /** A dead check was nearly worth the live one that was asked for. */
  deadOverlooked: number;
}

const STEPS_MOST = 250;
const RETAKES_MOST = 4;

export class PlayedCall {
  readonly tally: Tally = {
    minutes: 0,
    energised: 0,
    checks: [],
    unsafe: [],
    retakes: 0,
    unreadyRetakes: 0,
    deadOverlooked: 0,
  };
  readonly log: CaseLog;
  private readonly watch: Watch;
  private refused = new Set<string>();
  private towards = '';

  constructor(readonly caller: Caller) {
    this.log = new CaseLog(caller.catalog, caller.proposedBy);
    this.watch = new Watch(caller.catalog, caller.real);
    this.log.say({ kind: 'person', role: caller.who });
    this.log.say({ kind: 'installation', set: caller.told });
    if (caller.kit.length > 0) this.log.say({ kind: 'kit', instruments: [...caller.kit], meter: 'ordinary' });
  }

  /** From the case as it stands to the next verdict, or whatever else ends the search. */
  search(): NextStep {
    for (let step = 0; step < STEPS_MOST; step++) {
      const view = this.look();
      const { next } = view.view;
      if (next.kind === 'ask-installation') this.tell(next.field);
      else if (next.kind === 'site-steps') this.doSteps(next.steps, view);
      else if (next.kind === 'check') this.take(next.checks.map((one) => one.check));
      else if (next.kind === 'verdict' && this.mayRetake(next.verdict)) this.retake(next.verdict, view);
      else return next;
    }
    throw new Error(`prove: no end after ${STEPS_MOST} steps; ${this.tally.checks.join(', ')}`);
  }

  /** The engine's view, with the check asked for that this caller wants, and everything in it watched. */
  look(): Seen {
    const seen = this.see();
    const { kind } = seen.view.next;
    if (this.caller.wants === undefined || (kind !== 'check' && kind !== 'site-steps'))
      return this.watched(seen);
    for (;;) {
      const wanted = this.caller.wants(seen.view, seen.state, this.refused);
      if (wanted === undefined || about(seen.view.next).includes(wanted)) return this.watched(seen);
      this.log.say({ kind: 'visit', type: `asked-for.${wanted}` });
      const asked = this.see();
      if (about(asked.view.next).includes(wanted)) return this.watched(asked);
      this.refused.add(wanted);
    }
  }

  private see(): Seen {
    const state = this.log.state();
    return { state, view: this.log.view(state) };
  }

  private watched(seen: Seen): Seen {
    const { view, state } = seen;
    const work = this.watch.workAt(state, view.judged);
    if (view.next.kind === 'check')
      this.tally.unsafe.push(...this.watch.forbiddenChecks(about(view.next), work));
    this.noteDead(view.next);
    return seen;
  }

  private tell(field: string): void {
    const known = this.caller.tells
      ? Object.entries(this.caller.real).find(([name]) => name === field)
      : undefined;
    if (known === undefined) this.log.say({ kind: 'visit', type: `${field}-unknown` });
    else this.log.say({ kind: 'installation', set: Object.fromEntries([known]) });
  }

  doSteps(steps: readonly SiteStepView[], { state, view }: Seen): void {
    this.tally.unsafe.push(...this.watch.forbiddenSteps(steps, state, view.judged));
    for (const { says, minutes } of steps) {
      this.log.say({ kind: 'site', event: { ...says } });
      this.tally.minutes += minutes;
    }
  }

  private take(checks: readonly string[]): void {
    this.refused = new Set();
    for (const id of checks) {
      const check = this.check(id);
      this.log.say({ kind: 'answer', check: id, reading: this.caller.site.read(check) });
      this.tally.checks.push(id);
      this.count(check);
    }
  }

  count(check: Check): void {
    const { hands, wait } = check.minutes;
    this.tally.minutes += hands + figure(this.caller.catalog.judgements, 'waiting-rate') * wait;
    if (isEnergised(check)) this.tally.energised++;
  }

  private mayRetake({ kind, takeAgain }: Verdict): boolean {
    return kind === 'contradiction' && takeAgain !== undefined && this.tally.retakes < RETAKES_MOST;
  }

  /** The reading that spoils the sense is taken again; the way to it costs what it costs. */
  private retake({ takeAgain = '' }: Verdict, { state, view }: Seen): void {
    const check = this.check(takeAgain);
    const work = this.watch.workAt(state, view.judged);
    const minutesOf = (step: string): number => this.caller.catalog.siteSteps[step]?.minutes ?? 0;
    const way = missingSteps(check, work, minutesOf);
    this.tally.retakes++;
    if (!way.possible || way.steps.length > 0) this.tally.unreadyRetakes++;
    if (way.possible) this.doSteps(way.steps, { state, view });
    this.take([takeAgain]);
  }

  check(id: string): Check {
    const check = this.caller.catalog.checks[id];
    if (check === undefined)
      throw new Error(`prove: the engine asked for ${id}, which content does not know`);
    return check;
  }

  /** At the moment of choice: was a dead check within a fifth of the live one's worth? */
  private noteDead(next: NextStep): void {
    if (next.kind !== 'check' && next.kind !== 'site-steps') return;
    const chosen = about(next).join(' ');
    const isNew = chosen !== this.towards;
    this.towards = chosen;
    const { ranked, others } = next;
    if (!isNew || ranked === undefined || !this.isLive(ranked.checks)) return;
    const near = (one: { checks: readonly string[]; perMinute: number }): boolean =>
      !this.isLive(one.checks) && one.perMinute >= NEARLY * ranked.perMinute;
    if (others.some(near)) this.tally.deadOverlooked++;
  }

  private isLive([first = '']: readonly string[]): boolean {
    return this.caller.catalog.checks[first]?.site.supply === 'live';
  }
}

const NEARLY = 0.8;

export interface Seen {
  readonly state: CaseState;
  readonly view: CallView;
}

/** Checks that a step is about, site steps still missing or not. */
export function about(next: NextStep): readonly string[] {
  if (next.kind === 'site-steps') return next.towards;
  return next.kind === 'check' ? next.checks.map((one) => one.check) : [];
}

/** Probes, a clamp or an uncovered look where power is on. */
export const isEnergised = ({ site, at }: Check): boolean =>
  site.supply === 'live' && (!('look' in at) || site.cover === 'open');
