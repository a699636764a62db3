import '../styles/base.css';
import '../styles/plumb.css';
import { type Lead, LeadChip } from './lead-chip.tsx';
import { OutcomeSign } from './outcome-sign.tsx';
import type { Span } from './plumb.ts';
import { BobDrawing, CellDrawing } from './plumb-drawing.tsx';

export interface PlumbColumn {
  readonly id: string;
  readonly name: string;
  readonly leads?: readonly Lead[];
  readonly outcome: string;
  readonly outcomeWord: string;
  /** The reading as it is printed: "4.7", "open". */
  readonly read: string;
  readonly sign?: string;
  /** SI amount; absent for a reading that is no number. */
  readonly amount?: number;
  readonly window: Span;
  /** "2.4–3.1" */
  readonly expected: string;
}

/** What a suspect would read: a span in SI, an open circuit, or nothing known. */
export type Bar = Span | 'open';

export interface PlumbRow {
  readonly id: string;
  readonly name: string;
  readonly state: 'leading' | 'standing' | 'ruled-out';
  readonly stateWord: string;
  /** One a column, in their order. */
  readonly bars: readonly (Bar | undefined)[];
  /** The bars in words, one a column, for who cannot see them. */
  readonly barWords?: readonly string[];
}

interface PlumbLineProps {
  readonly columns: readonly PlumbColumn[];
  readonly rows: readonly PlumbRow[];
  readonly words: {
    readonly caption: string;
    readonly read: string;
    readonly expected: string;
    readonly suspects: string;
  };
}

/** One column a reading, one row a suspect: it stands if every line goes through its bars. */
export function PlumbLine({ columns, rows, words }: PlumbLineProps) {
  return (
    <table className="plumb" data-columns={columns.length}>
      <caption className="unseen">{words.caption}</caption>
      <thead>
        <tr>
          <th scope="col" className="plumb-names">
            <span className="plumb-second">
              {words.read} · {words.expected}
            </span>
            {rows.length > 0 && <span className="unseen">{words.suspects}</span>}
          </th>
          {columns.map((column) => (
            <ColumnHead key={column.id} column={column} />
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.length === 0 ? (
          <EmptyRow columns={columns} />
        ) : (
          rows.map((row) => <SuspectRow key={row.id} row={row} columns={columns} />)
        )}
      </tbody>
      <tfoot aria-hidden="true">
        <tr>
          <td />
          {columns.map((column) => (
            <td key={column.id}>
              <BobDrawing column={column} />
            </td>
          ))}
        </tr>
      </tfoot>
    </table>
  );
}

function ColumnHead({ column }: { column: PlumbColumn }) {
  return (
    <th scope="col">
      <span className="plumb-head">
        <OutcomeSign outcome={column.outcome} size={20} />
        {column.leads?.map((lead) => (
          <LeadChip key={lead} lead={lead} width={16} />
        ))}
        {column.name}
      </span>
      <span className="plumb-read">
        {column.read}
        {column.sign !== undefined && <span className="plumb-sign">{column.sign}</span>}
      </span>
      <span className="plumb-expected">{column.expected}</span>
      <span className="unseen">{column.outcomeWord}</span>
    </th>
  );
}

function SuspectRow({ row, columns }: { row: PlumbRow; columns: readonly PlumbColumn[] }) {
  return (
    <tr>
      <th scope="row">
        <span className="plumb-row" data-state={row.state}>
          <OutcomeSign outcome={row.state} size={18} />
          <span>
            {row.name} <span className="unseen">{row.stateWord}</span>
          </span>
        </span>
      </th>
      {columns.map((column, index) => (
        <td key={column.id}>
          <CellDrawing column={column} bar={row.bars[index]} state={row.state} />
          <span className="unseen">{row.barWords?.[index]}</span>
        </td>
      ))}
    </tr>
  );
}

/** Window and line alone, where no suspect's reading is known. */
function EmptyRow({ columns }: { columns: readonly PlumbColumn[] }) {
  return (
    <tr>
      <td />
      {columns.map((column) => (
        <td key={column.id}>
          <CellDrawing column={column} bar={undefined} state="standing" />
        </td>
      ))}
    </tr>
  );
}
