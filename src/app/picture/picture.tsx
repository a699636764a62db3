import '../styles/base.css';
import '../styles/picture.css';
import { useMemo, useRef } from 'react';
import type { SiteView } from '../../../machines/call/types.ts';
import type { CheckPoint } from '../../schema/check.ts';
import type { Netlist } from '../../schema/netlist.ts';
import { compose } from './compose.ts';
import type { Drawing } from './drawing.ts';
import { pathText } from './geometry.ts';
import type { Focus } from './layout.ts';
import type { Lengths, PictureWords } from './names.ts';
import { ProbesDrawing } from './probe-drawing.tsx';
import { type ProbePlaces, probePlaces } from './probe-places.ts';
import {
  CasingDrawing,
  FrameDrawing,
  GroundDrawing,
  LabelDrawing,
  PadlockDrawing,
  ScrewDrawing,
  SymbolDrawing,
  TieDrawing,
} from './shape-drawing.tsx';
import { useSize } from './use-size.ts';
import { HopDrawing, WireDrawing } from './wire-drawing.tsx';

interface PictureProps {
  readonly pieces: readonly Netlist[];
  /** Place of the present step; without one nothing is drawn large. */
  readonly focus: Focus;
  readonly site: SiteView;
  /** Where the present check touches; absent where nothing is read. */
  readonly at?: CheckPoint | undefined;
  /** Sign of the unit in the meter's face. */
  readonly unit?: string;
  readonly words: PictureWords;
  readonly lengths?: Lengths | undefined;
  /** Line over the drawing: the full name of the place, and what else is so of it. */
  readonly title?: string;
  readonly note?: string;
  /** Names of the probe points, in order; the legend under the drawing. */
  readonly points?: readonly string[];
  /** The whole in one sentence, for those who do not see it. */
  readonly spoken: string;
}

/** The installation in front of you, drawn from its netlist, with the probe points marked. */
export function Picture(props: PictureProps) {
  const { pieces, focus, site, at, unit = '', words, lengths, title, note, points = [], spoken } = props;
  const holder = useRef<HTMLDivElement>(null);
  const { width, height, zoom } = useSize(holder);
  const composed = useMemo(
    () =>
      compose({
        pieces,
        focus,
        site,
        at,
        words,
        lengths,
        titled: title !== undefined,
        size: { width, height },
      }),
    [pieces, focus, site, at, words, lengths, title, width, height],
  );
  const places = useMemo(() => (at === undefined ? undefined : probePlaces(composed, at)), [composed, at]);
  return (
    <figure className="picture">
      {title !== undefined && (
        <figcaption>
          <strong>{title}</strong> {note}
        </figcaption>
      )}
      <div className="picture-holder" ref={holder}>
        <svg
          role="img"
          aria-label={spoken}
          width={width * zoom}
          height={height * zoom}
          viewBox={`0 0 ${width} ${height}`}
        >
          <DrawingShapes drawing={composed.drawing} places={places} unit={unit} />
        </svg>
      </div>
      {points.length > 0 && <Legend points={points} />}
    </figure>
  );
}

interface ShapesProps {
  readonly drawing: Drawing;
  readonly places: ProbePlaces | undefined;
  readonly unit: string;
}

/** Frames under wires under symbols under words; the probes over all. */
function DrawingShapes({ drawing, places, unit }: ShapesProps) {
  return (
    <>
      {drawing.frames.map((frame) => (
        <FrameDrawing key={frame.sheet} frame={frame} />
      ))}
      {drawing.casing !== undefined && <CasingDrawing casing={drawing.casing} />}
      {drawing.grounds.map((ground) => (
        <GroundDrawing key={pathText([ground.from])} ground={ground} />
      ))}
      {drawing.wires.map((wire) => (
        <WireDrawing key={wire.id} wire={wire} />
      ))}
      {drawing.hops.map((hop) => (
        <HopDrawing key={pathText([hop])} at={hop} />
      ))}
      {drawing.ties.map((tie) => (
        <TieDrawing key={pathText([tie.from])} tie={tie} />
      ))}
      {drawing.symbols.map((symbol) => (
        <SymbolDrawing key={symbol.id} symbol={symbol} />
      ))}
      {drawing.dots.map(([x, y]) => (
        <circle key={`${x} ${y}`} cx={x} cy={y} r="3" fill="var(--ink)" />
      ))}
      {drawing.screws.map((screw) => (
        <ScrewDrawing key={screw.id} screw={screw} />
      ))}
      {drawing.padlocks.map((padlock) => (
        <PadlockDrawing key={pathText([padlock])} at={padlock} />
      ))}
      {drawing.labels.map((label) => (
        <LabelDrawing key={label.id} label={label} />
      ))}
      {places !== undefined && <ProbesDrawing places={places} unit={unit} />}
    </>
  );
}

function Legend({ points }: { points: readonly string[] }) {
  return (
    <ol className="picture-legend">
      {points.map((point, index) => (
        <li key={point}>
          <span className="picture-legend-number" aria-hidden="true">
            {index + 1}
          </span>{' '}
          {point}
        </li>
      ))}
    </ol>
  );
}
