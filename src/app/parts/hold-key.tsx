import '../styles/base.css';
import '../styles/key.css';
import { type KeyboardEvent, type MouseEvent, type ReactNode, useId } from 'react';
import { useHold } from './use-hold.ts';

interface HoldKeyProps {
  readonly children: ReactNode;
  /** How it is pressed; always shown, and read out with the name. */
  readonly hint: string;
  /** Said after the first tap of a screen reader, which cannot hold; the hint where it is absent. */
  readonly again?: string;
  readonly disabled?: boolean;
  onHeld(): void;
}

const isHoldKey = (event: KeyboardEvent): boolean => event.key === 'Enter' || event.key === ' ';

/** The key of what must not happen by accident: lock-out, proof of dead, deleting a site. */
export function HoldKey({ children, hint, again = hint, disabled, onHeld }: HoldKeyProps) {
  const hold = useHold(onHeld);
  const hintId = useId();
  return (
    <button
      type="button"
      data-hold
      data-holding={hold.holding}
      className="key key-main key-hold"
      disabled={disabled}
      aria-describedby={hintId}
      onPointerDown={hold.begin}
      onPointerUp={hold.end}
      onPointerLeave={hold.end}
      onPointerCancel={hold.end}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if (!isHoldKey(event)) return;
        event.preventDefault();
        if (!event.repeat) hold.begin();
      }}
      onKeyUp={(event) => {
        if (!isHoldKey(event)) return;
        event.preventDefault();
        hold.end();
      }}
      onBlur={hold.end}
      onClick={(event: MouseEvent) => {
        if (event.detail === 0) hold.tap();
      }}
    >
      <span className="key-hold-bar" aria-hidden="true" />
      <span className="key-hold-words">{children}</span>
      <span className="key-hold-hint" id={hintId} aria-live="polite" aria-hidden={!hold.askedAgain}>
        {hold.askedAgain ? again : hint}
      </span>
    </button>
  );
}
