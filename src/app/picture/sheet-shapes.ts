import type { Part, Terminal } from '../../schema/netlist.ts';
import type { Lead } from '../parts/lead-chip.tsx';
import { type Frame, SCREW, type Screw, type SymbolAt, type Wire } from './drawing.ts';
import { brokenAt, type Point, rectAround, segmentAt } from './geometry.ts';
import type { Placed } from './layout.ts';
import type { SiteLook } from './site-look.ts';
import { type SymbolShape, symbolOf } from './symbols.tsx';

/** Wires, symbols and terminals of one sheet, in its place. */
export interface SheetShapes {
  readonly wires: readonly Wire[];
  readonly symbols: readonly SymbolAt[];
  readonly screws: readonly Screw[];
}

/** Drawn by other means, or by none: a service is a pair of lines, insulation is no part. */
const BREAKERS: readonly Part['kind'][] = ['breaker-pole', 'ground-fault-pole'];
const UNDRAWN: readonly Part['kind'][] = ['earth', 'insulation', 'source', 'voltmeter', 'capacitance-meter'];
/** Only these carry the mark of their lead: inside a motor all is ink. */
const COLOURED: readonly Part['kind'][] = ['conductor-buried', 'conductor-drop', 'lead-terminal', 'splice'];

/** @param touched nodes that a probe stands on: shown on a small sheet too */
export function sheetShapes(placed: Placed, look: SiteLook, touched: readonly string[] = []): SheetShapes {
  const points = new Map(placed.piece.terminals.map(({ id, at }) => [id, placed.on(at)]));
  const drawn = placed.piece.parts.filter((part) => isDrawn(part, placed));
  const shapes = drawn.map((part) => partShapes(part, { placed, look, points }));
  return {
    wires: shapes.flatMap(({ wires }) => wires),
    symbols: shapes.flatMap(({ symbol }) => symbol ?? []),
    screws: placed.piece.terminals.flatMap((terminal) => screwOf(terminal, placed, touched) ?? []),
  };
}

/** A small box shows its terminals alone. */
function isDrawn(part: Part, { sheet, large }: Placed): boolean {
  if (UNDRAWN.includes(part.kind)) return false;
  return sheet !== 'box' || large || part.kind === 'lead-terminal';
}

interface Around {
  readonly placed: Placed;
  readonly look: SiteLook;
  readonly points: ReadonlyMap<string, Point>;
}

function partShapes(part: Part, { placed, look, points }: Around): { wires: Wire[]; symbol?: SymbolAt } {
  const path = pathOf(part, placed, points);
  if (path === undefined || look.isParted(part)) return { wires: [] };
  const [one, other] = part.between;
  const wire = (half: readonly Point[], nodes: readonly string[], index: number): Wire => ({
    id: `${part.id} ${index}`,
    nodes,
    path: half,
    lead: COLOURED.includes(part.kind) ? (part.lead as Lead | undefined) : undefined,
    live: look.isLive(placed.sheet),
    weight: placed.sheet === 'box' || placed.sheet === 'motor' ? 'inner' : 'line',
    over: false,
  });
  const shape = shapeOf(part, placed, look);
  if (shape === undefined || part.at === undefined) return { wires: [wire(path, [one, other], 0)] };
  const at = placed.on(part.at);
  const [before, after] = brokenAt(path, at, shape.half);
  const wires = [wire(before, [one], 0), wire(after, [other], 1)];
  return { wires, symbol: symbolAt(part, { placed, shape, at, path, look }) };
}

function pathOf(part: Part, placed: Placed, points: ReadonlyMap<string, Point>): Point[] | undefined {
  const from = points.get(part.between[0]);
  const to = points.get(part.between[1]);
  if (from === undefined || to === undefined) return undefined;
  return [from, ...(part.via ?? []).map((corner) => placed.on(corner)), to];
}

/** Pixels under which a motor is too low for full windings. */
const LOW = 70;

function shapeOf(part: Part, { large, sheet, rect }: Placed, look: SiteLook): SymbolShape | undefined {
  const shape = symbolOf(
    part.kind,
    !(BREAKERS.includes(part.kind) && look.isOff),
    large || rect.height >= LOW,
  );
  if (large || shape === undefined) return shape;
  if (part.kind === 'disconnect-pole' || sheet === 'box') return undefined;
  return shape.always === true ? shape : undefined;
}

interface SymbolFacts extends Omit<Around, 'points'> {
  readonly shape: SymbolShape;
  readonly at: Point;
  readonly path: readonly Point[];
}

function symbolAt(part: Part, { placed, shape, at, path, look }: SymbolFacts): SymbolAt {
  const segment = segmentAt(path, at);
  const isLevel =
    segment === undefined ||
    Math.abs(segment.to[0] - segment.from[0]) > Math.abs(segment.to[1] - segment.from[1]);
  const long = shape.half * 2;
  const broad = shape.reach * 2;
  return {
    id: part.id,
    sheet: placed.sheet,
    at,
    turn: isLevel ? 0 : 90,
    shape,
    rect: isLevel ? rectAround(at, long, broad) : rectAround(at, broad, long),
    charged: part.kind.startsWith('capacitor') && look.isCharged && look.isProved(placed.sheet),
  };
}

function screwOf(terminal: Terminal, placed: Placed, touched: readonly string[]): Screw | undefined {
  const at = placed.on(terminal.at);
  const [owner] = terminal.id.split('.');
  const isOwn = owner === placed.sheet || owner === 'lead' || owner === 'drop';
  if (!terminal.probe || !isOwn)
    return placed.large && placed.sheet === 'service' ? screw(terminal, at) : undefined;
  if (placed.large) return screw(terminal, at);
  const lowest = Math.max(
    ...placed.piece.terminals.filter(({ id }) => id.startsWith('box.')).map((one) => one.at[1]),
  );
  const isShown = placed.sheet === 'box' && !terminal.id.endsWith('.G') && terminal.at[1] === lowest;
  return isShown || touched.includes(terminal.id)
    ? { id: terminal.id, at, kind: 'point', rect: rectAround(at, 5) }
    : undefined;
}

function screw(terminal: Terminal, at: Point): Screw {
  const isEnd = terminal.id.startsWith('lead.') || terminal.id.startsWith('drop.');
  return { id: terminal.id, at, kind: isEnd ? 'end' : 'screw', rect: rectAround(at, SCREW * 2) };
}

/** Unit rows of a sheet under which nothing of the box itself is drawn any more. */
const BOX_BOTTOM = 172;
const SWITCH_BOTTOM = 94;
const SIDE = 20;
/** A feed that runs further out than this unit column passes beside the switch. */
const FED_BESIDE = 100;

/** The frame of what has a cover; service, well and motor have none. */
export function frameOf(placed: Placed, look: SiteLook): Frame | undefined {
  const { sheet, rect, piece, large } = placed;
  if (sheet !== 'panel' && sheet !== 'switch' && sheet !== 'box') return undefined;
  const bottom = sheet === 'box' ? BOX_BOTTOM : sheet === 'switch' ? SWITCH_BOTTOM : piece.size[1];
  const [left, right] = sheet === 'switch' ? switchSides(placed) : [rect.x, rect.x + rect.width];
  const height = placed.on([0, bottom])[1] - rect.y;
  return {
    sheet,
    rect: { x: left, y: rect.y, width: right - left, height },
    large,
    proved: look.isProved(sheet),
  };
}

/** Round the screws of the switch itself: a loop box's feed passes beside it. */
function switchSides(placed: Placed): readonly [number, number] {
  const isBesideFeed = placed.piece.terminals.some(({ id, at }) => id === 'box.L2' && at[0] > FED_BESIDE);
  const columns = placed.piece.terminals
    .filter(({ id }) => id.startsWith('switch.') && (placed.large || isBesideFeed || !id.endsWith('.G')))
    .map(({ at }) => placed.on(at)[0]);
  const side = placed.large ? SIDE * 1.4 : isBesideFeed ? SIDE * 0.35 : SIDE * 0.6;
  return [Math.min(...columns) - side, Math.max(...columns) + side];
}
