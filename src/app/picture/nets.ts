import type { Wire } from './drawing.ts';
import { distanceTo, listed, type Point, round, type Segment, segmentsOf } from './geometry.ts';

/**
 * Where do wires join, and where do they only cross? A dot is a join; a level wire hops over one of
 * another net.
 */
interface Piece extends Segment {
  readonly net: string;
  readonly over: boolean;
}

export function dotsOf(wires: readonly Wire[]): Point[] {
  const pieces = piecesOf(wires);
  const ends = wires.flatMap(({ path }) => path);
  const dots = ends.filter((point) => directionsAt(point, pieces) >= 3);
  return distinct(dots);
}

export function hopsOf(wires: readonly Wire[]): Point[] {
  const pieces = piecesOf(wires);
  const level = pieces.filter(({ from, to, over }) => from[1] === to[1] && !over);
  const upright = pieces.filter(({ from, to, over }) => from[0] === to[0] && !over);
  return distinct(
    level.flatMap((across) =>
      upright.filter((down) => down.net !== across.net).flatMap((down) => listed(crossing(across, down))),
    ),
  );
}

/** Half width of a hop. */
export const HOP = 4.5;

function crossing(across: Segment, down: Segment): Point | undefined {
  const [x, y] = [down.from[0], across.from[1]];
  const isWithin = (value: number, one: number, other: number, clear: number): boolean =>
    value > Math.min(one, other) + clear && value < Math.max(one, other) - clear;
  return isWithin(x, across.from[0], across.to[0], HOP) && isWithin(y, down.from[1], down.to[1], 1)
    ? [x, y]
    : undefined;
}

function piecesOf(wires: readonly Wire[]): Piece[] {
  const names = netNames(wires);
  return wires.flatMap(({ path, nodes, over }) => {
    const net = names.get(nodes[0] ?? '') ?? '';
    return segmentsOf(path).map((segment) => ({ ...segment, net, over }));
  });
}

/** One name for all nodes that plain wires join. */
function netNames(wires: readonly Wire[]): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const { nodes } of wires) for (const node of nodes) names.set(node, names.get(node) ?? node);
  for (const { nodes } of wires) {
    const [one, other] = nodes;
    if (one === undefined || other === undefined) continue;
    const [kept, gone] = [names.get(one), names.get(other)];
    if (kept === undefined || kept === gone) continue;
    for (const [node, name] of names) if (name === gone) names.set(node, kept);
  }
  return names;
}

/** Number of directions in which wires of one net leave a point; a wire that passes counts twice. */
function directionsAt(at: Point, pieces: readonly Piece[]): number {
  const byNet = new Map<string, Set<string>>();
  for (const piece of pieces) {
    if (distanceTo(piece, at) > 0.6) continue;
    const ways = byNet.get(piece.net) ?? new Set<string>();
    byNet.set(piece.net, ways);
    for (const end of [piece.from, piece.to]) {
      const [dx, dy] = [end[0] - at[0], end[1] - at[1]];
      if (Math.hypot(dx, dy) > 1) ways.add(`${Math.sign(round(dx))} ${Math.sign(round(dy))}`);
    }
  }
  return Math.max(0, ...[...byNet.values()].map((ways) => ways.size));
}

function distinct(points: readonly Point[]): Point[] {
  const seen = new Map(points.map((point) => [`${round(point[0])} ${round(point[1])}`, point]));
  return [...seen.values()];
}
