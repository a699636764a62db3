import '../styles/base.css';
import '../styles/section.css';
import type { ReactNode } from 'react';
import { OutcomeSign } from './outcome-sign.tsx';

interface SectionProps {
  readonly title: string;
  /** Second voice at the right of the title. */
  readonly beside?: string;
  /** What comes next: its rule is the heaviest. */
  readonly heavy?: boolean;
  readonly children: ReactNode;
}

export function Section({ title, beside, heavy, children }: SectionProps) {
  return (
    <section className={heavy ? 'section section-heavy' : 'section'}>
      <div className="section-head">
        <h2>{title}</h2>
        {beside !== undefined && <span className="section-beside">{beside}</span>}
      </div>
      {children}
    </section>
  );
}

/** A list of rows. */
export function Rows({ children }: { children: ReactNode }) {
  return <ul className="rows">{children}</ul>;
}

interface RowProps {
  readonly children: ReactNode;
  /** Name of an outcome sign. */
  readonly sign?: string;
  /** Second voice under the words. */
  readonly note?: ReactNode;
  /** Figure at the right end. */
  readonly value?: ReactNode;
}

export function Row({ children, sign, note, value }: RowProps) {
  return (
    <li className="row">
      {sign !== undefined && <OutcomeSign outcome={sign} />}
      <span className="row-words">
        {children}
        {note !== undefined && <span className="row-note">{note}</span>}
      </span>
      {value !== undefined && <span className="row-value">{value}</span>}
    </li>
  );
}

/** The title block of a drawing: site, motor, box, cable, case. */
export function TitleBlock({
  cells,
}: {
  cells: readonly { readonly name: string; readonly text: string }[];
}) {
  return (
    <dl className="title-cells">
      {cells.map(({ name, text }) => (
        <div key={name} className="title-cell">
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
