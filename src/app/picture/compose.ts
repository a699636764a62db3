import type { SiteView } from '../../../machines/call/types.ts';
import type { CheckPoint } from '../../schema/check.ts';
import type { Netlist } from '../../schema/netlist.ts';
import type { Casing, Drawing, Frame, SymbolAt, Wire } from './drawing.ts';
import { type Point, type Rect, rectAround } from './geometry.ts';
import { placeLabels } from './labels.ts';
import { type Focus, layOut, type Placed, type Size } from './layout.ts';
import { linksOf } from './links.ts';
import { type Lengths, type PictureWords, wishesOf } from './names.ts';
import { dotsOf, hopsOf } from './nets.ts';
import { linesOf } from './overlaps.ts';
import { frameOf, sheetShapes } from './sheet-shapes.ts';
import { type SiteLook, siteLook } from './site-look.ts';
import { touchedNodes, touchedPoints } from './touched.ts';

export interface Scene {
  readonly pieces: readonly Netlist[];
  /** Place of the present step; nothing is drawn large where it is absent. */
  readonly focus: Focus;
  readonly site: SiteView;
  /** Where the present check touches. */
  readonly at?: CheckPoint | undefined;
  readonly words: PictureWords;
  readonly lengths?: Lengths | undefined;
  /** The name of the large sheet stands over the drawing already. */
  readonly titled?: boolean;
  readonly size: Size;
}

export interface Composed {
  readonly drawing: Drawing;
  readonly placed: readonly Placed[];
}

/** The picture of this installation as shapes: sheets in their places, wires between them, words where there is room. */
export function compose({
  pieces,
  focus,
  site,
  at,
  words,
  lengths = {},
  titled = false,
  size,
}: Scene): Composed {
  const look = siteLook(
    site,
    pieces.some(({ sheet }) => sheet === 'box'),
  );
  const placed = layOut(pieces, focus, size);
  const sheets = placed.map((one) => sheetShapes(one, look, touchedNodes(at)));
  const frames = placed.flatMap((one) => frameOf(one, look) ?? []);
  const casing = casingOf(placed, size.width);
  const wires = [...serviceLines(placed), ...sheets.flatMap((one) => one.wires), ...linksOf(placed, look)];
  const symbols = sheets.flatMap((one) => one.symbols);
  const screws = sheets.flatMap((one) => one.screws);
  const padlocks = padlocksOf(frames, symbols, look);
  const shapes = { frames, casing, wires, symbols, screws };
  const touched = touchedPoints({ placed, drawing: shapes }, at);
  const taken = [
    ...linesOf(shapes),
    ...touched.map((point) => rectAround(point, RING)),
    ...[...symbols, ...screws].map(({ rect }) => rect),
    ...padlocks.map(aroundPadlock),
  ];
  const wishes = wishesOf({
    placed,
    frames,
    casing,
    screws,
    look,
    words,
    lengths,
    titled,
    width: size.width,
    touched: touchedNodes(at),
  });
  return {
    placed,
    drawing: {
      size,
      ...shapes,
      padlocks,
      dots: dotsOf(wires),
      hops: hopsOf(wires),
      grounds: groundsOf(placed, frames),
      ties: tiesOf(symbols),
      labels: placeLabels(wishes, taken, { x: 1, y: 1, width: size.width - 2, height: size.height - 2 }),
    },
  };
}

/** The two legs come from above, always live. */
function serviceLines(placed: readonly Placed[]): Wire[] {
  const service = placed.find(({ sheet }) => sheet === 'service');
  if (service === undefined) return [];
  const top = service.rect.y;
  return service.piece.terminals
    .filter(({ id }) => id.endsWith('.L1') || id.endsWith('.L2') || (service.large && id.endsWith('.N')))
    .map(({ id, at }): Wire => {
      const [x, y] = service.on(at);
      return {
        id: `service ${id}`,
        nodes: [id],
        path: [
          [x, top],
          [x, y],
        ],
        lead: undefined,
        live: !id.endsWith('.N'),
        weight: 'line',
        over: false,
      };
    });
}

/** Unit row of the well sheet where the cap stands, and the room between the outer leads and the walls. */
const CAP_ROW = 78;
const WALL_ROOM = 17;

function casingOf(placed: readonly Placed[], width: number): Casing | undefined {
  const well = placed.find(({ sheet }) => sheet === 'well');
  const motor = placed.find(({ sheet }) => sheet === 'motor');
  if (well === undefined) return undefined;
  const hasGround = well.large || motor?.large === true;
  const columns = [well, motor]
    .flatMap((one) => one?.piece.terminals ?? [])
    .filter(({ id }) => hasGround || !id.endsWith('.G'))
    .map(({ at }) => well.on([at[0], 0])[0]);
  const last = motor ?? well;
  return {
    left: Math.min(...columns) - WALL_ROOM,
    right: Math.min(Math.max(...columns) + WALL_ROOM, width - 6),
    cap: well.on([0, CAP_ROW])[1],
    bottom: last.rect.y + last.rect.height,
  };
}

/** Room of a ring round a point that is touched. */
const RING = 27;
const PADLOCK_ROOM = 20;

function padlocksOf(frames: readonly Frame[], symbols: readonly SymbolAt[], look: SiteLook): Point[] {
  const panel = frames.find(({ sheet }) => sheet === 'panel');
  const poles = symbols.filter(({ id }) => id.startsWith('panel.breaker'));
  const [one, other] = poles;
  if (!look.isLocked || panel === undefined || one === undefined || other === undefined) return [];
  const y = panel.large ? one.at[1] + 28 : Math.min(one.at[1] + 24, panel.rect.y + panel.rect.height - 12);
  return [[(one.at[0] + other.at[0]) / 2, y]];
}

const aroundPadlock = ([x, y]: Point): Rect => ({
  x: x - PADLOCK_ROOM / 2,
  y: y - PADLOCK_ROOM / 2,
  width: PADLOCK_ROOM,
  height: PADLOCK_ROOM,
});

/** A ground screw of a large sheet runs down to the sign under its frame. */
function groundsOf(placed: readonly Placed[], frames: readonly Frame[]): Drawing['grounds'] {
  return placed
    .filter(({ large, sheet }) => large && sheet !== 'service' && sheet !== 'motor')
    .flatMap((one) => {
      const terminal = one.piece.terminals.find(({ id }) => id === `${one.sheet}.G`);
      if (terminal === undefined) return [];
      const from = one.on(terminal.at);
      const frame = frames.find(({ sheet }) => sheet === one.sheet);
      const bottom = frame === undefined ? from[1] + 16 : frame.rect.y + frame.rect.height + 6;
      return [{ from, to: [from[0], bottom] as const }];
    });
}

/** Poles that one lever works are tied. */
function tiesOf(symbols: readonly SymbolAt[]): Drawing['ties'] {
  const groups = ['panel.breaker', 'panel.disconnect', 'switch.pole', 'box.pole'];
  return groups.flatMap((group) => {
    const [one, other] = symbols.filter(({ id }) => id.startsWith(group));
    return one === undefined || other === undefined ? [] : [{ from: one.at, to: other.at }];
  });
}
