import type { Edit } from '../../schema/fault.ts';
import { type Layout, partsOf } from '../layout.ts';
import type { Injection } from '../types.ts';

/**
 * What do the edits of a fault do to the parts? The only interpreter of edits there is.
 *
 * It knows parts and nodes, never a fault: a fault that needs a special case here is a fault whose
 * edits are wrong.
 */
export interface PartCondition {
  readonly open: boolean;
  /** Open only while hot: a protector that closes again by itself. */
  readonly openUntilCool: boolean;
  readonly shorted: boolean;
  readonly stuck: 'made' | 'apart' | undefined;
  readonly seriesOhms: number;
  readonly scale: number;
}

export interface Leak {
  readonly from: number;
  readonly to: number;
  readonly ohms: number;
  /** Inside a splice: gone once the splice is opened, spread and dried. */
  readonly untilSplit: boolean;
}

/** The installation with its faults in place. */
export interface Faulted {
  readonly parts: readonly PartCondition[];
  /** Node numbers of each part's two ends, after leads were exchanged. */
  readonly from: Int16Array;
  readonly to: Int16Array;
  readonly leaks: readonly Leak[];
  /** Factor on the volts of each source part, by part number. */
  readonly supply: ReadonlyMap<number, number>;
  readonly shaft: { readonly locked: boolean; readonly drag: number; readonly free: boolean };
  /** What the pressure switch is told, when not the site's own call. */
  readonly command: boolean | undefined;
}

const SOUND: PartCondition = {
  open: false,
  openUntilCool: false,
  shorted: false,
  stuck: undefined,
  seriesOhms: 0,
  scale: 1,
};

interface Draft {
  readonly layout: Layout;
  severity: number | undefined;
  readonly parts: PartCondition[];
  from: Int16Array;
  to: Int16Array;
  readonly leaks: Leak[];
  readonly supply: Map<number, number>;
  shaft: { locked: boolean; drag: number; free: boolean };
  command: boolean | undefined;
}

/** @throws when an edit names a part or node that the installation lacks, or needs a severity that is not given */
export function applyEdits(layout: Layout, injection: Injection): Faulted {
  const draft: Draft = {
    layout,
    severity: injection.severity,
    parts: layout.parts.map(() => SOUND),
    from: layout.from,
    to: layout.to,
    leaks: [],
    supply: new Map(),
    shaft: { locked: false, drag: 1, free: false },
    command: undefined,
  };
  for (const fault of [injection, injection.beside]) {
    draft.severity = fault?.severity;
    for (const edit of fault?.edits ?? []) apply(draft, edit);
  }
  return draft;
}

function apply(draft: Draft, edit: Edit): void {
  switch (edit.edit) {
    case 'open':
      change(draft, edit.part, () => (edit.untilCool === true ? { openUntilCool: true } : { open: true }));
      return;
    case 'short':
      change(draft, edit.part, () => ({ shorted: true }));
      return;
    case 'stick':
      change(draft, edit.part, () => ({ stuck: edit.state }));
      return;
    case 'series':
      change(draft, edit.part, (was) => ({ seriesOhms: was.seriesOhms + severityOf(draft, edit) }));
      return;
    case 'scale':
      change(draft, edit.part, (was) => ({ scale: was.scale * severityOf(draft, edit) }));
      return;
    case 'leak':
      draft.leaks.push({
        from: nodeOf(draft.layout, edit.nodes[0]),
        to: nodeOf(draft.layout, edit.nodes[1]),
        ohms: severityOf(draft, edit),
        untilSplit: edit.untilSplit === true,
      });
      return;
    case 'exchange':
      exchange(draft, edit.parts);
      return;
    case 'supply':
      supply(draft, edit.leg, severityOf(draft, edit));
      return;
    case 'shaft':
      draft.shaft = {
        locked: draft.shaft.locked || edit.state === 'locked',
        drag: draft.shaft.drag * (edit.state === 'drag' ? severityOf(draft, edit) : 1),
        free: draft.shaft.free || edit.state === 'free',
      };
      return;
    case 'command':
      draft.command = edit.calling;
      return;
    default:
      unknownEdit(edit);
  }
}

function unknownEdit(edit: never): never {
  throw new Error(`plant: unknown edit ${JSON.stringify(edit)}; add it to the interpreter`);
}

function severityOf(draft: Draft, edit: Edit): number {
  if (draft.severity === undefined || !Number.isFinite(draft.severity)) {
    throw new Error(
      `plant: edit ${edit.edit} needs a severity and got ${draft.severity}; give the fault a span`,
    );
  }
  return draft.severity;
}

function change(draft: Draft, part: string, to: (was: PartCondition) => Partial<PartCondition>): void {
  const index = partNumber(draft.layout, part);
  const was = draft.parts[index] ?? SOUND;
  draft.parts[index] = { ...was, ...to(was) };
}

/**
 * What hangs on the far node of each terminal changes places, so that the far node keeps meaning
 * "the lead that this terminal holds": ohms taken there show the exchange.
 */
function exchange(draft: Draft, parts: readonly [string, string]): void {
  const one = partNumber(draft.layout, parts[0]);
  const other = partNumber(draft.layout, parts[1]);
  const first = draft.to[one]!;
  const second = draft.to[other]!;
  const swapped = (node: number): number => (node === first ? second : node === second ? first : node);
  draft.from = draft.from.slice();
  draft.to = draft.to.slice();
  for (let part = 0; part < draft.from.length; part++) {
    if (part === one || part === other) continue;
    draft.from[part] = swapped(draft.from[part]!);
    draft.to[part] = swapped(draft.to[part]!);
  }
}

function supply(draft: Draft, leg: 'both' | 'L1' | 'L2', factor: number): void {
  const legs = partsOf(draft.layout, 'source');
  const chosen = leg === 'both' ? legs : legs.slice(leg === 'L1' ? 0 : 1, leg === 'L1' ? 1 : 2);
  for (const part of chosen) draft.supply.set(part, (draft.supply.get(part) ?? 1) * factor);
}

export function partNumber(layout: Layout, id: string): number {
  const index = layout.indexOf.get(id);
  if (index === undefined)
    throw new Error(`plant: no part ${id} in this installation; ask first whether it exists`);
  return index;
}

export function nodeOf(layout: Layout, id: string): number {
  const node = layout.nodes.get(id);
  if (node === undefined)
    throw new Error(`plant: no node ${id} in this installation; ask first whether it exists`);
  return node;
}
