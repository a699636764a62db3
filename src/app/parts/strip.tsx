import '../styles/base.css';
import '../styles/strip.css';
import type { ReactNode } from 'react';
import { OutcomeSign } from './outcome-sign.tsx';
import { StripEdge, StripSign, type StripWord } from './strip-sign.tsx';

interface StripProps {
  readonly word: StripWord;
  /** The state in words, LIVE first. */
  readonly title: string;
  /** What else is so, one line. */
  readonly line: string;
  readonly stopText: string;
  /** Links to the areas, where the screen is wide enough. */
  readonly areas?: ReactNode;
  onStop(): void;
}

/**
 * The state of the work site, on every screen, and the way out.
 *
 * A change of state is read out at once; nothing about it moves.
 */
export function Strip({ word, title, line, stopText, areas, onStop }: StripProps) {
  return (
    <header className="strip-frame" data-word={word}>
      <div className="strip" data-word={word}>
        <div className="strip-state">
          <StripSign word={word} />
          <div className="strip-words" role="status">
            <strong className="strip-title">{title}</strong>
            <span className="strip-line">{line}</span>
          </div>
        </div>
        {areas !== undefined && <div className="strip-areas">{areas}</div>}
        <button type="button" className="strip-stop" onClick={onStop}>
          <OutcomeSign outcome="unsafe" size={26} />
          {stopText}
        </button>
      </div>
      <StripEdge word={word} />
    </header>
  );
}
