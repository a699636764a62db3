import type { Lead } from '../parts/lead-chip.tsx';

/** One conductor from the box to the motor, drawn as one line: lengths and joints in turn. */
export interface ConductorPart {
  readonly id: string;
  readonly kind: 'length' | 'joint';
  /** "buried run", "well-head splice". */
  readonly name: string;
  /** What it adds: "0.2 Ω"; absent where nothing is known. */
  readonly amount?: string;
}

export interface ConductorView {
  readonly lead: Lead;
  readonly parts: readonly ConductorPart[];
  /** Which part is at fault; absent where none is. */
  readonly ringed?: string;
  readonly ends: { readonly from: string; readonly to: string };
}

/** Place of a part, in percent of the line. */
export interface ConductorPlace extends ConductorPart {
  readonly from: number;
  readonly to: number;
  readonly ringed: boolean;
}

/** Percent of the width that the box and the motor take at the ends. */
export const END = 6;

/** Lengths share the line evenly, since it is never to scale; joints sit between them. */
export function placesOf({ parts, ringed }: ConductorView): ConductorPlace[] {
  const lengths = parts.filter(({ kind }) => kind === 'length').length;
  const step = (100 - 2 * END) / Math.max(1, lengths);
  let reached = END;
  return parts.map((part) => {
    const from = reached;
    if (part.kind === 'length') reached += step;
    return { ...part, from, to: reached, ringed: part.id === ringed };
  });
}
