import { nodePoints } from './geometry.ts';
import { type Layout, onPicture, type Placed } from './layout.ts';

/** Wires between sheets: a node that two neighbouring sheets draw is joined by a one-bend line. */
export interface Join {
  readonly key: string;
  readonly points: string;
}

export function joinsOf({ sheets }: Layout): Join[] {
  const ordered = ORDER.flatMap((sheet) => sheets.find(({ piece }) => piece.sheet === sheet) ?? []);
  return ordered.slice(1).flatMap((to, index) => {
    const from = ordered[index];
    return from === undefined ? [] : between(from, to);
  });
}

const ORDER = ['service', 'panel', 'switch', 'box', 'well', 'motor'] as const;

function between(from: Placed, to: Placed): Join[] {
  const there = nodePoints(to.piece);
  return [...nodePoints(from.piece)].flatMap(([node, at]) => {
    const end = there.get(node);
    if (end === undefined || node.endsWith('.G') || node.endsWith('.N')) return [];
    const one = onPicture(from, at);
    const other = onPicture(to, end);
    const bend = `${one.x.toFixed(1)},${other.y.toFixed(1)}`;
    return [{ key: `${from.piece.id} ${node}`, points: `${one.x.toFixed(1)},${one.y.toFixed(1)} ${bend} ${other.x.toFixed(1)},${other.y.toFixed(1)}` }];
  });
}
