import '../styles/base.css';
import '../styles/pad.css';
import { type Lead, LeadChip } from './lead-chip.tsx';
import { OutcomeSign } from './outcome-sign.tsx';

export interface ReadingBoxView {
  readonly id: string;
  /** Short: Y–B, pole 1. */
  readonly name: string;
  /** Leads that the two probes stand on; drawn before the name. */
  readonly leads?: readonly Lead[];
  /** What is typed now, or what was read. */
  readonly value?: string;
  readonly sign?: string;
  /** A reading that is no number: open, unstable, not taken. */
  readonly outcome?: string;
  /** What is expected, in words; shown while nothing is typed. */
  readonly expected?: string;
  readonly active: boolean;
}

interface ReadingBoxesProps {
  readonly boxes: readonly ReadingBoxView[];
  /** Name of the group for a screen reader. */
  readonly name: string;
  /** Said of the box that is typed into. */
  readonly activeWord: string;
  onChoose(id: string): void;
}

/** One box for each reading of a set; the active one is framed and takes what is typed. */
export function ReadingBoxes({ boxes, name, activeWord, onChoose }: ReadingBoxesProps) {
  return (
    <fieldset className="boxes" aria-label={name} data-count={boxes.length}>
      {boxes.map((box) => (
        <button
          key={box.id}
          type="button"
          className="box"
          data-box={box.id}
          aria-current={box.active}
          onClick={() => onChoose(box.id)}
        >
          <span className="box-name">
            {box.leads?.map((lead) => (
              <LeadChip key={lead} lead={lead} width={22} />
            ))}
            <span>{box.name}</span>
            {box.active && <span className="unseen">{activeWord}</span>}
          </span>
          <BoxValue box={box} />
        </button>
      ))}
    </fieldset>
  );
}

function BoxValue({ box }: { box: ReadingBoxView }) {
  const { value = '', sign, outcome, expected, active } = box;
  if (value === '' && !active) return <span className="box-expected">{expected}</span>;
  return (
    <span className="box-value">
      {outcome !== undefined && <OutcomeSign outcome={outcome} size={26} />}
      {value}
      {sign !== undefined && <span className="box-sign">{sign}</span>}
      {active && <span className="box-caret" aria-hidden="true" />}
    </span>
  );
}
