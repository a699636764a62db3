import type { CheckPoint } from '../../schema/check.ts';
import type { Drawing } from './drawing.ts';
import { listed, type Point } from './geometry.ts';
import type { Placed } from './layout.ts';

/** Which points of the drawing does the present check touch? */
export interface Touchable {
  readonly placed: readonly Placed[];
  readonly drawing: Pick<Drawing, 'symbols' | 'screws' | 'wires'>;
}

/** Nodes that a probe or a tie stands on by name. */
export function touchedNodes(at: CheckPoint | undefined): readonly string[] {
  if (at === undefined) return [];
  if ('between' in at) return [...at.between, ...(at.tie ?? [])];
  return 'tied' in at ? [...at.tied, at.to] : [];
}

/** All points that are covered by a ring or by the jaws of a clamp. */
export function touchedPoints(touchable: Touchable, at: CheckPoint | undefined): Point[] {
  return at === undefined ? [] : [...probePoints(touchable, at), ...clampPoints(touchable.drawing, at)];
}

/** Where the two probes stand, in their order. */
export function probePoints(composed: Touchable, at: CheckPoint): Point[] {
  if ('between' in at) return at.between.flatMap((node) => listed(nodePoint(composed, node)));
  if ('tied' in at) return [at.tied[0] ?? '', at.to].flatMap((node) => listed(nodePoint(composed, node)));
  return 'across' in at ? acrossPoints(composed, at.across) : [];
}

/** The node on the large sheet, else where it is first drawn. */
export function nodePoint({ placed }: Touchable, node: string): Point | undefined {
  const ranked = [...placed].sort((one, other) => Number(other.large) - Number(one.large));
  for (const one of ranked) {
    const terminal = one.piece.terminals.find(({ id }) => id === node);
    if (terminal !== undefined) return one.on(terminal.at);
  }
  return undefined;
}

/** The screws of the part where they are its own, else the ends of its symbol. */
function acrossPoints(composed: Touchable, id: string): Point[] {
  const { drawing, placed } = composed;
  const part = placed.flatMap(({ piece }) => piece.parts).find((one) => one.id === id);
  const symbol = drawing.symbols.find((one) => one.id === id);
  if (part === undefined) return [];
  const isStraight = (part.via ?? []).length === 0;
  return part.between.flatMap((node, index): Point[] => {
    const point = nodePoint(composed, node);
    const isScrew = drawing.screws.some((screw) => screw.id === node && screw.kind === 'screw');
    if (symbol === undefined || (isScrew && isStraight)) return point === undefined ? [] : [point];
    return [symbolEnd(drawing, symbol, index)];
  });
}

const END = 8;

/** End of a symbol, a little outside; `index` follows the path of its part. */
function symbolEnd(drawing: Touchable['drawing'], symbol: Drawing['symbols'][number], index: number): Point {
  const half = drawing.wires.find(({ id }) => id === `${symbol.id} ${index}`)?.path;
  const end = index === 0 ? half?.at(-1) : half?.[0];
  const [x, y] = end ?? symbol.at;
  const [dx, dy] = [Math.sign(Math.round(x - symbol.at[0])), Math.sign(Math.round(y - symbol.at[1]))];
  return [x + dx * END, y + dy * END];
}

/** Conductors inside the jaws of a clamp. */
export function clampPoints(drawing: Touchable['drawing'], at: CheckPoint): Point[] {
  return 'clamp' in at ? at.clamp.flatMap((part) => listed(clampPoint(drawing, part))) : [];
}

function clampPoint(drawing: Touchable['drawing'], part: string): Point | undefined {
  const wires = drawing.wires.filter(({ id }) => id.startsWith(`${part} `));
  const path = wires.at(-1)?.path;
  const [from, to] = [path?.[0], path?.[1]];
  return from === undefined || to === undefined ? undefined : [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}
