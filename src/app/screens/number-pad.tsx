import { useState } from 'react';
import type { Reading } from '../../schema/case.ts';
import { formatReading } from '../format/amount.ts';
import { boxViews } from '../hooks/box-views.ts';
import { readingOf, unitsFor } from '../hooks/pad-units.ts';
import { padUnits, padWords } from '../hooks/pad-words.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import type { ReadingSet } from '../hooks/use-reading-set.ts';
import { useStop } from '../hooks/use-stop.ts';
import { Pad } from '../parts/pad.tsx';
import { ReadingBoxes } from '../parts/reading-boxes.tsx';
import { looksLikeOtherUnit } from '../parts/typed.ts';
import { UnitOffer } from '../parts/unit-offer.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface NumberPadProps {
  readonly open: OpenCase;
  readonly set: ReadingSet;
  onReading(reading: Reading): void;
  onNotTaken(): void;
}

interface Odd {
  readonly value: number;
  readonly unit: string;
  readonly other: string;
}

/** Boxes and pad. A number that another unit would put near its window is asked about before it counts. */
export function NumberPad({ open, set, onReading, onNotTaken }: NumberPadProps) {
  const texts = useTexts();
  const { catalog } = useServices();
  const stop = useStop(open);
  const [odd, setOdd] = useState<Odd>();
  const { active = '' } = set;
  const reads = catalog.checks[active]?.reads;
  if (reads === undefined || !('unit' in reads)) return null;
  const units = unitsFor(reads);
  const give = (value: number, unit: string): void => {
    setOdd(undefined);
    const reading = readingOf(value, unit);
    if (reading !== undefined) onReading(reading);
  };
  const enter = (value: number, unit: string): void => {
    const window = open.view?.windows[active];
    const other =
      window === undefined ? undefined : looksLikeOtherUnit(value, unit, { ...window, among: units });
    if (other === undefined) give(value, unit);
    else setOdd({ value, unit, other });
  };
  return (
    <>
      <ReadingBoxes
        boxes={boxViews(texts, open.view, set)}
        name={texts.say('boxes')}
        activeWord={texts.say('box-active')}
        onChoose={set.choose}
      />
      {odd === undefined ? (
        <Pad
          check={active}
          typed={set.typed}
          units={padUnits(texts, units)}
          expected={reads.unit}
          words={padWords(texts, reads.quantity)}
          onType={set.type}
          onValue={enter}
          onOpen={() => onReading({ open: true })}
          onUnstable={() => onReading({ unstable: true })}
          onNotTaken={onNotTaken}
          onUnsafe={stop}
        />
      ) : (
        <UnitOffer
          other={formatReading(odd.value, odd.other).text}
          asTyped={formatReading(odd.value, odd.unit).text}
          onOther={() => give(odd.value, odd.other)}
          onAsTyped={() => give(odd.value, odd.unit)}
        >
          {texts.say('unit-odd')}
        </UnitOffer>
      )}
    </>
  );
}
