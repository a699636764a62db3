import type { Edit, Fault } from '../../schema/fault.ts';
import type { Netlist } from '../../schema/netlist.ts';
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
  /** Index into the choices of the system. */
  readonly choice: number;
  /** The repair that would follow; faults with the same one need not be told apart. */
  readonly action: string;
  /** Weight before any reading and any circumstance; relative to the others. */
  readonly weight: number;
}

/** All hypotheses, in the order of choice, fault id and variant. */
export function hypothesesOf(knowledge: Knowledge, system: System): Hypothesis[] {
  return system.choices.flatMap((choice, index) =>
    Object.values(knowledge.faults).flatMap((fault) => variantsOn(fault, choice, index)),
  );
}

/** Probabilities before any reading, circumstances included; they sum to one. */
export function priorsOf(hypotheses: readonly Hypothesis[], circumstances: readonly string[]): Float64Array {
  const priors = Float64Array.from(
    hypotheses,
    (one) => one.weight * circumstanceFactor(one.fault, circumstances),
  );
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
  const weight = fault.prior.weight * choice.weight;
  return fitting.map((variant) => ({
    fault,
    variant: variant.id,
    edits: variant.edits,
    choice: index,
    action: choice.box.plugApart ? (fault.actionInPlugApart ?? fault.action) : fault.action,
    weight: (weight * (variant.share ?? 1)) / shares,
  }));
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
