import { checksOn } from '../../machines/call/applies.ts';
import { isEnergised } from '../../machines/worksite/needs.ts';
import { foldSite } from '../../machines/worksite/site.ts';
import { missingSteps } from '../../machines/worksite/steps.ts';
import { type Work, workPlace } from '../../machines/worksite/work.ts';
import type { Catalog } from '../catalog/catalog.ts';
import { type BeliefModel, buildModel } from '../diagnosis/belief/model.ts';
import { resolveSystem } from '../diagnosis/system.ts';
import type { Check } from '../schema/check.ts';
import type { Fault } from '../schema/fault.ts';
import type { Installation } from '../schema/installation.ts';

/**
 * On which installations is the catalogue held against the plant, and what can be asked there?
 *
 * A handful that between them have every family of box, a lid that pulls apart, both voltages and most
 * fittings that change the wiring. Lengths, well, pump and tank are known, so that what cannot be told
 * here can hardly be told elsewhere. One hypothesis is added that no catalogue needs: nothing is done.
 */
export const SITES: Readonly<Record<string, Installation>> = {
  'two-wire': {
    box: 'none-2-wire',
    motor: '2-wire-0.75hp-230v',
    fittings: { 'ground-fault-breaker': true },
  },
  'start-only': {
    box: 'start-only-current-relay',
    motor: '3-wire-1hp-230v-start-only',
    fittings: { fuses: true },
  },
  'start-and-run': {
    box: 'start-and-run-start-and-main-overload',
    motor: '3-wire-1.5hp-230v-start-and-run',
    fittings: { 'load-protector': true },
  },
  contactor: {
    box: 'contactor-loop-fed-from-l2',
    motor: '3-wire-3hp-230v-start-and-run',
    fittings: { 'float-in-loop': true, 'load-protector': true },
  },
  'plug-apart': { box: 'start-and-run-small', motor: '3-wire-1hp-230v-start-and-run-small' },
  '115-volt': { box: 'none-2-wire', motor: '2-wire-0.5hp-115v' },
};

/** Nothing is done to the plant and nothing is said: what every other fault is held against. */
export const UNTOUCHED: Fault = {
  id: 'untouched',
  area: 'motor',
  variants: [{ id: 'untouched', edits: [] }],
  prior: { weight: 1 },
  action: 'untouched',
  verdict: 'normal',
  from: [{ source: 'untouched', where: 'no record of the catalogue', mark: 'derived' }],
};

/** One screen's worth of asking: a check, or a set of checks that are taken together. */
export interface Act {
  readonly id: string;
  /** Hands, waiting, and every step from a site of which nothing has been said. */
  readonly minutes: number;
  readonly opensWell: boolean;
  readonly energised: boolean;
}

export interface CheckHere {
  readonly check: Check;
  readonly act: Act;
  /** The fitting without which it cannot be taken, where it is not certain that it is there. */
  readonly only: string | undefined;
}

export interface Site {
  readonly name: string;
  readonly catalog: Catalog;
  readonly model: BeliefModel;
  /** What exists here and what the interlock allows somebody to take. */
  readonly checks: readonly CheckHere[];
  /** What exists here and what it lets nobody take, with the rule or the step that stands against it. */
  readonly forbidden: readonly { readonly check: string; readonly why: string }[];
}

export interface SiteAsked {
  readonly name: string;
  readonly known: Installation;
  /** One stratum a fault and no rare modes: a third of the work, and nearly the same answers. */
  readonly coarse?: boolean | undefined;
}

/** @throws when the catalogue lacks the box or the motor of the installation */
export function siteOf(catalog: Catalog, { name, known, coarse = false }: SiteAsked): Site {
  const system = resolveSystem(catalog, { ...usualHouse(catalog), ...known });
  const [choice] = system.choices;
  if (choice === undefined) throw new Error(`proof: nothing fits the installation ${name}; mend its ids`);
  const work: Work = {
    ...workPlace(catalog, [choice.box], known),
    site: foldSite([]),
    who: 'qualified',
    deadHead: 'below-ratings',
  };
  const checks: CheckHere[] = [];
  const forbidden: { check: string; why: string }[] = [];
  const isCertain = (id: string | undefined): boolean =>
    id === undefined || choice.fittings[id]?.chance === 1;
  for (const check of checksOn(system, Object.values(catalog.checks))) {
    const act = actOf(catalog, check, work);
    if ('why' in act) forbidden.push({ check: check.id, why: act.why });
    else checks.push({ check, act, only: isCertain(check.fitting) ? undefined : check.fitting });
  }
  const knowledge = coarse ? coarsened(singleFaults(catalog)) : singleFaults(catalog);
  return { name, catalog, model: buildModel(knowledge, system, 'ordinary'), checks, forbidden };
}

/** One fault at a time: what it tends to cause is left out. */
function singleFaults(catalog: Catalog): Catalog {
  const singles = Object.values(catalog.faults).map(
    ({ tendsToCause: _, ...fault }) => [fault.id, fault] as const,
  );
  return { ...catalog, faults: { ...Object.fromEntries(singles), [UNTOUCHED.id]: UNTOUCHED } };
}

/** Modes that fewer sites than this end in are left out of the coarse form. */
const COARSE_SHARE = 0.2;

function coarsened(catalog: Catalog): Catalog {
  const faults = Object.values(catalog.faults).map((fault): Fault => {
    const { severity } = fault;
    return severity === undefined ? fault : { ...fault, severity: { ...severity, strata: 1 } };
  });
  const share = catalog.judgements['smallest-mode-share'];
  if (share === undefined) throw new Error('proof: add content/judgements/smallest-mode-share.json');
  return {
    ...catalog,
    faults: Object.fromEntries(faults.map((fault) => [fault.id, fault])),
    judgements: { ...catalog.judgements, [share.id]: { ...share, value: COARSE_SHARE } },
  };
}

/** What a check costs, or why the interlock lets nobody take it. */
function actOf({ siteSteps }: Catalog, check: Check, work: Work): Act | { readonly why: string } {
  const way = missingSteps(check, work, (step) => siteSteps[step]?.minutes ?? 0);
  if (!way.possible) return { why: 'rule' in way ? way.rule : `${way.step} is for the ${way.who}` };
  const { hands, wait } = check.minutes;
  return {
    id: check.set ?? check.id,
    minutes: hands + wait + way.steps.reduce((sum, step) => sum + step.minutes, 0),
    opensWell: way.steps.some(({ step }) => step === 'open-wellhead'),
    energised: isEnergised(check, work),
  };
}

/** A house whose well, pump, tank and cable are on record. */
function usualHouse({ water, judgements }: Catalog): Installation {
  const [usual] = Object.values(water);
  const conductor = Object.keys(judgements['usual-conductor']?.value ?? {})[0];
  const run = conductor === undefined ? {} : { conductor };
  if (usual === undefined) return {};
  const { well, pump, tank, line } = usual;
  return {
    buried: { ...run, length: line.length },
    drop: { ...run, length: well.intake },
    well: {
      staticLevel: well.staticLevel,
      intake: well.intake,
      casing: well.casing,
      specificCapacity: well.specificCapacity,
    },
    pump: { classFlow: pump.classFlow, classHead: pump.classHead, shutOffHead: pump.shutOffHead },
    tank: { volume: tank.volume },
    cutIn: usual.switch.cutIn,
    cutOut: usual.switch.cutOut,
  };
}
