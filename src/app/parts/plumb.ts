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
/** Window widths off the window at which half of the room beside it is used up. */
const HALF = 1.5;
/** Window widths from which a place says no more than "far off". */
const FAR = 20;

export interface Place {
  readonly at: number;
  /** So far off that the place says only which way. */
  readonly beyond: boolean;
}

/**
 * Place of an amount in a column. Inside the window it is true to scale; outside, what is further
 * off is drawn closer together, so that nothing falls off the sheet and order is kept.
 *
 * @example
 * placeIn({ low: 2, high: 3 }, 2).at // => 26
 * @example
 * placeIn({ low: 2, high: 3 }, 99).beyond // => true
 */
export function placeIn({ low, high }: Span, amount: number): Place {
  if (low !== undefined && high !== undefined && high > low) {
    const share = (amount - low) / (high - low);
    if (share < 0) return aside(-share, { edge: WINDOW_FROM, room: EDGE - WINDOW_FROM });
    if (share > 1) return aside(share - 1, { edge: WINDOW_TO, room: 100 - EDGE - WINDOW_TO });
    return { at: WINDOW_FROM + share * (WINDOW_TO - WINDOW_FROM), beyond: false };
  }
  if (high !== undefined && high > 0) return upTo(high, amount);
  if (low !== undefined && low > 0) return over(low, amount);
  return { at: 50, beyond: false };
}

/** A window without a lower end begins at nothing. */
function upTo(high: number, amount: number): Place {
  const share = amount / high;
  if (share > 1) return aside(share - 1, { edge: WINDOW_TO, room: 100 - EDGE - WINDOW_TO });
  return { at: EDGE + Math.max(0, share) * (WINDOW_TO - EDGE), beyond: false };
}

/** A window without an upper end is one of insulation: every tenfold below it counts. */
function over(low: number, amount: number): Place {
  if (amount <= 0) return { at: EDGE, beyond: true };
  const tenfolds = Math.log10(amount / low);
  if (tenfolds < 0) return aside(-tenfolds, { edge: WINDOW_TO, room: EDGE - WINDOW_TO });
  return { ...aside(tenfolds, { edge: WINDOW_TO, room: 100 - EDGE - WINDOW_TO }), beyond: false };
}

function aside(off: number, { edge, room }: { edge: number; room: number }): Place {
  return { at: edge + (room * off) / (off + HALF), beyond: off > FAR };
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
