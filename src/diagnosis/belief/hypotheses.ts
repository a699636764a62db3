import type { Injection } from '../../plant/types.ts';
import type { Edit, Fault } from '../../schema/fault.ts';
import type { Netlist } from '../../schema/netlist.ts';
import type { WaterEdit } from '../../schema/water.ts';
import { figure } from '../judgements.ts';
import type { Knowledge } from '../knowledge.ts';
import type { System, SystemChoice } from '../system.ts';

/**
 * What could be wrong with this installation: one fault in one variant on one choice of what is
 * unknown. A variant can occur wherever every part and node that it edits exists.
 */
export interface Hypothesis {
  readonly fault: Fault;
  readonly variant: string;
  readonly edits: readonly Edit[];
  readonly water: readonly WaterEdit[];
  /** The fault that has caused it and is still there. */
  readonly cause?: Cause;
  /** Index into the choices of the system. */
  readonly choice: number;
  /** The repair that would follow; faults with the same one need not be told apart. */
  readonly action: string;
  /** Weight before any reading and any circumstance; relative to the others. */
  readonly weight: number;
}

export interface Cause {
  readonly fault: Fault;
  readonly action: string;
  readonly edits: readonly Edit[];
  readonly water: readonly WaterEdit[];
}

/** All hypotheses, in the order of choice, fault id and variant; then causes with their consequences. */
export function hypothesesOf(knowledge: Knowledge, system: System): Hypothesis[] {
  const share = figure(knowledge.judgements, 'consequence-share');
  return system.choices.flatMap((choice, index) => {
    const singles = Object.values(knowledge.faults).flatMap((fault) => variantsOn(fault, choice, index));
    return [...singles, ...pairsOf(singles, share)];
  });
}

/** What both faults of a hypothesis do, with the severity of the first and how far the cause has gone. */
export function injectionOf(
  { edits, water, cause }: Hypothesis,
  severity: number | undefined,
  causeStep = 0,
): Injection {
  if (cause === undefined) return { edits, water, severity };
  const of = severityAt(cause.fault, { stratum: 0, strata: 1 }, causeStep);
  return { edits, water, severity, beside: { edits: cause.edits, water: cause.water, severity: of } };
}

/** Severity at a step of standard deviations from the middle of a stratum, in SI or as a factor. */
export function severityAt(
  { severity }: Fault,
  at: { stratum: number; strata: number },
  step: number,
): number | undefined {
  if (severity === undefined) return undefined;
  const middle = (at.stratum + 0.5) / at.strata;
  const share = Math.min(1, Math.max(0, middle + step / (at.strata * Math.sqrt(12))));
  const { low, high } = severity.span;
  return severity.scale === 'log' ? low * (high / low) ** share : low + (high - low) * share;
}

/** Signs of the fault itself; where it has none for a check, those of its cause. */
export function signsOf({ fault, cause }: Hypothesis, check: string): NonNullable<Fault['signs']> {
  const own = (fault.signs ?? []).filter((sign) => sign.check === check);
  return own.length > 0 ? own : (cause?.fault.signs ?? []).filter((sign) => sign.check === check);
}

/** Each fault that tends to cause another, with the likeliest form of that other. */
function pairsOf(singles: readonly Hypothesis[], share: number): Hypothesis[] {
  const likeliest = (id: string): Hypothesis | undefined =>
    singles
      .filter(({ fault }) => fault.id === id)
      .reduce<Hypothesis | undefined>(
        (best, one) => (best === undefined || one.weight > best.weight ? one : best),
        undefined,
      );
  const causes = new Set(singles.map(({ fault }) => fault));
  return [...causes].flatMap((fault) => {
    const cause = likeliest(fault.id);
    if (cause === undefined) return [];
    return (fault.tendsToCause ?? []).flatMap((id) => {
      const consequence = likeliest(id);
      if (consequence === undefined) return [];
      return {
        ...consequence,
        cause: { fault, action: cause.action, edits: cause.edits, water: cause.water },
        weight: share * cause.weight,
      };
    });
  });
}

/** What is known before any reading: what happened, and repairs that did not help. */
export interface Before {
  readonly circumstances: readonly string[];
  readonly repaired?: { readonly actions: readonly string[]; readonly stillThere: number } | undefined;
}

/** Probabilities before any reading, circumstances included; they sum to one. */
export function priorsOf(hypotheses: readonly Hypothesis[], before: Before): Float64Array {
  const priors = Float64Array.from(hypotheses, (one) => {
    const { repaired } = before;
    const left = repaired?.actions.includes(one.action) === true ? repaired.stillThere : 1;
    return one.weight * circumstanceFactor((one.cause ?? one).fault, before.circumstances) * left;
  });
  const sum = priors.reduce((total, one) => total + one, 0);
  return priors.map((one) => one / sum);
}

function variantsOn(fault: Fault, choice: SystemChoice, index: number): Hypothesis[] {
  if (fault.families !== undefined && !fault.families.includes(choice.box.family)) return [];
  const names = namesIn(choice.input.pieces);
  const fitting = fault.variants.filter(
    (variant) =>
      variant.edits.every((edit) => namesOf(edit).every((name) => names.has(name))) &&
      (variant.needs ?? []).every((name) => names.has(name)) &&
      (variant.without ?? []).every((name) => !names.has(name)),
  );
  const shares = fitting.reduce((total, variant) => total + (variant.share ?? 1), 0);
  const there = likelierWith(choice, fault.fitting);
  if (there <= 0) return [];
  const weight = fault.prior.weight * choice.weight * there;
  return fitting.map((variant) => ({
    fault,
    variant: variant.id,
    edits: variant.edits,
    water: variant.water ?? [],
    choice: index,
    action: choice.box.plugApart ? (fault.actionInPlugApart ?? fault.action) : fault.action,
    weight: (weight * (variant.share ?? 1)) / shares,
  }));
}

/**
 * Weights are those of an unselected stream of calls, so what is known of a fitting moves them: never
 * without it, and the more with it the rarer it is.
 */
function likelierWith(choice: SystemChoice, fitting: string | undefined): number {
  const known = fitting === undefined ? undefined : choice.fittings[fitting];
  if (fitting === undefined) return 1;
  return known === undefined ? 0 : known.chance / known.usual;
}

function circumstanceFactor(fault: Fault, happened: readonly string[]): number {
  return (fault.prior.times ?? []).reduce(
    (factor, one) => (happened.includes(one.circumstance) ? factor * one.factor : factor),
    1,
  );
}

/** Every part id and node id of an installation. */
export function namesIn(pieces: readonly Netlist[]): ReadonlySet<string> {
  const names = new Set<string>();
  for (const piece of pieces) {
    for (const terminal of piece.terminals) names.add(terminal.id);
    for (const part of piece.parts) {
      names.add(part.id);
      for (const node of part.between) names.add(node);
    }
  }
  return names;
}

function namesOf(edit: Edit): readonly string[] {
  switch (edit.edit) {
    case 'open':
    case 'short':
    case 'stick':
    case 'series':
    case 'scale':
      return [edit.part];
    case 'leak':
      return edit.nodes;
    case 'exchange':
      return edit.parts;
    case 'supply':
    case 'shaft':
    case 'command':
      return [];
    default: {
      const never: never = edit;
      return never;
    }
  }
}

/** What a hypothesis does to each side, by a name that is equal where it does the same. */
export interface Touched {
  readonly electrical: string;
  readonly water: string;
}

export const SOUND = 'sound';

export function touched(hypothesis: Hypothesis, stratum: number): Touched {
  const { fault, variant, cause, edits, water } = hypothesis;
  const own = `${fault.id}/${variant}/${stratum}`;
  const named = (mine: number, theirs: number): string =>
    [...(mine > 0 ? [own] : []), ...(theirs > 0 ? [`after ${cause?.fault.id}`] : [])].join(' ') || SOUND;
  return {
    electrical: named(edits.length, cause?.edits.length ?? 0),
    water: named(water.length, cause?.water.length ?? 0),
  };
}
