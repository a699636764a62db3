import type { Netlist, Part, PartKind } from '../schema/netlist.ts';

/**
 * Which parts lie between which nodes, once and for all for an installation.
 *
 * Pieces join where they name the same node. Nodes are numbered from the service to the motor, so
 * that the equations of a row of parts stay nearly banded; the neutral is the reference and has the
 * number REFERENCE.
 */
export const REFERENCE = -1;

export interface LayoutPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly from: number;
  readonly to: number;
  readonly lead: Part['lead'];
}

export interface Layout {
  /** How many nodes, the reference not counted. */
  readonly size: number;
  readonly nodes: ReadonlyMap<string, number>;
  readonly parts: readonly LayoutPart[];
  /** Node numbers of each part's ends, by part number; never written to. */
  readonly from: Int16Array;
  readonly to: Int16Array;
  readonly indexOf: ReadonlyMap<string, number>;
  readonly byKind: ReadonlyMap<PartKind, readonly number[]>;
}

/** @throws when no piece holds a source, or two parts share an id */
export function layOut(pieces: readonly Netlist[]): Layout {
  const all = pieces.flatMap((piece) => piece.parts);
  const nodes = numberNodes(pieces, all);
  const number = (node: string): number => nodes.get(node)!;
  const parts = all.map(({ id, kind, between, lead }) => ({
    id,
    kind,
    from: number(between[0]),
    to: number(between[1]),
    lead,
  }));
  return {
    size: nodes.size - 1,
    nodes,
    parts,
    from: Int16Array.from(parts, (part) => part.from),
    to: Int16Array.from(parts, (part) => part.to),
    indexOf: indexParts(parts),
    byKind: groupByKind(parts),
  };
}

/** Numbers in the order of first mention, from 0; the neutral of the first source is the reference. */
function numberNodes(pieces: readonly Netlist[], parts: readonly Part[]): Map<string, number> {
  const source = parts.find((part) => part.kind === 'source');
  if (source === undefined) {
    throw new Error(
      `plant: pieces ${pieces.map((piece) => piece.id).join(', ')} hold no source; add a service`,
    );
  }
  const nodes = new Map<string, number>([[source.between[0], REFERENCE]]);
  for (const part of parts) {
    for (const node of part.between) if (!nodes.has(node)) nodes.set(node, nodes.size - 1);
  }
  return nodes;
}

function indexParts(parts: readonly LayoutPart[]): Map<string, number> {
  const indexOf = new Map<string, number>();
  parts.forEach((part, index) => {
    if (indexOf.has(part.id))
      throw new Error(`plant: part ${part.id} occurs twice; pieces may share nodes, never parts`);
    indexOf.set(part.id, index);
  });
  return indexOf;
}

function groupByKind(parts: readonly LayoutPart[]): Map<PartKind, number[]> {
  const byKind = new Map<PartKind, number[]>();
  parts.forEach((part, index) => {
    const group = byKind.get(part.kind) ?? [];
    group.push(index);
    byKind.set(part.kind, group);
  });
  return byKind;
}

/** Every part of one kind, by number; none when the installation has none. */
export const partsOf = (layout: Layout, kind: PartKind): readonly number[] => layout.byKind.get(kind) ?? [];
