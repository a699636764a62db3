import '../styles/base.css';
import '../styles/key.css';
import '../styles/pad.css';
import { useState } from 'react';
import { AnswerKey, BackspaceSign, UnitKeys } from './pad-key.tsx';
import { type PadUnit, type PadWords, strokeOf, UNSAFE_LETTER } from './pad-keys.ts';
import { parseTyped, type Refusal, type Typed, typeKey, typePasted } from './typed.ts';
import { useKeyboard } from './use-keyboard.ts';

interface PadProps {
  /** The check whose box is active. */
  readonly check?: string;
  readonly typed: string;
  readonly units: readonly PadUnit[];
  /** The unit that the window is in. */
  readonly expected: string;
  readonly words: PadWords;
  onType(text: string): void;
  /** A number and the unit key that entered it. */
  onValue(value: number, unit: string): void;
  onOpen(): void;
  onUnstable(): void;
  onNotTaken(): void;
  onUnsafe(): void;
}

const DIGITS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0'] as const;

/**
 * Digits, then the unit: the unit key is the enter key. What is no number has keys of equal size.
 *
 * Judges nothing but whether a number stands there. A refused key says why, above the pad.
 */
export function Pad(props: PadProps) {
  const { check, units, expected, words } = props;
  const { refused, take, enter } = useTyping(props);
  useKeyboard({
    onKey: (key) => {
      const stroke = strokeOf(key, units, expected);
      if (stroke.kind === 'unit') enter(stroke.unit);
      if (stroke.kind === 'unsafe') props.onUnsafe();
      if (stroke.kind === 'type') take((text) => typeKey(text, stroke.key));
    },
    onPaste: (text) => take(() => typePasted(text)),
  });
  return (
    <>
      <p className="pad-message" role="status">
        {refused !== undefined && words.refused(refused)}
      </p>
      <fieldset className="pad" aria-label={words.name} data-check={check}>
        <DigitKeys backspace={words.backspace} onKey={(key) => take((text) => typeKey(text, key))} />
        <UnitKeys units={units} expected={expected} enterWord={words.enter} onUnit={enter} />
        {words.open !== undefined && (
          <AnswerKey row={1} sign="open" onPress={props.onOpen}>
            {words.open}
          </AnswerKey>
        )}
        <AnswerKey row={2} sign="unstable" onPress={props.onUnstable}>
          {words.unstable}
        </AnswerKey>
        <AnswerKey row={3} sign="not-taken" onPress={props.onNotTaken}>
          {words.notTaken}
        </AnswerKey>
        <AnswerKey row={4} sign="unsafe" letter={UNSAFE_LETTER} onPress={props.onUnsafe}>
          {words.unsafe}
        </AnswerKey>
      </fieldset>
    </>
  );
}

interface Typing {
  readonly refused: Refusal | undefined;
  take(change: (text: string) => Typed): void;
  enter(unit: string): void;
}

/** What is typed stands with the caller; only the last refusal is kept here. */
function useTyping({ typed, onType, onValue }: PadProps): Typing {
  const [refused, setRefused] = useState<Refusal>();
  return {
    refused,
    take: (change) => {
      const next = change(typed);
      setRefused(next.refused);
      if (next.refused === undefined) onType(next.text);
    },
    enter: (unit) => {
      const parsed = parseTyped(typed);
      setRefused('refused' in parsed ? parsed.refused : undefined);
      if ('value' in parsed) onValue(parsed.value, unit);
    },
  };
}

function DigitKeys({ backspace, onKey }: { backspace: string; onKey(key: string): void }) {
  return (
    <>
      {DIGITS.map((digit) => (
        <button
          key={digit}
          type="button"
          className="key pad-digit"
          data-digit={digit}
          onClick={() => onKey(digit)}
        >
          {digit}
        </button>
      ))}
      <button
        type="button"
        className="key pad-backspace"
        aria-label={backspace}
        onClick={() => onKey('Backspace')}
      >
        <BackspaceSign />
      </button>
    </>
  );
}
