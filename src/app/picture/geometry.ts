import type { Netlist, Part } from '../../schema/netlist.ts';

/** Where the line of a part runs on its sheet, and where its symbol breaks it. */
export type Point = readonly [number, number];

export function nodePoints(piece: Netlist): ReadonlyMap<string, Point> {
  return new Map(piece.terminals.map((terminal) => [terminal.id, terminal.at]));
}

/** Corner points from one terminal to the other; nothing where an end lies on another sheet. */
export function pathOf(part: Part, points: ReadonlyMap<string, Point>): Point[] | undefined {
  const [one, other] = part.between;
  const from = points.get(one);
  const to = points.get(other);
  return from === undefined || to === undefined ? undefined : [from, ...(part.via ?? []), to];
}

/** The path in two halves, parted by a symbol of `half` on each side of its centre. */
export function broken(path: readonly Point[], at: Point, half: number): Point[][] {
  const index = segmentOf(path, at);
  const from = path[index];
  const to = path[index + 1];
  if (from === undefined || to === undefined) return [[...path]];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const before: Point = [at[0] - along[0] * half, at[1] - along[1] * half];
  const after: Point = [at[0] + along[0] * half, at[1] + along[1] * half];
  return [
    [...path.slice(0, index + 1), before],
    [after, ...path.slice(index + 1)],
  ];
}

/** The segment that a point lies on, or the nearest. */
function segmentOf(path: readonly Point[], at: Point): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index + 1 < path.length; index++) {
    const off = distance(at, path[index]!, path[index + 1]!);
    if (off < least) {
      least = off;
      best = index;
    }
  }
  return best;
}

function distance(at: Point, from: Point, to: Point): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const squared = dx * dx + dy * dy || 1;
  const share = Math.min(1, Math.max(0, ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / squared));
  return Math.hypot(at[0] - from[0] - share * dx, at[1] - from[1] - share * dy);
}

/** Direction of the path where a symbol sits, in degrees. */
export function turnAt(path: readonly Point[], at: Point): number {
  const index = segmentOf(path, at);
  const from = path[index];
  const to = path[index + 1];
  return from === undefined || to === undefined ? 0 : (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
}
