import type { SiteView } from '../../../machines/call/types.ts';
import type { CheckPoint } from '../../schema/check.ts';
import type { Netlist } from '../../schema/netlist.ts';
import { joinsOf } from './joins.ts';
import { layOut, type Placed } from './layout.ts';
import { Probes } from './probes.tsx';
import { SheetDrawing } from './sheet-drawing.tsx';
import { siteLook } from './site-look.ts';

interface PictureProps {
  readonly pieces: readonly Netlist[];
  /** Place of the present step. */
  readonly focus: 'panel' | 'switch' | 'box' | 'well';
  readonly site: SiteView;
  readonly at: CheckPoint;
  /** Unit in the meter's face; empty for a look. */
  readonly unit: string;
  readonly words: PictureWords;
  /** The whole in one sentence, for those who do not see it. */
  readonly spoken: string;
}

export interface PictureWords {
  /** Name of a sheet: "panel", "pressure switch", the box kind, "well head". */
  sheet(sheet: Netlist['sheet']): string;
  readonly live: string;
  readonly lifted: string;
}

/** The installation in front of you, drawn from its netlist, with the probe points marked. */
export function Picture({ pieces, focus, site, at, unit, words, spoken }: PictureProps) {
  const layout = layOut(pieces, focus);
  const look = siteLook(site);
  return (
    <svg className="picture" viewBox={`0 0 ${layout.width} ${layout.height}`} role="img" aria-label={spoken}>
      <g fill="none" stroke="var(--ink)" strokeWidth="1.4">
        {joinsOf(layout).map(({ key, points }) => (
          <polyline key={key} points={points} />
        ))}
      </g>
      {layout.sheets.map((placed) => (
        <SheetDrawing key={placed.piece.id} placed={placed} look={look} words={words} />
      ))}
      <Probes sheet={layout.sheets.find(isFocus)} sheets={layout.sheets} at={at} unit={unit} />
    </svg>
  );
}

const isFocus = (placed: Placed): boolean => placed.focus;
