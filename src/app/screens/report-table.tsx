import type { ExpectedWindow } from '../../diagnosis/types.ts';
import type { ReportRow } from '../hooks/report-data.ts';
import { partsWords, readingWords, windowWords } from '../hooks/wording.ts';
import { OutcomeSign } from '../parts/outcome-sign.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface TableProps {
  readonly heading: string;
  readonly rows: readonly ReportRow[];
  /** With what each window is made of. */
  readonly withParts: boolean;
}

export function ReportTable({ heading, rows, withParts }: TableProps) {
  const { say } = useTexts();
  return (
    <table className="sheet-table">
      <thead>
        <tr>
          <th scope="col">{heading}</th>
          <th scope="col">{say('col-read')}</th>
          <th scope="col">{say('col-expected')}</th>
          {withParts && <th scope="col">{say('col-parts')}</th>}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.check} row={row} withParts={withParts} />
        ))}
      </tbody>
    </table>
  );
}

function Row({ row, withParts }: { row: ReportRow; withParts: boolean }) {
  const texts = useTexts();
  const reading = readingWords(texts, row.check, row.reading);
  const before = row.before.map((one) => readingWords(texts, row.check, one)).join(', ');
  return (
    <tr>
      <th scope="row">
        {row.outcome !== '' && <OutcomeSign outcome={row.outcome} />} {texts.check(row.check).name}
      </th>
      <td>{before === '' ? reading : texts.say('report-corrected', { reading, before })}</td>
      <td>{windowOf(texts, row.window)}</td>
      {withParts && <td>{row.window === undefined ? '' : partsWords(texts, row.window)}</td>}
    </tr>
  );
}

function windowOf(texts: ReturnType<typeof useTexts>, window: ExpectedWindow | undefined): string {
  return window === undefined ? '' : windowWords(texts, window);
}
