import { type Label, type LabelKind, LINE_HEIGHT, TEXT } from './drawing.ts';
import { isInside, type Point, type Rect, sharedArea, textWidth } from './geometry.ts';

/**
 * Where can a word stand without lying on anything? Each word brings the places it would like, best
 * first; it gets the first that is clear. A word that must stand takes the least bad place, and the
 * check for overlaps then finds it; one that need not is left out.
 */
export interface Wish {
  readonly id: string;
  readonly kind: LabelKind;
  readonly lines: readonly string[];
  readonly must: boolean;
  readonly spots: readonly Spot[];
}

export interface Spot {
  readonly at: Point;
  /** Which side of the point the word lies on. */
  readonly side:
    | 'right'
    | 'left'
    | 'above'
    | 'below'
    | 'above-right'
    | 'above-left'
    | 'below-right'
    | 'below-left'
    | 'on';
}

const BOLD: readonly LabelKind[] = ['name', 'terminal', 'live', 'tag'];
/** Room between the words of a tag and its edge. */
const TAG_ROOM = 5;

export function placeLabels(wishes: readonly Wish[], taken: readonly Rect[], bounds: Rect): Label[] {
  const labels: Label[] = [];
  for (const wish of wishes) {
    const blocked = [...taken, ...labels.map(({ rect }) => rect)];
    const label = placeOne(wish, blocked, bounds);
    if (label !== undefined) labels.push(label);
  }
  return labels;
}

function placeOne(wish: Wish, blocked: readonly Rect[], bounds: Rect): Label | undefined {
  const tried = wish.spots
    .map((spot) => labelAt(wish, spot))
    .filter(({ rect }) => isInside(rect, bounds))
    .map((label) => ({ label, bad: blocked.reduce((sum, rect) => sum + sharedArea(rect, label.rect), 0) }));
  const clear = tried.find(({ bad }) => bad === 0);
  if (clear !== undefined) return clear.label;
  if (!wish.must) return undefined;
  return tried.sort((one, other) => one.bad - other.bad)[0]?.label ?? firstSpot(wish);
}

function firstSpot(wish: Wish): Label | undefined {
  const [spot] = wish.spots;
  return spot === undefined ? undefined : labelAt(wish, spot);
}

function labelAt({ id, kind, lines }: Wish, { at, side }: Spot): Label {
  const room = kind === 'live' || kind === 'tag' ? TAG_ROOM : 0;
  const width = Math.max(...lines.map((line) => textWidth(line, TEXT, BOLD.includes(kind)))) + 2 * room;
  const height = lines.length * LINE_HEIGHT + (room === 0 ? 0 : 4);
  const [left, top] = cornerOf(at, side, { width, height });
  return {
    id,
    kind,
    lines,
    at: [left + room, top + TEXT - 0.5 + (room === 0 ? 0 : 2)],
    rect: { x: left, y: top, width, height },
  };
}

/** Upper left corner of a word of this size. */
function cornerOf(
  [x, y]: Point,
  side: Spot['side'],
  { width, height }: { width: number; height: number },
): Point {
  const across = side.endsWith('right') ? x : side.endsWith('left') ? x - width : x - width / 2;
  const down = side.startsWith('above') ? y - height : side.startsWith('below') ? y : y - height / 2;
  return [across, down];
}
