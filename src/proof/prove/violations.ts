import type { SiteStepView } from '../../../machines/call/types.ts';
import { permits } from '../../../machines/worksite/permits.ts';
import { foldSite } from '../../../machines/worksite/site.ts';
import { permitsStep, SITE_STEPS, type SiteStepId } from '../../../machines/worksite/step-table.ts';
import { type Work, type WorkPlace, workPlace } from '../../../machines/worksite/work.ts';
import type { Catalog } from '../../catalog/catalog.ts';
import type { JudgedReading } from '../../diagnosis/types.ts';
import type { SiteEvent } from '../../schema/case.ts';
import type { CaseState } from '../../schema/case-state.ts';
import type { SiteFact } from '../../schema/check.ts';
import { type InstallationInput, installation as installationShape } from '../../schema/installation.ts';

/**
 * Was everything that was asked for allowed, at this very site?
 *
 * The site is folded anew from what was said and held against the rules with the box that is really
 * there, whatever the engine took it for: a step that is safe at the likely box only is a violation.
 */
export class Watch {
  private readonly place: WorkPlace;

  constructor(
    private readonly catalog: Catalog,
    real: InstallationInput,
  ) {
    const box = catalog.boxes[real.box ?? ''];
    if (box === undefined) throw new Error(`prove: no box ${real.box}; mend the matrix`);
    this.place = workPlace(catalog, [box], installationShape.parse(real));
  }

  /** The work as it stands: the site as said, and what the readings tell the interlock. */
  workAt(state: CaseState, judged: readonly JudgedReading[], also: readonly SiteEvent[] = []): Work {
    const facts = this.factsOf(judged);
    const said = [...state.siteEvents.map((one) => one.said), ...also];
    const isBackOn = said.some(({ type }) => type === 'reset-breaker');
    return {
      ...this.place,
      site: foldSite([...said, ...EVENTS.filter((fact) => facts.has(fact)).map((type) => ({ type }))]),
      who: state.person,
      windingOhmsRead: facts.has('winding-ohms-read'),
      overloadRead: facts.has('overload-read'),
      breakerTripped: facts.has('breaker-tripped') && !isBackOn,
    };
  }

  /** Checks on screen that the site does not permit, each with the rule that forbids it. */
  forbiddenChecks(checks: readonly string[], work: Work): string[] {
    return checks.flatMap((id) => {
      const check = this.catalog.checks[id];
      const permission = check === undefined ? undefined : permits(check, work);
      if (permission?.permitted === true) return [];
      return [`${id}: ${permission?.rule ?? 'no such check'}`];
    });
  }

  /** Steps asked for in an order or by a person that the rules forbid. */
  forbiddenSteps(
    steps: readonly SiteStepView[],
    state: CaseState,
    judged: readonly JudgedReading[],
  ): string[] {
    const done: SiteEvent[] = [];
    return steps.flatMap(({ step, place, says }) => {
      const work = this.workAt(state, judged, done);
      done.push({ ...says });
      const where = place ?? work.leadsAt;
      return isStep(step) && permitsStep(step, where, work) ? [] : [`${step} ${where}: not allowed then`];
    });
  }

  /** The facts that content says a reading tells; one that was not taken tells nothing. */
  private factsOf(judged: readonly JudgedReading[]): ReadonlySet<SiteFact> {
    const facts = judged.flatMap(({ check, outcome }) => {
      if (outcome === 'not-taken' || outcome === 'unstable') return [];
      return (this.catalog.checks[check]?.says ?? []).flatMap(({ fact, outcomes }) =>
        outcomes === undefined || outcomes.includes(outcome) ? [fact] : [],
      );
    });
    return new Set(facts);
  }
}

const EVENTS: readonly SiteFact[] = ['insulation-good', 'insulation-bad', 'no-reset-made', 'reset-used'];

const isStep = (step: string): step is SiteStepId => Object.hasOwn(SITE_STEPS, step);
