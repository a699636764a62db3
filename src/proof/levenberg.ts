/**
 * Which unknowns make a sum of squares least?
 *
 * Damped Gauss–Newton steps with a numeric slope. Leaves out bounds: unknowns are handed in as
 * logarithms, so that nothing can turn negative.
 *
 * @source method: Numerical Recipes, section 15.5 (Levenberg–Marquardt)
 */
export interface Fit {
  readonly at: readonly number[];
  /** Half the sum of squares. */
  readonly cost: number;
  /** One standard deviation of each unknown, from the slopes at the end. */
  readonly deviations: readonly number[];
  readonly rounds: number;
}

export type Residuals = (at: readonly number[]) => readonly number[];

const STEP = 1e-5;
const MOST_ROUNDS = 200;
const SMALL_GAIN = 1e-10;
const MOST_DAMPING = 1e12;

export function leastSquares(residuals: Residuals, start: readonly number[]): Fit {
  let at = [...start];
  let now = residuals(at);
  let cost = halfSquares(now);
  let damping = 1e-3;
  let rounds = 0;
  for (; rounds < MOST_ROUNDS && damping < MOST_DAMPING; rounds++) {
    const normal = normalEquations(residuals, at, now);
    const step = solve(damped(normal.matrix, damping), normal.right);
    const tried = at.map((value, n) => value + step[n]!);
    const next = residuals(tried);
    const reached = halfSquares(next);
    if (!(reached < cost)) {
      damping *= 4;
      continue;
    }
    const gain = cost - reached;
    [at, now, cost] = [tried, next, reached];
    damping = Math.max(1e-12, damping / 3);
    if (gain < SMALL_GAIN * (1 + cost)) break;
  }
  return { at, cost, rounds, deviations: deviationsOf(normalEquations(residuals, at, now).matrix) };
}

const halfSquares = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value * value, 0) / 2;

type Matrix = readonly (readonly number[])[];

function normalEquations(residuals: Residuals, at: readonly number[], now: readonly number[]) {
  const slopes = at.map((_, n) => {
    const moved = at.map((value, k) => (k === n ? value + STEP : value));
    return residuals(moved).map((value, k) => (value - now[k]!) / STEP);
  });
  const dot = (one: readonly number[], other: readonly number[]): number =>
    one.reduce((sum, value, k) => sum + value * other[k]!, 0);
  return {
    matrix: slopes.map((one) => slopes.map((other) => dot(one, other))),
    right: slopes.map((one) => -dot(one, now)),
  };
}

const damped = (matrix: Matrix, damping: number): Matrix =>
  matrix.map((row, n) => row.map((value, k) => (n === k ? value * (1 + damping) : value)));

/** Gauss elimination with pivoting. @throws when the matrix is singular */
export function solve(matrix: Matrix, right: readonly number[]): number[] {
  const rows = matrix.map((row, n) => [...row, right[n]!]);
  const size = rows.length;
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let row = column + 1; row < size; row++)
      if (Math.abs(rows[row]![column]!) > Math.abs(rows[best]![column]!)) best = row;
    [rows[column], rows[best]] = [rows[best]!, rows[column]!];
    const pivot = rows[column]!;
    if (pivot[column] === 0) throw new Error('proof: an unknown moves no residual; give it a prior');
    for (const row of rows) {
      if (row === pivot) continue;
      const factor = row[column]! / pivot[column]!;
      for (let k = column; k <= size; k++) row[k]! -= factor * pivot[k]!;
    }
  }
  return rows.map((row, n) => row[size]! / row[n]!);
}

function deviationsOf(matrix: Matrix): number[] {
  return matrix.map((_, n) => {
    const unit = matrix.map((__, k) => (k === n ? 1 : 0));
    return Math.sqrt(solve(matrix, unit)[n]!);
  });
}
