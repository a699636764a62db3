import type { ReactNode } from 'react';
import { useFreshScreen } from '../hooks/use-route.ts';
import './screens.css';

interface FrameProps {
  /** Changes when the screen is another one: then the page starts at its top again. */
  readonly name: string;
  /** The check that is asked now. */
  readonly check?: string;
  /** Absent only where no case is open. */
  readonly strip?: ReactNode;
  readonly title: string;
  /** Second voice at the right of the title. */
  readonly beside?: ReactNode;
  /** Under the title: the instruction, or what the title means. */
  readonly lead?: ReactNode;
  /** What is looked at; left on a wide screen. */
  readonly work?: ReactNode;
  /** What is answered or concluded; right on a wide screen. */
  readonly answer?: ReactNode;
  /** Which of the two comes first on a phone. */
  readonly first?: 'work' | 'answer';
  /** Keys of the thumb zone, the main one last. */
  readonly keys?: ReactNode;
  /** Stays in sight above the keys: reading boxes and pad. */
  readonly hands?: ReactNode;
}

/** Every screen: strip on top, work and answer in the middle, keys under the thumb. */
export function Frame(props: FrameProps) {
  const { name, check, strip, title, beside, lead, work, answer, first = 'work', keys, hands } = props;
  useFreshScreen(name);
  return (
    <div
      className="frame"
      data-screen={name}
      data-check={check}
      data-first={first}
      data-wide={work !== undefined && 'two'}
    >
      {strip}
      <main className="frame-main">
        <header className="frame-head">
          <h1 tabIndex={-1}>{title}</h1>
          {beside !== undefined && <p className="frame-beside">{beside}</p>}
          {lead !== undefined && <div className="frame-lead">{lead}</div>}
        </header>
        {work !== undefined && <div className="frame-work">{work}</div>}
        {answer !== undefined && <div className="frame-answer">{answer}</div>}
        {(hands !== undefined || keys !== undefined) && (
          <div className="frame-foot">
            {hands}
            {keys !== undefined && <div className="frame-keys">{keys}</div>}
          </div>
        )}
      </main>
    </div>
  );
}
