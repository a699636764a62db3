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
  /** Words of one group stand on one side of their points where they can. */
  readonly group?: string;
  readonly spots: readonly Spot[];
  /** The words lie inside this. */
  readonly within?: Rect;
  /** More to keep clear of: places that the word does not name. */
  readonly avoid?: readonly Rect[];
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
const TAG_ROOM = 4;
/** Names of terminals are capitals and digits: nothing hangs below their line. */
const CAPITALS = 12;

export function placeLabels(wishes: readonly Wish[], taken: readonly Rect[], bounds: Rect): Label[] {
  const groups = new Map<string, Wish[]>();
  for (const wish of wishes) {
    const group = wish.group ?? wish.id;
    groups.set(group, [...(groups.get(group) ?? []), wish]);
  }
  const labels: Label[] = [];
  for (const group of groups.values()) {
    labels.push(...placeGroup(group, [...taken, ...labels.map(({ rect }) => rect)], bounds));
  }
  return labels;
}

/** The words of a group in the order, and on the side, that leaves the least on top of anything. */
function placeGroup(group: readonly Wish[], taken: readonly Rect[], bounds: Rect): Label[] {
  const turned = group.map((wish) => ({ ...wish, spots: rightFirst(wish.spots) }));
  const orders = group.length < 2 ? [group] : [group, turned, [...group].reverse(), [...turned].reverse()];
  const tried = orders.map((wishes) => placeInTurn(wishes, taken, bounds));
  return tried.sort((one, other) => one.bad - other.bad || other.first - one.first)[0]?.labels ?? [];
}

const rightFirst = (spots: readonly Spot[]): Spot[] => [
  ...spots.filter(({ side }) => side === 'right'),
  ...spots.filter(({ side }) => side !== 'right'),
];

interface InTurn {
  readonly labels: Label[];
  /** Words that found their first place. */
  readonly first: number;
  /** Square pixels that lie on something. */
  readonly bad: number;
}

function placeInTurn(wishes: readonly Wish[], taken: readonly Rect[], bounds: Rect): InTurn {
  const labels: Label[] = [];
  let [first, bad] = [0, 0];
  for (const wish of wishes) {
    const blocked = [...taken, ...labels.map(({ rect }) => rect)];
    const label = placeOne(wish, blocked, bounds);
    if (label === undefined) continue;
    labels.push(label);
    const [best] = wish.spots;
    if (best !== undefined && labelAt(wish, best).rect.x === label.rect.x) first++;
    bad += badness(label.rect, blocked);
  }
  return { labels, first, bad };
}

const badness = (rect: Rect, blocked: readonly Rect[]): number =>
  blocked.reduce((sum, one) => sum + sharedArea(one, rect), 0);

function placeOne(wish: Wish, blocked: readonly Rect[], bounds: Rect): Label | undefined {
  const tried = wish.spots
    .map((spot) => labelAt(wish, spot))
    .filter(
      ({ rect }) => isInside(rect, bounds) && (wish.within === undefined || isInside(rect, wish.within)),
    )
    .map((label) => ({ label, bad: badness(label.rect, [...blocked, ...(wish.avoid ?? [])]) }));
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
  const height = kind === 'terminal' ? CAPITALS : lines.length * LINE_HEIGHT + (room === 0 ? 0 : 4);
  const [left, top] = cornerOf(at, side, { width, height });
  return {
    id,
    kind,
    lines,
    at: [left + room, top + (kind === 'terminal' ? CAPITALS - 0.5 : TEXT - 0.5 + (room === 0 ? 0 : 2))],
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
