import type { Part, Terminal } from '../../schema/netlist.ts';
import { LeadLine } from './lead-line.tsx';
import { broken, nodePoints, type Point, pathOf, turnAt } from './geometry.ts';
import { onPicture, type Placed } from './layout.ts';
import type { PictureWords } from './picture.tsx';
import type { SiteLook } from './site-look.ts';
import { symbolOf } from './symbols.tsx';

interface SheetProps {
  readonly placed: Placed;
  readonly look: SiteLook;
  readonly words: PictureWords;
}

/** One sheet: frame, conductors, symbols, terminals; labels only where the hands are. */
export function SheetDrawing({ placed, look, words }: SheetProps) {
  const { piece, focus } = placed;
  const points = nodePoints(piece);
  return (
    <g>
      <Frame placed={placed} look={look} words={words} />
      {piece.parts.map((part) => (
        <PartDrawing key={part.id} part={part} placed={placed} look={look} path={pathOf(part, points)} />
      ))}
      {piece.terminals.map((terminal) => (
        <Screw key={terminal.id} terminal={terminal} placed={placed} labelled={focus} />
      ))}
    </g>
  );
}

function Frame({ placed, look, words }: SheetProps) {
  const { piece, focus, scale } = placed;
  const { x, y } = placed;
  const width = piece.size[0] * scale;
  const height = (piece.sheet === 'box' ? 166 : piece.size[1]) * scale;
  if (piece.sheet === 'service' || piece.sheet === 'motor') return null;
  const proved = look.isProved(piece.sheet);
  const live = look.isLive(piece.sheet);
  return (
    <g>
      <rect x={x} y={y} width={width} height={height} fill="var(--paper)" stroke="var(--ink)" strokeWidth={focus ? 2.4 : 1.4} />
      {proved && <rect x={x + 4} y={y + 4} width={width - 8} height={height - 8} fill="none" stroke="var(--ink)" strokeWidth="1.4" />}
      {focus && (
        <text className="tag" x={x + 2} y={y - 6}>
          {words.sheet(piece.sheet)}
        </text>
      )}
      {focus && live && <Tag x={x + width} y={y - 20} text={words.live} />}
    </g>
  );
}

function Tag({ x, y, text }: { x: number; y: number; text: string }) {
  const width = text.length * 9 + 12;
  return (
    <g>
      <rect x={x - width} y={y} width={width} height="18" fill="var(--ink)" />
      <text x={x - width / 2} y={y + 14} textAnchor="middle" className="tag" style={{ fill: 'var(--paper)' }}>
        {text}
      </text>
    </g>
  );
}

interface PartProps {
  readonly part: Part;
  readonly placed: Placed;
  readonly look: SiteLook;
  readonly path: readonly Point[] | undefined;
}

function PartDrawing({ part, placed, look, path }: PartProps) {
  if (path === undefined || part.kind === 'earth') return null;
  const lead = part.lead === 'yellow' || part.lead === 'black' || part.lead === 'red' ? part.lead : undefined;
  const symbol = symbolOf(part.kind, look.isMade(part));
  const lifted = look.isLifted(part);
  if (lifted && part.kind === 'lead-terminal') return null;
  const at = part.at;
  const halves = symbol === undefined || at === undefined ? [path] : broken(path, at, symbol.half / Math.max(placed.scale, 0.6));
  const width = placed.focus ? 2 : 1.2;
  const thorned = placed.focus && look.isLive(placed.piece.sheet) && part.kind !== 'lead-terminal';
  return (
    <g stroke="var(--ink)" fill="none" strokeWidth={width} color="var(--ink)">
      {halves.map((half) => {
        const points = pointsOf(half, placed);
        return lead !== undefined && placed.focus ? (
          <LeadLine key={points} lead={lead} points={points} width={placed.scale > 0.6 ? 4 : 3} />
        ) : (
          <polyline key={points} points={points} />
        );
      })}
      {thorned && <Thorns path={path} placed={placed} />}
      {symbol !== undefined && at !== undefined && !lifted && (
        <g transform={symbolPlace(at, path, placed)}>{symbol.shape}</g>
      )}
    </g>
  );
}

function pointsOf(path: readonly Point[], placed: Placed): string {
  return path.map((point) => onPicture(placed, point)).map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
}

function symbolPlace(at: Point, path: readonly Point[], placed: Placed): string {
  const { x, y } = onPicture(placed, at);
  const scale = Math.min(1, Math.max(0.45, placed.scale));
  return `translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turnAt(path, at).toFixed(0)}) scale(${scale})`;
}

const THORN_STEP = 14;

/** Cross ticks along a live conductor; the word LIVE stands beside the place. */
function Thorns({ path, placed }: { path: readonly Point[]; placed: Placed }) {
  const ticks: string[] = [];
  for (let index = 0; index + 1 < path.length; index++) {
    const from = onPicture(placed, path[index]!);
    const to = onPicture(placed, path[index + 1]!);
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const [ux, uy] = [(to.x - from.x) / (length || 1), (to.y - from.y) / (length || 1)];
    for (let along = THORN_STEP / 2; along < length; along += THORN_STEP) {
      const [x, y] = [from.x + ux * along, from.y + uy * along];
      ticks.push(`M${(x - uy * 4).toFixed(1)} ${(y + ux * 4).toFixed(1)}L${(x + uy * 4).toFixed(1)} ${(y - ux * 4).toFixed(1)}`);
    }
  }
  return <path d={ticks.join('')} strokeWidth="1.6" />;
}

function Screw({ terminal, placed, labelled }: { terminal: Terminal; placed: Placed; labelled: boolean }) {
  const { x, y } = onPicture(placed, terminal.at);
  if (!labelled) return terminal.probe ? <circle cx={x} cy={y} r="1.8" fill="var(--ink)" /> : null;
  if (!terminal.probe) return <circle cx={x} cy={y} r="2.2" fill="var(--ink)" />;
  const isLead = terminal.id.startsWith('lead.') || terminal.id.startsWith('drop.');
  return (
    <g stroke="var(--ink)" fill="var(--paper)" strokeWidth="1.8">
      <circle cx={x} cy={y} r="6" />
      {!isLead && <path d={`M${x - 3.6} ${y + 3.6}L${x + 3.6} ${y - 3.6}`} />}
      {terminal.label !== undefined && !isLead && (
        <text x={x - 9} y={y + 5} textAnchor="end" stroke="none" className="tag">
          {terminal.label}
        </text>
      )}
    </g>
  );
}
