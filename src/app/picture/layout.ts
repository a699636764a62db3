import type { Netlist, Sheet } from '../../schema/netlist.ts';
import type { Point, Rect } from './geometry.ts';

/**
 * Where does each sheet lie in the picture?
 *
 * The place of the present step is drawn large, the rest small, never to scale; text and symbols keep
 * their size. With a box the house side stands left and the box above the well right, so that the
 * leads run straight down; without one all sheets stand in one column. Netlist coordinates are
 * stretched between a few pinned columns, so that a conductor keeps its place from sheet to sheet.
 */
export interface Placed {
  readonly piece: Netlist;
  readonly sheet: Sheet;
  readonly rect: Rect;
  /** Drawn with its inner parts and the names of its terminals. */
  readonly large: boolean;
  /** A point of the sheet in the picture. */
  on(point: Point): Point;
}

export type Focus = Exclude<Sheet, 'service'> | undefined;

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Upper and lower edge of each sheet, as shares of the height; where the right column begins. */
interface Rows {
  readonly split: number;
  readonly panel: readonly [number, number];
  readonly switch: readonly [number, number];
  readonly box: readonly [number, number];
  readonly well: readonly [number, number];
  readonly motor: readonly [number, number];
}

const BOXED: Readonly<Record<'panel' | 'switch' | 'box' | 'well' | 'motor' | 'all', Rows>> = {
  panel: {
    split: 0.64,
    panel: [0.17, 0.72],
    switch: [0.79, 0.9],
    box: [0.09, 0.32],
    well: [0.44, 0.68],
    motor: [0.7, 0.97],
  },
  switch: {
    split: 0.58,
    panel: [0.13, 0.3],
    switch: [0.4, 0.86],
    box: [0.09, 0.32],
    well: [0.44, 0.68],
    motor: [0.7, 0.97],
  },
  box: {
    split: 0.29,
    panel: [0.14, 0.3],
    switch: [0.38, 0.49],
    box: [0.01, 0.53],
    well: [0.6, 0.78],
    motor: [0.79, 0.98],
  },
  well: {
    split: 0.28,
    panel: [0.14, 0.42],
    switch: [0.55, 0.75],
    box: [0.03, 0.2],
    well: [0.23, 0.76],
    motor: [0.78, 0.98],
  },
  motor: {
    split: 0.28,
    panel: [0.14, 0.42],
    switch: [0.55, 0.75],
    box: [0.03, 0.2],
    well: [0.26, 0.5],
    motor: [0.52, 0.97],
  },
  all: {
    split: 0.3,
    panel: [0.14, 0.4],
    switch: [0.5, 0.69],
    box: [0.06, 0.34],
    well: [0.42, 0.7],
    motor: [0.72, 0.97],
  },
};

const BOXLESS: Readonly<Record<'panel' | 'switch' | 'well' | 'motor' | 'all', Omit<Rows, 'split' | 'box'>>> =
  {
    panel: { panel: [0.14, 0.57], switch: [0.62, 0.71], well: [0.74, 0.82], motor: [0.82, 0.985] },
    switch: { panel: [0.1, 0.22], switch: [0.29, 0.68], well: [0.71, 0.8], motor: [0.8, 0.985] },
    well: { panel: [0.1, 0.22], switch: [0.28, 0.38], well: [0.42, 0.8], motor: [0.81, 0.98] },
    motor: { panel: [0.1, 0.22], switch: [0.28, 0.38], well: [0.42, 0.54], motor: [0.55, 0.98] },
    all: { panel: [0.1, 0.3], switch: [0.37, 0.6], well: [0.65, 0.8], motor: [0.81, 0.98] },
  };

const MARGIN = 6;
/** Between the house side and the box, for wires and names. */
const GUTTER = 24;
/** The same where the house side is small: its names stand there too. */
const WIDE_GUTTER = 46;
const WIDE_GUTTER_SHARE = 0.135;

/** Columns of a netlist that keep their place in the picture: netlist x → picture x, rising. */
type Pins = readonly (readonly [number, number])[];
type Column = { readonly x: number; readonly width: number };

/** The sheets of an installation in their places, from the service to the motor. */
export function layOut(pieces: readonly Netlist[], focus: Focus, size: Size): Placed[] {
  const of = (sheet: Sheet): Netlist | undefined => pieces.find((piece) => piece.sheet === sheet);
  const placed = of('box') === undefined ? boxless(of, focus, size) : boxed(of, focus, size);
  return placed.filter((one) => one !== undefined);
}

type Find = (sheet: Sheet) => Netlist | undefined;
type Sheets = readonly (Placed | undefined)[];

function rowIn(column: Column, [top, bottom]: readonly [number, number], { height }: Size): Rect {
  return { ...column, y: top * height, height: (bottom - top) * height };
}

function boxed(of: Find, focus: Focus, size: Size): Sheets {
  const rows = BOXED[focus ?? 'all'];
  const isHouse = focus === 'panel' || focus === 'switch';
  const isLower = focus === 'well' || focus === 'motor';
  const left = {
    x: MARGIN,
    width:
      size.width * rows.split -
      MARGIN -
      (isHouse ? GUTTER : Math.min(WIDE_GUTTER, size.width * WIDE_GUTTER_SHARE)),
  };
  const right = { x: size.width * rows.split, width: size.width * (1 - rows.split) - MARGIN };
  const panel = place(of('panel'), rowIn(left, rows.panel, size), {
    large: focus === 'panel',
    pins: left.width > SLIM ? undefined : pinsAt(of('panel'), polesIn(left)),
  });
  const box = place(of('box'), rowIn(right, rows.box, size), {
    large: focus === 'box',
    pins:
      focus === 'box'
        ? loopBoxPins(of('box'), right)
        : smallBoxPins(of('box'), right, isLower ? LEADS_OF_WELL : LEADS),
  });
  const leads = wellColumns(box, right);
  const lower = (sheet: Sheet, row: readonly [number, number]): Placed | undefined =>
    place(of(sheet), rowIn(right, row, size), { large: focus === sheet, pins: pinsAt(of(sheet), leads) });
  return [
    service(of('service'), panel),
    panel,
    place(of('switch'), rowIn(left, rows.switch, size), {
      large: focus === 'switch',
      pins: focus === 'switch' ? undefined : switchPins(of('switch'), panel),
    }),
    box,
    lower('well', rows.well),
    lower('motor', rows.motor),
  ];
}

/** Shares of the one column in which the two conductors and the ground run down. */
const ONE_COLUMN = { from: 0.3, width: 0.5, one: 0.3, two: 0.66, ground: 0.92 } as const;

function boxless(of: Find, focus: Focus, size: Size): Sheets {
  const rows = BOXLESS[focus === 'box' || focus === undefined ? 'all' : focus];
  const column = { x: size.width * ONE_COLUMN.from, width: size.width * ONE_COLUMN.width };
  const at = (share: number): number => column.x + column.width * share;
  const columns: Columns = { '1': at(ONE_COLUMN.one), '2': at(ONE_COLUMN.two), G: at(ONE_COLUMN.ground) };
  const lower = (sheet: keyof typeof rows): Placed | undefined =>
    place(of(sheet), rowIn(column, rows[sheet], size), {
      large: focus === sheet,
      pins: pinsAt(of(sheet), columns),
    });
  const panel = lower('panel');
  return [service(of('service'), panel), panel, lower('switch'), lower('well'), lower('motor')];
}

interface HowPlaced {
  readonly large: boolean;
  readonly pins?: Pins | undefined;
}

function place(piece: Netlist | undefined, rect: Rect, { large, pins }: HowPlaced): Placed | undefined {
  if (piece === undefined) return undefined;
  const down = rowsOf(piece, rect, large);
  const across = pins ?? [
    [0, rect.x],
    [piece.size[0], rect.x + rect.width],
  ];
  const on = ([x, y]: Point): Point => [along(across, x), along(down, y)];
  return { piece, sheet: piece.sheet, rect, large, on };
}

/** Shares of a large well's height for the end of the buried run and the beginning of the drop. */
const JOINT = { from: 0.28, to: 0.56 } as const;

/** Rows of a sheet: a large well gives its joints room, all else keeps its proportions. */
function rowsOf(piece: Netlist, { y, height }: Rect, large: boolean): Pins {
  const ends: Pins = [
    [0, y],
    [piece.size[1], y + height],
  ];
  const rowOf = (place: string): number | undefined =>
    piece.terminals.find(({ id }) => id.startsWith(`${place}.`))?.at[1];
  const [from, to] = [rowOf('well'), rowOf('drop')];
  const [first, last] = ends;
  if (!large || piece.sheet !== 'well' || from === undefined || to === undefined || !first || !last)
    return ends;
  return [first, [from, y + height * JOINT.from], [to, y + height * JOINT.to], last];
}

/** Straight between two pins, and on in the same slope beyond the outermost. */
function along(pins: Pins, x: number): number {
  const found = pins.findIndex(([from]) => from >= x);
  const index = Math.max(1, found === -1 ? pins.length - 1 : found);
  const [from, to] = [pins[index - 1], pins[index]];
  if (from === undefined || to === undefined) return x;
  return from[1] + ((x - from[0]) / (to[0] - from[0] || 1)) * (to[1] - from[1]);
}

function columnOf(piece: Netlist | undefined, id: string): number | undefined {
  return piece?.terminals.find((terminal) => terminal.id === id)?.at[0];
}

/** Picture x of conductors, by the last word of their node: `Y`, `B`, `R`, `1`, `2`, `G`. */
type Columns = Readonly<Record<string, number>>;
/** Nodes of the house side that run on as conductor 1 and 2. */
const SAME: Readonly<Record<string, string>> = { L1: '1', L2: '2', T1: '1', T2: '2', D1: '1', D2: '2' };

/** Pins that set every conductor of a sheet on its column; nothing where fewer than two are known. */
function pinsAt(piece: Netlist | undefined, columns: Columns): Pins | undefined {
  const known = new Map<number, number>();
  for (const { id, at } of piece?.terminals ?? []) {
    const end = id.split('.')[1] ?? '';
    const column = columns[SAME[end] ?? end];
    if (column !== undefined) known.set(at[0], column);
  }
  const pins = [...known].sort(([one], [other]) => one - other);
  return pins.length < 2 ? undefined : pins;
}

/** Pixels under which the poles of a panel would touch. */
const SLIM = 100;

/** A small panel spreads its poles, so that their arms part. */
function polesIn({ x, width }: Column): Columns {
  return { '1': x + width * 0.25, '2': x + width * 0.74 };
}

/** How high the service stands over its panel, in pixels. */
const SERVICE = 40;

/** The service stands over the panel, its legs in line with the poles. */
function service(piece: Netlist | undefined, panel: Placed | undefined): Placed | undefined {
  if (piece === undefined || panel === undefined) return undefined;
  const top = Math.max(0, panel.rect.y - SERVICE);
  const pins = ['service.L1', 'service.L2', 'service.G'].flatMap((id) => {
    const [own, below] = [columnOf(piece, id), columnOf(panel.piece, id)];
    return own === undefined || below === undefined ? [] : [[own, panel.on([below, 0])[0]] as const];
  });
  const lowest = Math.max(...piece.terminals.map(({ at }) => at[1]));
  const height = ((panel.rect.y - top) * piece.size[1]) / lowest;
  return place(piece, { ...panel.rect, y: top, height }, { large: panel.large, pins });
}

/** A feed that passes beside the switch, not through it, stands out here. */
const BESIDE = 100;

/** Share of the panel's width for a small switch with a feed beside it: its name stands next to it. */
const FED_WIDTH = 0.72;

/** A small switch hangs straight under the panel; one with a feed beside it needs more. */
function switchPins(piece: Netlist | undefined, panel: Placed | undefined): Pins | undefined {
  const pins = ['panel.D1', 'panel.D2'].flatMap((id) => {
    const [own, above] = [columnOf(piece, id), columnOf(panel?.piece, id)];
    return own === undefined || above === undefined || panel === undefined
      ? []
      : [[own, panel.on([above, 0])[0]] as const];
  });
  const last = pins.at(-1);
  if (pins.length < 2 || last === undefined || panel === undefined) return undefined;
  if (last[0] <= BESIDE) return pins;
  const { x, width } = panel.rect;
  return [
    [0, x],
    [last[0], x + width * FED_WIDTH],
  ];
}

/** Pixels between the supply wires of a small box, and shares of its width for the leads. */
const PITCH = 10;
const LEADS: Columns = { Y: 0.6, B: 0.74, R: 0.88 };
/** The same over a large well, whose ground stands beside the leads. */
const LEADS_OF_WELL: Columns = { Y: 0.57, B: 0.7, R: 0.84 };

/** A small box crowds its supply to the left, so that the leads find room for their names. */
function smallBoxPins(piece: Netlist | undefined, { x, width }: Column, shares: Columns): Pins | undefined {
  const supply = ['L1', 'L2', 'SW'].map(
    (end, index) => [columnOf(piece, `box.${end}`), x + PITCH * (index + 1)] as const,
  );
  const leads = Object.entries(shares).map(
    ([end, share]) => [columnOf(piece, `box.${end}`), x + width * share] as const,
  );
  const pins = [...supply, ...leads].flatMap(([own, at]) => (own === undefined ? [] : [[own, at] as const]));
  return [[0, x], ...pins];
}

/** Columns of a box with a loop terminal, whose seven names need more room on a narrow screen. */
const LOOP_BOX: Columns = { G: 0.055, L1: 0.165, L2: 0.315, SW: 0.48, Y: 0.59, B: 0.72, R: 0.94 };
const ROOMY = 330;

function loopBoxPins(piece: Netlist | undefined, { x, width }: Column): Pins | undefined {
  if (width > ROOMY || columnOf(piece, 'box.SW') === undefined) return undefined;
  const pins = Object.entries(LOOP_BOX).flatMap(([end, share]) => {
    const own = columnOf(piece, `box.${end}`);
    return own === undefined ? [] : [[own, x + width * share] as const];
  });
  return [[0, x], ...pins];
}

/** The columns of the well and the motor: under the terminals of the box, the ground beside them. */
function wellColumns(box: Placed | undefined, { x, width }: Column): Columns {
  const at = (end: string): number => box?.on([columnOf(box.piece, `box.${end}`) ?? 0, 0])[0] ?? x;
  return { Y: at('Y'), B: at('B'), R: at('R'), G: Math.min(x + width - PITCH, at('R') + 3 * PITCH) };
}
