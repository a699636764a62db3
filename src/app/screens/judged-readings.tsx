import type { CallView } from '../../../machines/call/types.ts';
import type { JudgedReading } from '../../diagnosis/types.ts';
import { plumbColumns } from '../hooks/plumb-columns.ts';
import { readingWords, windowWords } from '../hooks/wording.ts';
import { PlumbLine } from '../parts/plumb-line.tsx';
import { Row, Rows } from '../parts/section.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface JudgedProps {
  readonly view: CallView;
  readonly judged: readonly JudgedReading[];
}

/** Numbers as plumb lines through their windows, everything else as rows. */
export function JudgedReadings({ view, judged }: JudgedProps) {
  const texts = useTexts();
  const { say } = texts;
  const columns = plumbColumns(texts, view, judged);
  const rows = judged.filter((one) => !columns.some((column) => column.id === one.check));
  return (
    <>
      {columns.length > 0 && (
        <PlumbLine
          columns={columns}
          rows={[]}
          words={{
            caption: say('plumb-caption'),
            read: say('read'),
            expected: say('expected'),
            suspects: say('suspects'),
          }}
        />
      )}
      {rows.length > 0 && (
        <Rows>
          {rows.map((one) => (
            <Row
              key={one.check}
              sign={one.outcome}
              value={readingWords(texts, one.check, one.reading)}
              note={expectedNote(texts, view, one.check)}
            >
              {texts.check(one.check).name}
            </Row>
          ))}
        </Rows>
      )}
    </>
  );
}

function expectedNote(texts: ReturnType<typeof useTexts>, view: CallView, check: string): string | undefined {
  const window = view.windows[check];
  const words = window === undefined ? '' : windowWords(texts, window);
  return words === '' ? undefined : `${texts.say('expected')}: ${words}`;
}
