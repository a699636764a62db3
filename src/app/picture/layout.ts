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
    split: 0.62,
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
    split: 0.28,
    panel: [0.14, 0.42],
    switch: [0.55, 0.75],
    box: [0.02, 0.6],
    well: [0.64, 0.8],
    motor: [0.8, 0.98],
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
    panel: [0.14, 0.44],
    switch: [0.55, 0.76],
    box: [0.06, 0.34],
    well: [0.42, 0.7],
    motor: [0.72, 0.97],
  },
};

const BOXLESS: Readonly<Record<'panel' | 'switch' | 'well' | 'motor' | 'all', Omit<Rows, 'split' | 'box'>>> =
  {
    panel: { panel: [0.16, 0.64], switch: [0.69, 0.8], well: [0.83, 0.9], motor: [0.9, 0.99] },
    switch: { panel: [0.1, 0.24], switch: [0.31, 0.76], well: [0.78, 0.87], motor: [0.87, 0.98] },
    well: { panel: [0.1, 0.22], switch: [0.28, 0.38], well: [0.42, 0.8], motor: [0.81, 0.98] },
    motor: { panel: [0.1, 0.22], switch: [0.28, 0.38], well: [0.42, 0.54], motor: [0.55, 0.98] },
    all: { panel: [0.1, 0.3], switch: [0.37, 0.6], well: [0.65, 0.8], motor: [0.81, 0.98] },
  };

const MARGIN = 6;
/** Between the house side and the box, for wires and names. */
const GUTTER = 22;

/** Columns of the netlists that keep their place in the picture: netlist x → picture x. */
type Pins = readonly (readonly [number, number])[];

/** The sheets of an installation in their places, from the service to the motor. */
export function layOut(pieces: readonly Netlist[], focus: Focus, size: Size): Placed[] {
  const of = (sheet: Sheet): Netlist | undefined => pieces.find((piece) => piece.sheet === sheet);
  const box = of('box');
  const placed = box === undefined ? boxless(of, focus, size) : boxed(of, focus, size);
  return placed.filter((one) => one !== undefined);
}

type Find = (sheet: Sheet) => Netlist | undefined;

function boxed(of: Find, focus: Focus, { width, height }: Size): (Placed | undefined)[] {
  const rows = BOXED[focus ?? 'all'];
  const left = { x: MARGIN, width: width * rows.split - MARGIN - GUTTER };
  const right = { x: width * rows.split, width: width * (1 - rows.split) - MARGIN };
  const row = (column: { x: number; width: number }, [top, bottom]: readonly [number, number]): Rect => ({
    ...column,
    y: top * height,
    height: (bottom - top) * height,
  });
  const leads = leadColumns(right, focus === 'box');
  const panel = place(of('panel'), row(left, rows.panel), { large: focus === 'panel' });
  const switchRect = row(left, rows.switch);
  return [
    service(of('service'), panel),
    panel,
    place(of('switch'), switchRect, {
      large: focus === 'switch',
      pins: focus === 'switch' ? undefined : switchPins(of, panel),
    }),
    place(of('box'), row(right, rows.box), {
      large: focus === 'box',
      pins: focus === 'box' ? undefined : boxPins(right, leads),
    }),
    place(of('well'), row(right, rows.well), { large: focus === 'well', pins: wellPins(right, leads) }),
    place(of('motor'), row(right, rows.motor), { large: focus === 'motor', pins: wellPins(right, leads) }),
  ];
}

function boxless(of: Find, focus: Focus, { width, height }: Size): (Placed | undefined)[] {
  const rows = BOXLESS[focus === 'box' || focus === undefined ? 'all' : focus];
  const column = { x: width * 0.3, width: width * 0.5 };
  const row = ([top, bottom]: readonly [number, number]): Rect => ({
    ...column,
    y: top * height,
    height: (bottom - top) * height,
  });
  const panel = place(of('panel'), row(rows.panel), { large: focus === 'panel' });
  const at = (share: number): number => column.x + column.width * share;
  const panelPins: Pins = [
    [0, at(0)],
    [35, at(0.3)],
    [75, at(0.66)],
    [108, at(0.92)],
    [120, at(1)],
  ];
  const switchPins: Pins = [
    [0, at(0)],
    [30, at(0.3)],
    [80, at(0.66)],
    [108, at(0.92)],
    [120, at(1)],
  ];
  const wellPins: Pins = [
    [0, at(0)],
    [30, at(0.08)],
    [70, at(0.3)],
    [140, at(0.66)],
    [205, at(0.92)],
    [230, at(1)],
  ];
  return [
    service(of('service'), panel && { ...panel, on: pinned(panel, panelPins) }),
    place(of('panel'), row(rows.panel), { large: focus === 'panel', pins: panelPins }),
    place(of('switch'), row(rows.switch), { large: focus === 'switch', pins: switchPins }),
    place(of('well'), row(rows.well), { large: focus === 'well', pins: wellPins }),
    place(of('motor'), row(rows.motor), { large: focus === 'motor', pins: wellPins }),
  ];
}

interface HowPlaced {
  readonly large: boolean;
  readonly pins?: Pins | undefined;
}

function place(piece: Netlist | undefined, rect: Rect, { large, pins }: HowPlaced): Placed | undefined {
  if (piece === undefined) return undefined;
  const placed = { piece, sheet: piece.sheet, rect, large };
  const plain: Pins = [
    [0, rect.x],
    [piece.size[0], rect.x + rect.width],
  ];
  return { ...placed, on: pinned(placed, pins ?? plain) };
}

function pinned({ piece, rect }: Pick<Placed, 'piece' | 'rect'>, pins: Pins): (point: Point) => Point {
  return ([x, y]) => [between(pins, x), rect.y + (y / piece.size[1]) * rect.height];
}

/** Straight between two pins, and on in the same slope beyond the last. */
function between(pins: Pins, x: number): number {
  const after = Math.max(
    1,
    pins.findIndex(([from]) => from >= x),
  );
  const last = pins.length - 1;
  const index = x > (pins[last]?.[0] ?? 0) ? last : after;
  const [from, to] = [pins[index - 1], pins[index]];
  if (from === undefined || to === undefined) return x;
  return from[1] + ((x - from[0]) / (to[0] - from[0] || 1)) * (to[1] - from[1]);
}

/** The service stands over the panel, its legs in line with the poles. */
function service(piece: Netlist | undefined, panel: Placed | undefined): Placed | undefined {
  if (piece === undefined || panel === undefined) return undefined;
  const top = Math.max(0, panel.rect.y - 40);
  const rect = { ...panel.rect, y: top, height: panel.rect.y - top };
  const one = panel.on([35, 0])[0];
  const two = panel.on([75, 0])[0];
  const ground = panel.on([108, 0])[0];
  return place(piece, rect, {
    large: panel.large,
    pins: [
      [30, one],
      [60, (one + two) / 2],
      [90, two],
      [112, ground],
    ],
  });
}

interface LeadColumns {
  readonly yellow: number;
  readonly black: number;
  readonly red: number;
}

/** Where the three leads run down: under the terminals of a large box, else spread over the column. */
function leadColumns({ x, width }: { x: number; width: number }, isBoxLarge: boolean): LeadColumns {
  const at = (share: number): number => x + width * share;
  return isBoxLarge
    ? { yellow: at(205 / 400), black: at(275 / 400), red: at(375 / 400) }
    : { yellow: at(0.46), black: at(0.64), red: at(0.82) };
}

function switchPins(of: Find, panel: Placed | undefined): Pins | undefined {
  const terminals = of('switch')?.terminals ?? [];
  const one = terminals.find(({ id }) => id === 'panel.D1');
  const two = terminals.find(({ id }) => id === 'panel.D2');
  if (panel === undefined || one === undefined || two === undefined) return undefined;
  return [
    [one.at[0], panel.on([35, 0])[0]],
    [two.at[0], panel.on([75, 0])[0]],
  ];
}

function boxPins({ x, width }: { x: number; width: number }, leads: LeadColumns): Pins {
  return [
    [0, x],
    [45, x + 12],
    [95, x + 26],
    [145, x + 40],
    [205, leads.yellow],
    [275, leads.black],
    [375, leads.red],
    [400, x + width],
  ];
}

/** The well and the motor share their columns, so that their conductors run on. */
function wellPins({ x, width }: { x: number; width: number }, leads: LeadColumns): Pins {
  const pitch = (leads.red - leads.yellow) / 2;
  return [
    [0, Math.max(x, leads.yellow - pitch)],
    [60, leads.yellow],
    [110, leads.black],
    [160, leads.red],
    [205, Math.min(x + width - 8, leads.red + pitch)],
    [230, x + width],
  ];
}
