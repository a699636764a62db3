import { useEffect, useRef, useState } from 'react';

/** Long enough not to happen by a brush of a sleeve, short enough to be held in a glove. */
export const HOLD_MILLISECONDS = 800;
/** A screen reader taps and cannot hold: two taps within this time count as one held press. */
export const AGAIN_MILLISECONDS = 5000;

export interface Hold {
  readonly holding: boolean;
  /** The first of two taps was given: the hint asks for the second. */
  readonly askedAgain: boolean;
  begin(): void;
  end(): void;
  /** A click that no finger and no key of the keyboard made. */
  tap(): void;
}

/** A press that counts only when it is held to its end. Letting go early does nothing. */
export function useHold(onHeld: () => void): Hold {
  const [holding, setHolding] = useState(false);
  const [askedAgain, setAskedAgain] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  const wait = (milliseconds: number, then: () => void): void => {
    clearTimeout(timer.current);
    timer.current = setTimeout(then, milliseconds);
  };
  const end = (): void => {
    if (!holding) return;
    clearTimeout(timer.current);
    setHolding(false);
  };
  const begin = (): void => {
    if (holding) return;
    setHolding(true);
    setAskedAgain(false);
    wait(HOLD_MILLISECONDS, () => {
      setHolding(false);
      onHeld();
    });
  };
  const tap = (): void => {
    if (askedAgain) {
      clearTimeout(timer.current);
      setAskedAgain(false);
      onHeld();
      return;
    }
    setAskedAgain(true);
    wait(AGAIN_MILLISECONDS, () => setAskedAgain(false));
  };
  return { holding, askedAgain, begin, end, tap };
}
