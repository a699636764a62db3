import '../styles/base.css';
import '../styles/key.css';
import type { ReactNode } from 'react';
import { OutcomeSign } from './outcome-sign.tsx';

interface KeyProps {
  readonly children: ReactNode;
  onPress(): void;
  /** The one key that carries the call on. */
  readonly main?: boolean;
  readonly small?: boolean;
  /** One of several answers, and whether it is the one. */
  readonly chosen?: boolean;
  /** On or off, for a key that opens something. */
  readonly pressed?: boolean;
  readonly disabled?: boolean;
  /** Name of an outcome sign that stands beside the words. */
  readonly sign?: string;
}

/** What can be pressed: a thin outline and a heavy base. Chosen, it has lost the base and is folded at a corner. */
export function Key({ children, onPress, main, small, chosen, pressed, disabled, sign }: KeyProps) {
  const names = ['key', main && 'key-main', small && 'key-small', sign !== undefined && 'key-signed'];
  return (
    <button
      type="button"
      className={names.filter(Boolean).join(' ')}
      disabled={disabled}
      aria-pressed={chosen ?? pressed}
      onClick={onPress}
    >
      {sign !== undefined && <OutcomeSign outcome={sign} size={32} />}
      {children}
    </button>
  );
}
