import type { Sheet } from '../../schema/netlist.ts';
import type { Lead } from '../parts/lead-chip.tsx';
import type { Point, Rect } from './geometry.ts';
import type { Size } from './layout.ts';
import type { SymbolShape } from './symbols.tsx';

/**
 * The picture as plain shapes in pixels, before anything is drawn: what the components draw, what
 * the labels keep clear of, and what the check for overlaps looks at.
 */
export interface Wire {
  readonly id: string;
  /** Nets join where names are equal; a plain wire joins its two. */
  readonly nodes: readonly string[];
  readonly path: readonly Point[];
  readonly lead: Lead | undefined;
  readonly live: boolean;
  /** Carries motor or line current outside a box, or runs inside one. */
  readonly weight: 'line' | 'inner';
  /** Runs between two sheets and passes over what it crosses. */
  readonly over: boolean;
}

export interface SymbolAt {
  readonly id: string;
  readonly sheet: Sheet;
  readonly at: Point;
  /** Degrees from lying across. */
  readonly turn: 0 | 90;
  readonly shape: SymbolShape;
  readonly rect: Rect;
  /** A capacitor that may still hold a charge. */
  readonly charged: boolean;
}

export interface Screw {
  readonly id: string;
  readonly at: Point;
  /** A screw with its slot, the bare end of a lead, or a mere point. */
  readonly kind: 'screw' | 'end' | 'point';
  readonly rect: Rect;
}

export interface Frame {
  readonly sheet: Sheet;
  readonly rect: Rect;
  readonly large: boolean;
  readonly proved: boolean;
}

/** The well: two walls under a cap, down to the motor. */
export interface Casing {
  readonly left: number;
  readonly right: number;
  readonly cap: number;
  readonly bottom: number;
}

export type LabelKind = 'name' | 'terminal' | 'note' | 'live' | 'tag';

export interface Label {
  readonly id: string;
  readonly kind: LabelKind;
  readonly lines: readonly string[];
  /** Baseline of the first line, at its start. */
  readonly at: Point;
  readonly rect: Rect;
}

export interface Drawing {
  readonly size: Size;
  readonly frames: readonly Frame[];
  readonly casing: Casing | undefined;
  readonly wires: readonly Wire[];
  readonly symbols: readonly SymbolAt[];
  readonly screws: readonly Screw[];
  /** Where wires of one net join. */
  readonly dots: readonly Point[];
  /** Where a level wire hops over one of another net. */
  readonly hops: readonly Point[];
  /** Lower ends of ground lines, and where they begin. */
  readonly grounds: readonly { readonly from: Point; readonly to: Point }[];
  /** Centres of padlocks. */
  readonly padlocks: readonly Point[];
  /** Tie between the arms of a two-pole breaker. */
  readonly ties: readonly { readonly from: Point; readonly to: Point }[];
  readonly labels: readonly Label[];
}

/** Type size of all words in the picture; never less. */
export const TEXT = 14;
export const LINE_HEIGHT = 17;
/** Radius of a terminal. */
export const SCREW = 6;
/** Width of a motor lead with its ink edge. */
export const LEAD_WIDTH = 6.4;
