import type { Reading } from '../../schema/case.ts';
import { readingOf, unitsFor } from '../hooks/pad-units.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import type { ReadingSet } from '../hooks/use-reading-set.ts';
import { readingWords, windowWords } from '../hooks/wording.ts';
import { useTexts } from '../words/use-texts.tsx';

interface NumberPadProps {
  readonly open: OpenCase;
  readonly set: ReadingSet;
  onReading(reading: Reading): void;
  onNotTaken(): void;
}

/** Boxes and pad: digits, then the unit, which is the enter key. */
export function NumberPad({ open, set, onReading, onNotTaken }: NumberPadProps) {
  const texts = useTexts();
  const { catalog } = useServices();
  const { active = '' } = set;
  const reads = catalog.checks[active]?.reads;
  if (reads === undefined || !('unit' in reads)) return null;
  return (
    <div>
      <div className="boxes">
        {set.boxes.map((box) => (
          <button
            key={box.check}
            type="button"
            className="key"
            aria-pressed={box.active}
            onClick={() => set.choose(box.check)}
          >
            {texts.check(box.check).name}{' '}
            {box.active
              ? set.typed
              : box.reading !== undefined
                ? readingWords(texts, box.check, box.reading)
                : windowOf(texts, open, box.check)}
          </button>
        ))}
      </div>
      <div className="pad" data-check={active}>
        {[...'7894561230.'].map((digit) => (
          <button key={digit} type="button" data-digit={digit} onClick={() => set.type(set.typed + digit)}>
            {digit}
          </button>
        ))}
        {unitsFor(reads).map((unit) => (
          <button
            key={unit}
            type="button"
            data-unit={unit}
            onClick={() => {
              const reading = readingOf(set.typed, unit);
              if (reading !== undefined) onReading(reading);
            }}
          >
            {texts.name('units', unit)}
          </button>
        ))}
        <button type="button" onClick={() => onReading({ open: true })}>
          {texts.name('outcomes', 'open')}
        </button>
        <button type="button" onClick={() => onReading({ unstable: true })}>
          {texts.name('outcomes', 'unstable')}
        </button>
        <button type="button" data-not-taken onClick={onNotTaken}>
          {texts.say('cannot-take')}
        </button>
      </div>
    </div>
  );
}

function windowOf(texts: ReturnType<typeof useTexts>, open: OpenCase, check: string): string {
  const window = open.view?.windows[check];
  return window === undefined ? '' : windowWords(texts, window);
}
