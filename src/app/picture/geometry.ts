/** Points, paths and boxes of the picture, in pixels from its upper left corner. */
export type Point = readonly [number, number];

/** A list of one or none: a point is itself a list, so it must not be flattened. */
export const listed = <T>(one: T | undefined): T[] => (one === undefined ? [] : [one]);

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The box round a point. */
export function rectAround([x, y]: Point, width: number, height = width): Rect {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

/** Area that two boxes share; 0 where they only touch. */
export function sharedArea(one: Rect, other: Rect): number {
  const width = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const height = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return width > 0 && height > 0 ? width * height : 0;
}

/** True where a box lies wholly inside another. */
export function isInside(inner: Rect, outer: Rect): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

export function segmentsOf(path: readonly Point[]): Segment[] {
  return path.slice(1).flatMap((to, index) => {
    const from = path[index];
    return from === undefined || (from[0] === to[0] && from[1] === to[1]) ? [] : [{ from, to }];
  });
}

/** A segment as a box of the width of its line. */
export function rectOf({ from, to }: Segment, width: number): Rect {
  const x = Math.min(from[0], to[0]) - width / 2;
  const y = Math.min(from[1], to[1]) - width / 2;
  return { x, y, width: Math.abs(from[0] - to[0]) + width, height: Math.abs(from[1] - to[1]) + width };
}

/** The nearest point of a segment to a point, and how far along it lies from 0 to 1. */
function footOn({ from, to }: Segment, at: Point): { readonly share: number; readonly off: number } {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const squared = dx * dx + dy * dy || 1;
  const share = Math.min(1, Math.max(0, ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / squared));
  return { share, off: Math.hypot(at[0] - from[0] - share * dx, at[1] - from[1] - share * dy) };
}

/** Distance of a point from a segment. */
export function distanceTo(segment: Segment, at: Point): number {
  return footOn(segment, at).off;
}

/** The segment of a path that a point lies on, or the nearest. */
export function segmentAt(path: readonly Point[], at: Point): Segment | undefined {
  const ranked = segmentsOf(path).map((segment) => ({ segment, off: distanceTo(segment, at) }));
  return ranked.reduce<(typeof ranked)[number] | undefined>(
    (best, one) => (best === undefined || one.off < best.off ? one : best),
    undefined,
  )?.segment;
}

/** The path in two halves, parted by a symbol that reaches `half` to each side of its centre. */
export function brokenAt(path: readonly Point[], at: Point, half: number): readonly [Point[], Point[]] {
  const segment = segmentAt(path, at);
  if (segment === undefined) return [[...path], []];
  const { from, to } = segment;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const along: Point = [((to[0] - from[0]) / length) * half, ((to[1] - from[1]) / length) * half];
  const index = path.findIndex((point, place) => point === from && path[place + 1] === to);
  return [
    [...path.slice(0, index + 1), [at[0] - along[0], at[1] - along[1]]],
    [[at[0] + along[0], at[1] + along[1]], ...path.slice(index + 1)],
  ];
}

/** A path as the `d` of an SVG path. */
export function pathText(path: readonly Point[]): string {
  return path.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
}

export const round = (value: number): number => Math.round(value * 10) / 10;

/** Widths of letters as shares of the type size; on the safe side for the fonts of phones. */
const NARROW = /[iljtfrI.,:;'’|()\s·]/;
const WIDE = /[mwMW@ΩµØ]/;

/** Width of a text in a type size. An estimate on the safe side: no canvas is asked. */
export function textWidth(text: string, size: number, bold = false): number {
  const share = [...text].reduce(
    (sum, letter) => sum + (NARROW.test(letter) ? 0.4 : WIDE.test(letter) ? 0.98 : 0.63),
    0,
  );
  return share * size * (bold ? 1.1 : 1);
}

/** The text in lines no wider than `most`; a word that is wider stands alone. */
export function wrapped(text: string, most: number, size: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
