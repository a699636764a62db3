import type { Person, Place } from '../../src/schema/basics.ts';
import type { Check } from '../../src/schema/check.ts';
import type { SiteStepView } from '../call/types.ts';
import { LEAD_PLACES, PLACES } from './events.ts';
import { hasInterlock, isInsulationTest, needsDead, needsSubstitute, touchedPlaces } from './needs.ts';
import { isDeadHead, needsPeopleClear, permits, type RuleName } from './permits.ts';
import type { SiteFacts } from './site.ts';
import { SITE_STEPS, type SiteStep, type SiteStepId, whoFor } from './step-table.ts';
import { somebodyMay, type Work } from './work.ts';

/**
 * The way from the site as it is to the site that a check needs: the steps still missing, always in
 * the same safe order (to dead work: people, off, lock and try, open, prove, bleed, electronics,
 * leads, well; back: join, land, reconnect, close, people, unlock, energise). Not a search: what a
 * place does not need is left out.
 */
export type Way =
  | { readonly possible: true; readonly steps: readonly SiteStepView[] }
  /** Nobody present may do `step`, or a rule holds that no step can meet. */
  | { readonly possible: false; readonly step: SiteStepId; readonly who: Person }
  | { readonly possible: false; readonly rule: RuleName };

const SURFACE: readonly Place[] = ['panel', ...LEAD_PLACES];

type Minutes = (step: string) => number;

/** The way to a check: possible with no steps when it is permitted already. */
export function missingSteps(check: Check, work: Work, minutesOf: Minutes): Way {
  if (permits(check, work).permitted) return { possible: true, steps: [] };
  if (work.site.stopped) return { possible: false, rule: 'working' };
  const path = new Path(work, minutesOf);
  leadTo(check, path);
  if (path.blocked !== undefined) return { possible: false, ...path.blocked };
  const end = permits(check, path.work);
  return end.permitted ? { possible: true, steps: path.steps } : { possible: false, rule: end.rule };
}

/** The way back to service: everything landed, covered, clear and switched on. */
export function stepsToService(work: Work, minutesOf: Minutes): Way {
  if (work.site.stopped) return { possible: false, rule: 'working' };
  const path = new Path(work, minutesOf);
  restore(path, []);
  return path.blocked === undefined
    ? { possible: true, steps: path.steps }
    : { possible: false, ...path.blocked };
}

/** What is owed before the visit may close; a visit that is stopped owes its resumption first. */
export function owedBeforeClosing(site: SiteFacts): SiteStepId[] {
  return site.disinfection === 'due' ? ['disinfect'] : [];
}

/** The site as it stands after each step said, and the steps so far. */
class Path {
  readonly steps: SiteStepView[] = [];
  blocked: { readonly step: SiteStepId; readonly who: Person } | { readonly rule: RuleName } | undefined;

  constructor(
    public work: Work,
    private readonly minutesOf: Minutes,
  ) {}

  get site(): SiteFacts {
    return this.work.site;
  }

  do(id: SiteStepId, place?: Place): void {
    const rule: SiteStep = SITE_STEPS[id];
    const { site } = this;
    const where = place ?? this.work.leadsAt;
    const who = whoFor(rule, site);
    if (!somebodyMay(this.work, who)) this.blocked ??= { step: id, who };
    if (id === 'reset-breaker' && !rule.may(this.work, where)) this.blocked ??= { rule: 'tripped-stays-off' };
    this.steps.push(this.view(id, place, who));
    const breakerTripped = id === 'reset-breaker' ? false : this.work.breakerTripped;
    const made = { ...this.work, site: { ...site, ...rule.makes(site, where) } };
    this.work = breakerTripped === undefined ? made : { ...made, breakerTripped };
  }

  private view(id: SiteStepId, place: Place | undefined, who: Person): SiteStepView {
    const { lines, hold, says }: SiteStep = SITE_STEPS[id];
    const type = says(place ?? this.work.leadsAt);
    const minutes = this.isFree(id) ? 0 : lines.reduce((sum, line) => sum + this.minutesOf(line), 0);
    const mindSecondSource =
      id === 'prove-dead' && this.work.secondSource && this.site.secondSource === 'possible';
    return {
      step: id,
      place,
      minutes,
      says: place === undefined ? { type } : { type, place },
      hold,
      lines,
      who,
      ...(mindSecondSource ? { mindSecondSource } : {}),
    };
  }

  /** Taking a plug-apart lid off has isolated the leads already; putting it on lands them. */
  private isFree(id: SiteStepId): boolean {
    return this.work.plugApart && (id === 'lift-leads' || id === 'land-leads');
  }
}

function leadTo(check: Check, path: Path): void {
  const { supply, cover } = check.site;
  const touched = touchedPlaces(check, path.work);
  if (needsDead(check, path.work)) toDeadWork(check, path);
  else if (supply === 'live') toLive(check, path);
  else if (cover === 'open') proveAt(path, touched);
  else if (path.site.supply === 'live') closeAllBut(path, touched);
}

function toDeadWork(check: Check, path: Path): void {
  const touched = touchedPlaces(check, path.work);
  const mustIsolate = isInsulationTest(check, path.work) && path.site.electronics === 'in-circuit';
  proveAt(path, surfacePlaces(check, path, mustIsolate));
  if (mustIsolate) path.do('disconnect-electronics');
  moveLeads(path, check.site.leads, touched.includes('well'));
  if (hasInterlock(check, path.work, 'pressure') && path.site.pressure === 'up') path.do('relieve-pressure');
  if (needsPeopleClear(check, path.work)) clear(path);
}

/** Places at the surface that must be dead: those touched, and those where leads or electronics are moved. */
function surfacePlaces(check: Check, { site, work }: Path, mustIsolate: boolean): Place[] {
  const { leads } = check.site;
  const touched = touchedPlaces(check, work);
  const moves =
    leads !== 'any' && leads !== site.leads && (leads === 'connected' || site.leads === 'connected');
  const atLeads = moves || (mustIsolate && !SURFACE.some((place) => touched.includes(place)));
  return SURFACE.filter((place) => touched.includes(place) || (atLeads && place === work.leadsAt));
}

function proveAt(path: Path, places: readonly Place[]): void {
  lock(path);
  for (const place of places) prove(path, place);
  if (places.includes('box')) bleed(path);
}

function lock(path: Path): void {
  if (path.site.supply === 'locked') return;
  clear(path);
  if (path.site.supply !== 'off') path.do('switch-off');
  path.do('lock-and-tag');
}

function clear(path: Path): void {
  if (path.site.people === 'near') path.do('clear-people');
}

function prove(path: Path, place: Place): void {
  if (path.site.places[place] === 'closed') path.do(place === 'well' ? 'open-wellhead' : 'open-cover', place);
  if (path.site.places[place] === 'open') path.do('prove-dead', place);
}

function bleed(path: Path): void {
  if (path.work.holdsCapacitor && path.site.charge === 'possible') path.do('bleed-capacitors');
}

function moveLeads(path: Path, wanted: Check['site']['leads'], atWell: boolean): void {
  const { leadsAt } = path.work;
  const from = path.site.leads;
  if (from === 'connected' && (wanted === 'lifted' || wanted === 'split')) path.do('lift-leads', leadsAt);
  const crosses = wanted !== 'any' && (wanted === 'split') !== (from === 'split');
  if (atWell || crosses) {
    lock(path);
    prove(path, 'well');
  }
  if (crosses) path.do(wanted === 'split' ? 'split-at-wellhead' : 'join-at-wellhead');
  if (wanted === 'connected' && path.site.leads === 'lifted') path.do('land-leads', leadsAt);
}

function toLive(check: Check, path: Path): void {
  const touched = touchedPlaces(check, path.work);
  if (needsSubstitute(check, path.work) && path.site.substitute === 'none') {
    proveAt(
      path,
      isLanded(path) ? ['box'] : SURFACE.filter((place) => place === 'box' || place === path.work.leadsAt),
    );
    path.do('fit-substitute');
  }
  restore(path, touched);
  if (check.site.cover === 'open') openLive(path, touched);
  if (needsPeopleClear(check, path.work)) clear(path);
  if (isDeadHead(check, path.work) && path.work.deadHead === 'below-ratings') path.do('show-dead-head-kit');
}

function openLive(path: Path, touched: readonly Place[]): void {
  for (const place of touched.filter((one) => path.site.places[one] === 'closed')) {
    clear(path);
    path.do(place === 'well' ? 'open-wellhead' : 'open-cover', place);
  }
}

/** Back to power: what was lifted is landed dead, covers go on, people step back, then the lock comes off. */
function restore(path: Path, keepOpen: readonly Place[]): void {
  if (!isLanded(path)) landAll(path);
  if (path.site.supply === 'live' && !waitsForReset(path)) {
    closeAllBut(path, keepOpen);
    return;
  }
  closeAllBut(path, []);
  clear(path);
  if (path.site.supply === 'live') path.do('switch-off');
  if (path.site.supply === 'locked') path.do('unlock');
  path.do(waitsForReset(path) ? 'reset-breaker' : 'energise');
}

/** A breaker found tripped comes back by its one reset; the step refuses itself where that is not allowed. */
const waitsForReset = ({ work }: Path): boolean => work.breakerTripped === true;

function closeAllBut(path: Path, keepOpen: readonly Place[]): void {
  const toClose = PLACES.filter((place) => path.site.places[place] !== 'closed' && !keepOpen.includes(place));
  for (const place of toClose) path.do('close-cover', place);
}

function isLanded({ site }: Path): boolean {
  return site.leads === 'connected' && site.electronics === 'in-circuit';
}

function landAll(path: Path): void {
  const { leads } = path.site;
  proveAt(path, [path.work.leadsAt]);
  if (leads !== 'connected') moveLeads(path, 'connected', false);
  if (path.site.electronics === 'disconnected') path.do('reconnect-electronics');
}
