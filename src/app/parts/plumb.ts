/**
 * Where do window, reading and a suspect's bar lie in a column of the plumb line?
 *
 * A column is drawn to its window, not to its unit, so that all windows of a set stand in line:
 * the window always fills the same stretch, and what lies far outside is laid at the edge.
 */
export interface Span {
  readonly low?: number;
  readonly high?: number;
}

/** Percent of the column's width. */
const WINDOW_FROM = 26;
const WINDOW_TO = 54;
const EDGE = 4;

export interface Place {
  readonly at: number;
  /** Lies beyond what the column can show. */
  readonly beyond: boolean;
}

/**
 * Place of an amount in a column.
 *
 * @example
 * placeIn({ low: 2, high: 3 }, 2).at // => 26
 * @example
 * placeIn({ low: 2, high: 3 }, 99).beyond // => true
 */
export function placeIn(window: Span, amount: number): Place {
  const raw = rawPlace(window, amount);
  const at = Math.min(100 - EDGE, Math.max(EDGE, raw));
  return { at, beyond: at !== raw };
}

/** A window with one end is drawn from that end to its edge; the other end counts as zero or twice. */
function rawPlace({ low, high }: Span, amount: number): number {
  if (low !== undefined && high !== undefined && high > low) {
    return WINDOW_FROM + ((amount - low) / (high - low)) * (WINDOW_TO - WINDOW_FROM);
  }
  if (high !== undefined && high > 0) return EDGE + (amount / high) * (WINDOW_TO - EDGE);
  if (low !== undefined && low > 0) return amount <= 0 ? EDGE : WINDOW_FROM + 22 * Math.log10(amount / low);
  return 50;
}

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The stretch of a window or a bar in a column; an open end runs to the edge. */
export function stretchIn(window: Span, span: Span): Stretch {
  const from = span.low === undefined ? 0 : placeIn(window, span.low).at;
  const to = span.high === undefined ? 100 : placeIn(window, span.high).at;
  return { from: Math.min(from, to), to: Math.max(from, to) };
}

/** The least width a bar is drawn with: a sure prediction is still to be seen. */
const LEAST_BAR = 3;

/** A bar never thinner than can be seen, kept inside the column. */
export function barIn(window: Span, span: Span): Stretch {
  const { from, to } = stretchIn(window, span);
  if (to - from >= LEAST_BAR) return { from, to };
  const middle = (from + to) / 2;
  return { from: middle - LEAST_BAR / 2, to: middle + LEAST_BAR / 2 };
}

/** True where the reading lies inside the bar. */
export function stands(span: Span, amount: number): boolean {
  return (
    amount >= (span.low ?? Number.NEGATIVE_INFINITY) && amount <= (span.high ?? Number.POSITIVE_INFINITY)
  );
}
