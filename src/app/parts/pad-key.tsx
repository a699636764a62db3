import type { ReactNode } from 'react';
import { OutcomeSign } from './outcome-sign.tsx';
import { type PadUnit, rowsOf } from './pad-keys.ts';

const UNIT_COLUMN = 4;
const ANSWER_COLUMN = 5;

interface UnitKeysProps {
  readonly units: readonly PadUnit[];
  readonly expected: string;
  readonly enterWord: string;
  onUnit(unit: string): void;
}

/** The units in their fixed order; the expected one is high and filled. */
export function UnitKeys({ units, expected, enterWord, onUnit }: UnitKeysProps) {
  const rows = rowsOf(units, expected);
  return units.map(({ unit, sign, word, letter }, index) => (
    <button
      key={unit}
      type="button"
      className={unit === expected ? 'key key-main' : 'key'}
      style={{ gridColumn: UNIT_COLUMN, gridRow: `span ${rows[index] ?? 1}` }}
      data-unit={unit}
      onClick={() => onUnit(unit)}
    >
      <PadLetter letter={letter} />
      <span className="pad-unit-sign">{sign}</span> <span className="pad-unit-word">{word}</span>{' '}
      {unit === expected && <span className="pad-unit-word">{enterWord}</span>}
    </button>
  ));
}

interface AnswerKeyProps {
  readonly row: number;
  readonly sign: string;
  readonly letter?: string;
  readonly children: ReactNode;
  onPress(): void;
}

/** An answer that is no number: as good as one. */
export function AnswerKey({ row, sign, letter, children, onPress }: AnswerKeyProps) {
  return (
    <button
      type="button"
      className="key pad-answer"
      style={{ gridColumn: ANSWER_COLUMN, gridRow: row }}
      data-answer={sign}
      onClick={onPress}
    >
      <PadLetter letter={letter} />
      <OutcomeSign outcome={sign} size={24} />
      {children}
    </button>
  );
}

function PadLetter({ letter }: { letter: string | undefined }) {
  if (letter === undefined) return null;
  return (
    <span className="pad-letter" aria-hidden="true">
      {letter}
    </span>
  );
}

export function BackspaceSign() {
  return (
    <svg
      aria-hidden="true"
      width="30"
      height="24"
      viewBox="0 0 30 24"
      fill="none"
      stroke="currentColor"
      strokeWidth="2.4"
    >
      <path d="M10 3H28V21H10L2 12Z" />
      <path d="M14.5 8L22.5 16M22.5 8L14.5 16" />
    </svg>
  );
}
