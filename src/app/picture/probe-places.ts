import type { CheckPoint } from '../../schema/check.ts';
import type { Composed } from './compose.ts';
import type { Drawing } from './drawing.ts';
import { isInside, listed, type Point, type Rect, rectAround, rectOf, sharedArea } from './geometry.ts';
import { linesOf } from './overlaps.ts';
import { clampPoints, nodePoint, probePoints } from './touched.ts';

/** Where the instrument touches, and where its bobs and its face find room. */
export interface ProbePlaces {
  readonly probes: readonly { readonly point: Point; readonly bob: Point }[];
  readonly meter: Point | undefined;
  /** Conductors inside the jaws of a clamp. */
  readonly clamps: readonly Point[];
  /** Points that are twisted together for the reading. */
  readonly ties: readonly (readonly Point[])[];
  /** Frame of the place that is only looked at. */
  readonly looked: Rect | undefined;
}

const BOB = 22;
const METER = 40;
const REACH = 36;
const DIRECTIONS = 16;

export function probePlaces(composed: Composed, at: CheckPoint): ProbePlaces {
  const { drawing } = composed;
  const clamps = clampPoints(drawing, at);
  const looked = 'look' in at ? drawing.frames.find(({ sheet }) => sheet === at.look)?.rect : undefined;
  const points = probePoints(composed, at);
  const bobs = bobsFor(drawing, points);
  const from = clamps.length > 0 ? clamps : bobs;
  return {
    probes: points.flatMap((point, index) => {
      const bob = bobs[index];
      return bob === undefined ? [] : [{ point, bob }];
    }),
    meter: from.length === 0 ? undefined : meterFor(drawing, { points: [...points, ...clamps], bobs, from }),
    clamps,
    ties: tiesOf(composed, at),
    looked,
  };
}

function tiesOf(composed: Composed, at: CheckPoint): Point[][] {
  const nodes = 'tied' in at ? at.tied : 'between' in at ? (at.tie ?? []) : [];
  const points = nodes.flatMap((node) => listed(nodePoint(composed, node)));
  return points.length < 2 ? [] : [points];
}

interface Weighed {
  readonly rect: Rect;
  readonly weight: number;
}

/** What a bob or the meter would rather not cover: words least of all. */
function burdens(drawing: Drawing): Weighed[] {
  return [
    ...drawing.labels.map(({ rect }) => ({ rect, weight: 8 })),
    ...drawing.screws.map(({ rect }) => ({ rect, weight: 8 })),
    ...drawing.symbols.map(({ rect }) => ({ rect, weight: 3 })),
    ...linesOf(drawing).map((rect) => ({ rect, weight: 2 })),
    ...drawing.frames.filter(({ large }) => large).map(({ rect }) => ({ rect, weight: 0.3 })),
  ];
}

const burden = (rect: Rect, burdensOf: readonly Weighed[]): number =>
  burdensOf.reduce((sum, one) => sum + one.weight * sharedArea(rect, one.rect), 0);

function bobsFor(drawing: Drawing, points: readonly Point[]): Point[] {
  const all = burdens(drawing);
  const bobs: Point[] = [];
  points.forEach((point, index) => {
    const other = points[1 - index];
    const taken = [
      ...all,
      ...bobs.map((bob) => ({ rect: rectAround(bob, BOB + 6), weight: 20 })),
      ...points.filter((one) => one !== point).map((one) => ({ rect: rectAround(one, 22), weight: 20 })),
    ];
    bobs.push(bestBob(drawing, point, { other, taken }));
  });
  return bobs;
}

interface BobContext {
  readonly other: Point | undefined;
  readonly taken: readonly Weighed[];
}

/** Away from the other probe, clear of words and screws, low rather than high: hands come from below. */
function bestBob({ size }: Drawing, point: Point, { other, taken }: BobContext): Point {
  const bounds: Rect = { x: 2, y: 2, width: size.width - 4, height: size.height - 4 };
  const candidates = Array.from({ length: DIRECTIONS * 2 }, (_, index): Point => {
    const angle = (2 * Math.PI * index) / DIRECTIONS;
    const reach = index < DIRECTIONS ? REACH : REACH * 1.5;
    return [point[0] + reach * Math.cos(angle), point[1] + reach * Math.sin(angle)];
  }).filter((bob) => isInside(rectAround(bob, BOB), bounds));
  const cost = (bob: Point): number => {
    const needle = rectOf({ from: midway(point, bob, 0.4), to: midway(point, bob, 0.7) }, 6);
    const away =
      other === undefined ? 0 : 90 * (Math.sign(other[0] - point[0]) * Math.sign(bob[0] - point[0]));
    return burden(rectAround(bob, BOB), taken) + burden(needle, taken) + away - 0.6 * (bob[1] - point[1]);
  };
  return lowest(candidates, cost) ?? [point[0], point[1] + REACH];
}

const midway = (one: Point, other: Point, share: number): Point => [
  one[0] + (other[0] - one[0]) * share,
  one[1] + (other[1] - one[1]) * share,
];

interface MeterContext {
  readonly points: readonly Point[];
  readonly bobs: readonly Point[];
  readonly from: readonly Point[];
}

const GRID = 12;

/** The emptiest place near the bobs. */
function meterFor(drawing: Drawing, { points, bobs, from }: MeterContext): Point {
  const { width, height } = drawing.size;
  const taken = [
    ...burdens(drawing),
    ...bobs.map((bob) => ({ rect: rectAround(bob, BOB + 6), weight: 20 })),
    ...points.map((point) => ({ rect: rectAround(point, 26), weight: 20 })),
  ];
  const candidates: Point[] = [];
  for (let x = METER / 2 + 4; x <= width - METER / 2 - 4; x += GRID) {
    for (let y = METER / 2 + 4; y <= height - METER / 2 - 4; y += GRID) candidates.push([x, y]);
  }
  const cost = (meter: Point): number =>
    burden(rectAround(meter, METER + 4), taken) +
    from.reduce(
      (sum, bob) =>
        sum + 1.2 * Math.hypot(bob[0] - meter[0], bob[1] - meter[1]) + lineBurden(bob, meter, taken),
      0,
    );
  return lowest(candidates, cost) ?? [width / 2, height / 2];
}

const SAMPLES = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8] as const;

/** What the thin line from a bob to the meter would cross: never through a word if there is another way. */
function lineBurden(bob: Point, meter: Point, taken: readonly Weighed[]): number {
  return SAMPLES.reduce(
    (sum, share) => sum + 0.8 * burden(rectAround(midway(bob, meter, share), 8), taken),
    0,
  );
}

function lowest(points: readonly Point[], cost: (point: Point) => number): Point | undefined {
  let best: Point | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const point of points) {
    const now = cost(point);
    if (now < least) {
      least = now;
      best = point;
    }
  }
  return best;
}
