import { type Drawing, LEAD_WIDTH } from './drawing.ts';
import { isInside, type Rect, rectOf, segmentsOf, sharedArea } from './geometry.ts';

/**
 * Does anything in the picture lie on anything else? Words on words, on symbols, terminals or lines;
 * symbols on symbols; a line through the symbol of another part; anything off the sheet.
 */
export interface Overlap {
  readonly one: string;
  readonly other: string;
}

interface Thing {
  readonly id: string;
  readonly rect: Rect;
}

/** Square pixels that two things may share: touching corners and rounding. */
const TOUCH = 6;

export function overlapsOf(drawing: Drawing): Overlap[] {
  const labels: Thing[] = [...drawing.labels];
  const symbols: Thing[] = [...drawing.symbols];
  const screws: Thing[] = drawing.screws.filter(({ kind }) => kind !== 'point');
  const bounds: Rect = { x: 0, y: 0, ...drawing.size };
  return [
    ...pairs(labels, labels),
    ...pairs(labels, symbols),
    ...pairs(labels, screws),
    ...pairs(labels, lineThings(drawing)),
    ...pairs(symbols, symbols),
    ...pairs(symbols, screws),
    ...pairs(screws, screws),
    ...throughSymbols(drawing),
    ...[...labels, ...symbols, ...screws]
      .filter(({ rect }) => !isInside(rect, bounds))
      .map(({ id }) => ({ one: id, other: 'the edge' })),
  ];
}

function pairs(ones: readonly Thing[], others: readonly Thing[]): Overlap[] {
  return ones.flatMap((one, index) =>
    (ones === others ? others.slice(index + 1) : others)
      .filter((other) => other.id !== one.id && sharedArea(one.rect, other.rect) > TOUCH)
      .map((other) => ({ one: one.id, other: other.id })),
  );
}

/** Lines as boxes as wide as they are drawn, and the edges of frames and casing. */
function lineThings(drawing: Drawing): Thing[] {
  return linesOf(drawing).map((rect, index) => ({ id: `line ${index}`, rect }));
}

/** A wire may end at a symbol of its own part, never run through that of another. */
function throughSymbols({ symbols, wires }: Drawing): Overlap[] {
  return symbols.flatMap((symbol) =>
    wires
      .filter(({ id }) => !id.startsWith(`${symbol.id} `))
      .filter(({ path }) =>
        segmentsOf(path).some((segment) => sharedArea(rectOf(segment, 1), shrunk(symbol.rect)) > TOUCH),
      )
      .map(({ id }) => ({ one: symbol.id, other: id })),
  );
}

const shrunk = ({ x, y, width, height }: Rect): Rect => ({
  x: x + 1.5,
  y: y + 1.5,
  width: width - 3,
  height: height - 3,
});

/** Breadth of a live wire with its thorns. */
const THORNED = { line: 8, inner: 6 } as const;

/** What words keep clear of, apart from symbols and terminals. */
export function linesOf({ wires, frames, casing }: Pick<Drawing, 'wires' | 'frames' | 'casing'>): Rect[] {
  const ofWires = wires.flatMap(({ path, lead, live, weight }) =>
    segmentsOf(path).map((segment) =>
      rectOf(segment, lead !== undefined ? LEAD_WIDTH : live ? THORNED[weight] : 2),
    ),
  );
  const ofFrames = frames.flatMap(({ rect }) => edgesOf(rect));
  const walls: Rect[] =
    casing === undefined
      ? []
      : [
          { x: casing.left - 1, y: casing.cap, width: 2, height: casing.bottom - casing.cap },
          { x: casing.right - 1, y: casing.cap, width: 2, height: casing.bottom - casing.cap },
          { x: casing.left - 5, y: casing.cap - 3, width: casing.right - casing.left + 10, height: 6 },
        ];
  return [...ofWires, ...ofFrames, ...walls];
}

function edgesOf({ x, y, width, height }: Rect): Rect[] {
  return [
    { x: x - 1, y: y - 1, width: width + 2, height: 2 },
    { x: x - 1, y: y + height - 1, width: width + 2, height: 2 },
    { x: x - 1, y: y - 1, width: 2, height: height + 2 },
    { x: x + width - 1, y: y - 1, width: 2, height: height + 2 },
  ];
}
