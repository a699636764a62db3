import type { CallView } from '../../../machines/call/types.ts';
import type { JudgedReading } from '../../diagnosis/types.ts';
import { of } from '../../units/units.ts';
import { formatReading } from '../format/amount.ts';
import { unitNamed } from '../format/unit.ts';
import type { PlumbColumn } from '../parts/plumb-line.tsx';
import type { Texts } from '../words/texts.ts';
import { columnName, leadsOf } from './box-views.ts';
import { endsWords } from './wording.ts';

/** Readings that can be drawn against a window: numbers, and open circuits where a number was expected. */
export function plumbColumns(texts: Texts, view: CallView, judged: readonly JudgedReading[]): PlumbColumn[] {
  const drawn = judged.filter(
    (one) => !('answer' in one.reading) && view.windows[one.check]?.kind === 'range',
  );
  const names = drawn.map((one) => texts.check(one.check).name);
  return drawn.map((one, index) =>
    columnOf(texts, view, { judged: one, name: columnName(texts, one.check, names, index) }),
  );
}

function columnOf(
  texts: Texts,
  view: CallView,
  { judged, name }: { judged: JudgedReading; name: string },
): PlumbColumn {
  const { check, reading, outcome } = judged;
  const window = view.windows[check];
  const { low, high } = window ?? {};
  return {
    id: check,
    name,
    leads: leadsOf(check),
    outcome,
    outcomeWord: texts.answer(check, outcome),
    window: { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) },
    expected: window === undefined ? '' : endsWords(texts, window),
    ...readIn(texts, reading, outcome),
  };
}

function readIn(
  texts: Texts,
  reading: JudgedReading['reading'],
  outcome: string,
): Pick<PlumbColumn, 'read' | 'sign' | 'amount'> {
  if (!('value' in reading))
    return { read: texts.name('outcomes', outcome === 'as-expected' ? 'open' : outcome) };
  const { figure, sign } = formatReading(...reading.value);
  const unit = unitNamed(reading.value[1]);
  return { read: figure, sign, ...(unit === undefined ? {} : { amount: of(reading.value[0], unit) }) };
}
