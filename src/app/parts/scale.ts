import type { ExpectedWindow } from '../../diagnosis/types.ts';

/**
 * Where do the window and the parts it is made of lie on its scale?
 *
 * All places are percent of the width, so that the drawing needs no measuring. The scale begins at
 * zero where the window is wide enough to be seen so; else it is cut off below and says it is.
 */
export interface ScaleView {
  /** Hatched part; an end without bar is unbounded. */
  readonly from: number;
  readonly to: number;
  readonly hasLow: boolean;
  readonly hasHigh: boolean;
  /** True when the scale does not begin at zero. */
  readonly cut: boolean;
  /** The window leaves no room for words on its left. */
  readonly beginsLeft: boolean;
  /** Amount at the left and at the right end, SI. */
  readonly start: number;
  readonly end: number;
}

/** Scales of windows with one end: from or up to a little past the middle. */
const OPEN_ABOVE = {
  from: 42,
  to: 100,
  hasLow: true,
  hasHigh: false,
  cut: false,
  beginsLeft: false,
  start: 0,
} as const;
const OPEN_BELOW = {
  from: 0,
  to: 58,
  hasLow: false,
  hasHigh: true,
  cut: false,
  beginsLeft: true,
  start: 0,
} as const;
/** A window that begins left of this percentage has its title above. */
const TITLE_ROOM = 38;

/** A window narrower than this share of its upper end would be a hair on a scale from zero. */
const NARROWEST_SHARE = 0.08;
/** Room right of the window, as a share of the upper end, so that its figure finds place. */
const ROOM = 0.22;

/** @returns nothing for a window that is no range */
export function scaleOf(window: ExpectedWindow): ScaleView | undefined {
  if (window.kind !== 'range') return undefined;
  const low = window.low !== undefined && window.low > 0 ? window.low : undefined;
  const { high } = window;
  if (high === undefined) {
    if (low === undefined) return undefined;
    return { ...OPEN_ABOVE, end: low / (OPEN_ABOVE.from / 100) };
  }
  if (low === undefined) return { ...OPEN_BELOW, end: high / (OPEN_BELOW.to / 100) };
  return boundedScale(low, high);
}

function boundedScale(low: number, high: number): ScaleView {
  const width = high - low;
  const cut = width < high * NARROWEST_SHARE;
  const start = cut ? low - 4 * width : 0;
  const end = cut ? high + 2.5 * width : high * (1 + ROOM);
  const at = (amount: number): number => (100 * (amount - start)) / (end - start || 1);
  const beginsLeft = at(low) < TITLE_ROOM;
  return { from: at(low), to: at(high), hasLow: true, hasHigh: true, cut, beginsLeft, start, end };
}

/** A tick of the scale; every fifth is long. */
export interface Tick {
  readonly at: number;
  readonly long: boolean;
}

const TICK_STEPS = [1, 2, 5, 10] as const;
const TICKS_WANTED = 22;

/** Ticks at round amounts: steps of 1, 2 or 5 times a power of ten. */
export function ticksOf({ start, end }: ScaleView): readonly Tick[] {
  const span = end - start;
  if (!(span > 0)) return [];
  const rough = span / TICKS_WANTED;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = (TICK_STEPS.find((one) => one * power >= rough) ?? 10) * power;
  const first = Math.ceil(start / step);
  const count = Math.floor(end / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) => ({
    at: (100 * ((first + index) * step - start)) / span,
    long: (first + index) % 5 === 0,
  }));
}

/** A link of the dimension chain: a part that adds to the window, or spreads it. */
export interface ChainLink {
  readonly name: ExpectedWindow['parts'][number]['name'];
  /** Middle of what it adds, SI. */
  readonly adds: number;
  /** Half of its spread, SI. */
  readonly spread: number;
  readonly fromMemory: boolean;
  /** Percent of the width; absent for a part that only spreads, or where the scale is cut. */
  readonly span?: { readonly from: number; readonly to: number };
}

/** A part that adds less than this share of the whole is told by its spread. */
const LEAST_LINK = 0.03;

/** The parts end to end from zero, as a drawing is dimensioned. */
export function chainOf(window: ExpectedWindow, scale: ScaleView | undefined): readonly ChainLink[] {
  const whole = window.parts.reduce((sum, part) => sum + Math.abs(part.low + part.high) / 2, 0);
  let reached = 0;
  return window.parts.map((part) => {
    const adds = (part.low + part.high) / 2;
    const link = {
      name: part.name,
      adds,
      spread: Math.abs(part.high - part.low) / 2,
      fromMemory: part.from.some(({ mark }) => mark === 'memory'),
    };
    if (scale === undefined || scale.cut || adds <= whole * LEAST_LINK) return link;
    const from = reached;
    reached += adds;
    const at = (amount: number): number => Math.min(100, (100 * amount) / scale.end);
    return { ...link, span: { from: at(from), to: at(reached) } };
  });
}
