import type { Netlist, Part } from '../../../src/schema/netlist.ts';

/**
 * Is a sheet drawn as a draughtsman would draw it? Lines level or upright, symbols on their line and
 * apart, nothing through a terminal, a symbol or a label, no two lines on top of each other unless
 * they are one node.
 */
type Point = readonly [number, number];

interface Stretch {
  readonly part: string;
  readonly from: Point;
  readonly to: Point;
  /** Nodes that this stretch belongs to: one on each side of a symbol, both of a plain wire. */
  readonly nodes: readonly string[];
}

const APART = 26;
/** Half the room that a symbol and a terminal take. */
const CLEAR = 8;
const LABEL = { gap: 9, letter: 10, half: 6 } as const;

export function drawingProblems(sheet: Netlist): string[] {
  const drawn = sheet.parts.filter(({ kind }) => kind !== 'earth');
  const unplaced = drawn.filter((part) => part.between.some((node) => pointOf(sheet, node) === undefined));
  if (unplaced.length > 0) return unplaced.map(({ id }) => `${id} has an end that is not on the sheet`);
  const stretches = drawn.flatMap((part) => stretchesOf(sheet, part));
  return [
    ...outside(sheet),
    ...stretches.filter((one) => !isStraight(one)).map(({ part }) => `${part} runs slanted or nowhere`),
    ...drawn.flatMap((part) => symbolProblems(sheet, part)),
    ...crowded(sheet, drawn),
    ...stretches.flatMap((one) => throughProblems(sheet, one)),
    ...stretches.flatMap((one, index) => stretches.slice(index + 1).flatMap((other) => overlap(one, other))),
  ];
}

function pointOf(sheet: Netlist, node: string): Point | undefined {
  return sheet.terminals.find(({ id }) => id === node)?.at;
}

function pathOf(sheet: Netlist, { between, via = [] }: Part): Point[] {
  const [from, to] = between.map((node) => pointOf(sheet, node));
  return from === undefined || to === undefined ? [] : [from, ...via, to];
}

function stretchesOf(sheet: Netlist, part: Part): Stretch[] {
  const path = pathOf(sheet, part);
  const { at, between, id } = part;
  const segments = path.slice(1).map((to, index) => ({ part: id, from: path[index] ?? to, to }));
  const place = at === undefined ? -1 : segments.findIndex((one) => lies(at, one));
  if (at === undefined || place < 0) return segments.map((one) => ({ ...one, nodes: between }));
  return segments.flatMap((one, index): Stretch[] => {
    const node = index < place ? between[0] : between[1];
    if (index !== place) return [{ ...one, nodes: [node] }];
    return [
      { ...one, to: at, nodes: [between[0]] },
      { ...one, from: at, nodes: [between[1]] },
    ];
  });
}

type Segment = Pick<Stretch, 'from' | 'to'>;

function isStraight({ from, to }: Segment): boolean {
  return (from[0] === to[0]) !== (from[1] === to[1]);
}

/** Distance of a point from a level or upright segment; a slanted one is nowhere near. */
function away([x, y]: Point, { from, to }: Segment): number {
  const [left, right] = [Math.min(from[0], to[0]), Math.max(from[0], to[0])];
  const [top, bottom] = [Math.min(from[1], to[1]), Math.max(from[1], to[1])];
  if (left !== right && top !== bottom) return Number.POSITIVE_INFINITY;
  return Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
}

const lies = (at: Point, segment: Segment): boolean => away(at, segment) === 0;

function outside({ terminals, parts, size }: Netlist): string[] {
  const points = [
    ...terminals.map(({ id, at }) => ({ id, at })),
    ...parts.flatMap(({ id, at, via = [] }) =>
      [...(at === undefined ? [] : [at]), ...via].map((one) => ({ id, at: one })),
    ),
  ];
  return points
    .filter(({ at: [x, y] }) => x < 0 || y < 0 || x > size[0] || y > size[1])
    .map(({ id }) => `${id} lies outside the sheet`);
}

/** A part that is no wire has a symbol, on its line and lying along it. */
function symbolProblems(sheet: Netlist, part: Part): string[] {
  const { id, kind, at, turn } = part;
  if (at === undefined) return kind === 'wire' ? [] : [`${id} has no symbol`];
  const path = pathOf(sheet, part);
  const segments = path.slice(1).map((to, index) => ({ from: path[index] ?? to, to }));
  const under = segments.find((segment) => lies(at, segment));
  if (under === undefined) return [`the symbol of ${id} is off its line`];
  const lying = under.from[1] === under.to[1] ? 'across' : 'down';
  return turn === lying ? [] : [`the symbol of ${id} is turned ${turn}, its line runs ${lying}`];
}

/** Fingers and eyes need room: symbols and probe points stand apart from their like. */
function crowded(sheet: Netlist, drawn: readonly Part[]): string[] {
  const symbols = drawn.flatMap(({ id, at }) => (at === undefined ? [] : [{ id, at }]));
  const probes = sheet.terminals.filter(({ probe }) => probe);
  return [symbols, probes].flatMap((points) =>
    points.flatMap((one, index) =>
      points
        .slice(index + 1)
        .filter((other) => Math.hypot(one.at[0] - other.at[0], one.at[1] - other.at[1]) < APART)
        .map((other) => `${one.id} and ${other.id} are too close`),
    ),
  );
}

/** A line keeps clear of terminals, symbols and labels that are not its own. */
function throughProblems(sheet: Netlist, stretch: Stretch): string[] {
  const foreign = sheet.terminals.filter(({ id }) => !stretch.nodes.includes(id));
  const terminals = foreign.filter(({ at, probe }) => away(at, stretch) < (probe ? CLEAR : 1));
  const symbols = sheet.parts.filter(
    ({ id, at }) => id !== stretch.part && at !== undefined && away(at, stretch) < CLEAR,
  );
  const labels = sheet.terminals.filter((terminal) => crossesLabel(terminal, stretch));
  return [
    ...terminals.map(({ id }) => `${stretch.part} runs through ${id}`),
    ...symbols.map(({ id }) => `${stretch.part} runs through the symbol of ${id}`),
    ...labels.map(({ id }) => `${stretch.part} runs through the label of ${id}`),
  ];
}

/** The label stands left of its terminal; bare ends carry none. */
function crossesLabel(
  { id, at: [x, y], label, probe }: Netlist['terminals'][number],
  stretch: Stretch,
): boolean {
  if (label === undefined || !probe || /^(lead|drop)\./.test(id)) return false;
  const right = x - LABEL.gap;
  const left = right - label.length * LABEL.letter;
  const [lineLeft, lineRight] = [
    Math.min(stretch.from[0], stretch.to[0]),
    Math.max(stretch.from[0], stretch.to[0]),
  ];
  const [lineTop, lineBottom] = [
    Math.min(stretch.from[1], stretch.to[1]),
    Math.max(stretch.from[1], stretch.to[1]),
  ];
  return lineRight > left && lineLeft < right && lineBottom > y - LABEL.half && lineTop < y + LABEL.half;
}

/** Two lines on top of each other are read as one, so they must be one: the same node. */
function overlap(one: Stretch, other: Stretch): string[] {
  if (one.part === other.part || one.nodes.some((node) => other.nodes.includes(node))) return [];
  if (!isStraight(one) || !isStraight(other)) return [];
  const level = one.from[1] === one.to[1];
  if (level !== (other.from[1] === other.to[1])) return [];
  const along = ([x, y]: Point): number => (level ? x : y);
  const aside = ([x, y]: Point): number => (level ? y : x);
  if (aside(one.from) !== aside(other.from)) return [];
  const [start, end] = [one, other].reduce(
    ([low, high], { from, to }) => [
      Math.max(low, Math.min(along(from), along(to))),
      Math.min(high, Math.max(along(from), along(to))),
    ],
    [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as [number, number],
  );
  return end > start ? [`${one.part} lies on ${other.part}`] : [];
}
