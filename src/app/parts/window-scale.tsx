import '../styles/base.css';
import '../styles/window.css';
import type { ExpectedWindow } from '../../diagnosis/types.ts';
import { formatIn, formatRange } from '../format/amount.ts';
import { OutcomeSign } from './outcome-sign.tsx';
import { type ChainLink, chainOf, scaleOf } from './scale.ts';
import { ChainDrawing, ScaleDrawing } from './scale-drawing.tsx';

export interface WindowWords {
  /** "Expect, ohms" */
  readonly title: string;
  /** The whole window as one sentence, for who cannot see the scale. */
  readonly sentence: string;
  readonly open: string;
  /** The expected answer of a category, worded. */
  readonly answer: string;
  /** Why there is no window: "No window: motor power unknown". */
  readonly unknown: string;
  readonly over: string;
  readonly upTo: string;
  part(name: ExpectedWindow['parts'][number]['name']): string;
  /** Said for ◇: known from memory only. */
  readonly fromMemory: string;
}

interface WindowScaleProps {
  readonly window: ExpectedWindow;
  readonly words: WindowWords;
}

/** What this installation should read, before anything is typed, and what that is made of. */
export function WindowScale({ window, words }: WindowScaleProps) {
  switch (window.kind) {
    case 'unknown':
      return <p className="window-unknown">{words.unknown}</p>;
    case 'answer':
      return <Expected sign="as-expected" title={words.title} text={words.answer} />;
    case 'open':
      return <Expected sign="open" title={words.title} text={words.open} />;
    case 'range':
      return <RangeScale window={window} words={words} />;
    default: {
      const never: never = window.kind;
      return never;
    }
  }
}

function Expected({ sign, title, text }: { sign: string; title: string; text: string }) {
  return (
    <p className="window-open">
      {title} <OutcomeSign outcome={sign} size={28} /> <strong>{text}</strong>
    </p>
  );
}

function RangeScale({ window, words }: WindowScaleProps) {
  const scale = scaleOf(window);
  if (scale === undefined) return <p className="window-unknown">{words.unknown}</p>;
  const ends = formatRange(window, window.unit ?? '');
  const chain = chainOf(window, scale);
  return (
    <section className="window-scale" aria-label={words.sentence}>
      {scale.beginsLeft && (
        <span className="window-title-above" aria-hidden="true">
          {words.title}
        </span>
      )}
      <div className="window-head" data-begins-left={scale.beginsLeft} aria-hidden="true">
        <ScaleDrawing scale={scale} />
        {!scale.beginsLeft && <span className="window-title">{words.title}</span>}
        {scale.hasLow && (
          <span className="window-end window-end-low" style={{ left: `${scale.from}%` }}>
            {scale.hasHigh ? ends.low : `${words.over} ${ends.low}`}
          </span>
        )}
        {scale.hasHigh && (
          <span className="window-end window-end-high" style={{ left: `${scale.to}%` }}>
            {scale.hasLow ? ends.high : `${words.upTo} ${ends.high}`}
          </span>
        )}
      </div>
      <ChainDrawing chain={chain} />
      <ul className="window-links">
        {chain.map((link) => (
          <li key={link.name}>
            {words.part(link.name)} {amountOf(link, ends.unit)}
            {link.fromMemory && (
              <>
                {' '}
                <span aria-hidden="true">◇</span>
                <span className="unseen">{words.fromMemory}</span>
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What a part adds, or how far it spreads the window when it adds nothing that is drawn. */
function amountOf(link: ChainLink, unit: string): string {
  return link.span === undefined && link.adds < link.spread
    ? `±${formatIn(link.spread, unit).figure}`
    : formatIn(link.adds, unit).figure;
}
