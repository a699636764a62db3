import type { ReactNode } from 'react';
export function Key(p: {
  children: ReactNode;
  onPress(): void;
  main?: boolean;
  chosen?: boolean;
  disabled?: boolean;
  small?: boolean;
  pressed?: boolean;
  sign?: string;
}) {
  return (
    <button
      type="button"
      className={`key ${p.main ? 'main' : ''} ${p.small ? 'small' : ''}`}
      disabled={p.disabled}
      aria-pressed={p.chosen ?? p.pressed}
      onClick={p.onPress}
    >
      {p.children}
    </button>
  );
}
