import type { SiteStepView } from '../../machines/call/types.ts';
import type { Catalog, Words } from '../catalog/catalog.ts';
import type { ExpectedWindow, JudgedReading, RankedCheck, Suspect, Verdict } from '../diagnosis/types.ts';
import type { Evidence } from '../schema/basics.ts';
import { figures, minutes, quantity, share } from './print.ts';

/**
 * The engine's answers as printed data: every number through the printer, every id with its words
 * beside it, every figure of a window with its source and mark.
 */
export interface Describe {
  readonly catalog: Catalog;
  readonly words: Words | undefined;
}

export const describing = (catalog: Catalog): Describe => ({ catalog, words: catalog.words.en });

export function checkData({ words }: Describe, check: string, window: ExpectedWindow | undefined) {
  const own = words?.checks[check];
  return {
    check,
    name: own?.name,
    ask: own?.ask,
    window: window === undefined ? undefined : windowData(window),
  };
}

export function windowData(window: ExpectedWindow) {
  const { kind, answer, missing, quality, fromMemory, unit } = window;
  const printed = (value: number | undefined) =>
    value === undefined || unit === undefined ? undefined : quantity(value, unit);
  const said = { kind, low: printed(window.low), high: printed(window.high), answer, missing };
  if (kind !== 'range') return said;
  const parts = window.parts.map(({ name, low, high, from }) => ({
    name,
    low: printed(low),
    high: printed(high),
    from: sources(from),
  }));
  return { ...said, quality, fromMemory, parts };
}

/** Each source once, whatever fields it vouches for. */
function sources(from: readonly Evidence[]) {
  const once = new Map(
    from.map(({ source, where, mark }) => [`${source} ${where} ${mark}`, { source, where, mark }]),
  );
  return [...once.values()];
}

export function stepData({ words }: Describe, { step, place, who, minutes: needed }: SiteStepView) {
  return { step, place, ask: words?.siteSteps[step]?.ask, who, minutes: minutes(needed) };
}

export function rankedData(ranked: RankedCheck) {
  const outcomes = ranked.outcomes.map(({ outcome, probability, leads }) => ({
    outcome,
    probability: share(probability),
    leads,
  }));
  return {
    checks: ranked.checks,
    gain: figures(ranked.gain),
    minutes: minutes(ranked.minutes),
    gainPerMinute: figures(ranked.perMinute),
    outcomes,
  };
}

export function suspectData(
  { words }: Describe,
  { fault, variant, action, probability, ruledOutBy }: Suspect,
) {
  return {
    fault,
    variant,
    name: words?.faults[fault]?.name,
    action,
    probability: share(probability),
    ruledOutBy,
  };
}

export function judgedData({ check, reading, outcome }: JudgedReading) {
  return { check, reading, outcome };
}

const actionData = ({ words }: Describe, action: string) => ({
  action,
  doThis: words?.actions[action]?.name,
});

/** Endings that say what to repair; any other ending names suspects and no work. */
const SAYS_WHAT_TO_DO: ReadonlySet<Verdict['kind']> = new Set(['named', 'group']);

export function verdictData(describe: Describe, verdict: Verdict) {
  return {
    kind: verdict.kind,
    class: verdict.verdictClass,
    ...(SAYS_WHAT_TO_DO.has(verdict.kind) ? actionData(describe, verdict.action) : {}),
    probability: share(verdict.probability),
    faults: verdict.faults.map((one) => suspectData(describe, one)),
    evidence: verdict.evidence.map(({ check, reading, outcome, window, weight, rulesOut }) => ({
      check,
      reading,
      outcome,
      window: windowData(window),
      weight: figures(weight),
      rulesOut,
    })),
    takeAgain: verdict.takeAgain,
    owed: verdict.owed,
    proof: verdict.proof.map((window) => checkData(describe, window.check, window)),
  };
}
