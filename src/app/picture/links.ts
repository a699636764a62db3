import type { Lead } from '../parts/lead-chip.tsx';
import type { Wire } from './drawing.ts';
import type { Point } from './geometry.ts';
import type { Placed } from './layout.ts';
import type { SiteLook } from './site-look.ts';

/**
 * Wires between two sheets that name the same node.
 *
 * Down to a sheet below they run straight, or aside at a level of their own; to a box beside they run
 * down, across and up. Ground is drawn at its screws and not between sheets.
 */
export function linksOf(placed: readonly Placed[], look: SiteLook): Wire[] {
  return placed.slice(1).flatMap((to, index) => {
    const from = placed[index];
    return from === undefined ? [] : linksBetween(from, to, look);
  });
}

/** Pixels between two levels that wires run across on. */
const LEVEL = 7;

interface Ends {
  readonly node: string;
  readonly from: Point;
  readonly to: Point;
}

function linksBetween(from: Placed, to: Placed, look: SiteLook): Wire[] {
  const there = new Map(to.piece.terminals.map(({ id, at }) => [id, to.on(at)]));
  const ends = from.piece.terminals.flatMap(({ id, at }): Ends[] => {
    const end = there.get(id);
    return end === undefined || id.endsWith('.G') || id.endsWith('.N')
      ? []
      : [{ node: id, from: from.on(at), to: end }];
  });
  const isUp = to.sheet === 'box' && ends.every((one) => one.to[1] < one.from[1]);
  const levels = ranks(ends);
  return ends.map((one, index) => ({
    id: `link ${one.node} ${to.sheet}`,
    nodes: [one.node],
    path: isUp ? pathUp(one, index, from) : pathDown(one, levels[index] ?? 0),
    lead: leadOf(one.node),
    live: look.isLive(from.sheet) && look.isLive(to.sheet),
    weight: 'line',
    over: true,
  }));
}

/** Down, across below the sheet, and up to the terminal of the box. */
function pathUp({ from, to }: Ends, index: number, sheet: Placed): Point[] {
  const level = sheet.rect.y + sheet.rect.height + LEVEL * (index + 1);
  return [from, [from[0], level], [to[0], level], to];
}

/** Straight where the columns agree, else across halfway. */
function pathDown({ from, to }: Ends, rank: number): Point[] {
  if (Math.abs(from[0] - to[0]) < 1.5) return [from, [from[0], to[1]]];
  const middle = (from[1] + to[1]) / 2 + rank * LEVEL;
  return [from, [from[0], middle], [to[0], middle], to];
}

/** Levels of wires that run aside: those that run right begin with the rightmost, so that none cross. */
function ranks(ends: readonly Ends[]): number[] {
  const order = ends
    .map((one, index) => ({ index, x: one.from[0], right: one.to[0] > one.from[0] }))
    .sort((one, other) => (one.right ? other.x - one.x : one.x - other.x));
  const levels = ends.map(() => 0);
  order.forEach(({ index }, rank) => {
    levels[index] = rank - (ends.length - 1) / 2;
  });
  return levels;
}

const LEADS: Readonly<Record<string, Lead>> = { Y: 'yellow', B: 'black', R: 'red', '1': 'one', '2': 'two' };

function leadOf(node: string): Lead | undefined {
  const [place, end = ''] = node.split('.');
  return place === 'lead' || place === 'drop' || place === 'motor' ? LEADS[end] : undefined;
}
