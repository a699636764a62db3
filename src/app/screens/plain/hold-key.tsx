import { type ReactNode, useRef } from 'react';
export function HoldKey(p: { children: ReactNode; hint: string; onHeld(): void }) {
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  return (
    <button
      type="button"
      data-hold
      className="key main"
      title={p.hint}
      onPointerDown={() => {
        timer.current = setTimeout(p.onHeld, 1200);
      }}
      onPointerUp={() => clearTimeout(timer.current)}
    >
      {p.children}
    </button>
  );
}
