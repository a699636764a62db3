/**
 * What are the unknowns of a set of complex linear equations?
 *
 * LU factors with partial pivoting on flat arrays, real and imaginary parts apart. Networks of parts
 * in a row leave most entries zero, so every loop runs only over entries that are not. Leaves out
 * scaling and refinement: node equations are close to diagonally dominant.
 *
 * @source method: Matrix Computations, 4th ed., section 3.4 (Gaussian elimination with pivoting)
 */
export interface ComplexSystem {
  readonly size: number;
  /** Row-major; replaced by the factors when factored. */
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** Row that was moved to each place. */
  readonly order: Int16Array;
  readonly columns: Int16Array;
  readonly workRe: Float64Array;
  readonly workIm: Float64Array;
}

/** Empty equations in `size` unknowns, to be filled, factored and solved any number of times. */
export function complexSystem(size: number): ComplexSystem {
  return {
    size,
    re: new Float64Array(size * size),
    im: new Float64Array(size * size),
    order: new Int16Array(size),
    columns: new Int16Array(size),
    workRe: new Float64Array(size),
    workIm: new Float64Array(size),
  };
}

/**
 * Replaces the matrix by its factors.
 *
 * @throws when the matrix is singular: a network with a leak on every node never is
 */
export function factor(system: ComplexSystem): void {
  const { size, order } = system;
  for (let row = 0; row < size; row++) order[row] = row;
  for (let column = 0; column < size; column++) {
    const pivot = largestBelow(system, column);
    if (pivot !== column) swapRows(system, column, pivot);
    eliminate(system, column);
  }
}

function largestBelow(system: ComplexSystem, column: number): number {
  const { size, re, im } = system;
  let best = -1;
  let most = 0;
  for (let row = column; row < size; row++) {
    const at = row * size + column;
    const weight = re[at]! * re[at]! + im[at]! * im[at]!;
    if (weight > most) {
      most = weight;
      best = row;
    }
  }
  if (best < 0)
    throw new Error(`plant: column ${column} of ${size} has no pivot; every node needs a path to ground`);
  return best;
}

function swapRows(system: ComplexSystem, one: number, other: number): void {
  const { size, re, im, order } = system;
  for (let column = 0; column < size; column++) {
    const a = one * size + column;
    const b = other * size + column;
    const keepRe = re[a]!;
    const keepIm = im[a]!;
    re[a] = re[b]!;
    im[a] = im[b]!;
    re[b] = keepRe;
    im[b] = keepIm;
  }
  const keep = order[one]!;
  order[one] = order[other]!;
  order[other] = keep;
}

function eliminate(system: ComplexSystem, column: number): void {
  const { size, re, im, columns } = system;
  const top = column * size;
  let count = 0;
  for (let j = column + 1; j < size; j++) if (re[top + j] !== 0 || im[top + j] !== 0) columns[count++] = j;
  const pr = re[top + column]!;
  const pi = im[top + column]!;
  const scale = 1 / (pr * pr + pi * pi);
  for (let row = column + 1; row < size; row++) {
    const base = row * size;
    const xr = re[base + column]!;
    const xi = im[base + column]!;
    if (xr === 0 && xi === 0) continue;
    const fr = (xr * pr + xi * pi) * scale;
    const fi = (xi * pr - xr * pi) * scale;
    re[base + column] = fr;
    im[base + column] = fi;
    for (let n = 0; n < count; n++) {
      const j = columns[n]!;
      const ur = re[top + j]!;
      const ui = im[top + j]!;
      re[base + j]! -= fr * ur - fi * ui;
      im[base + j]! -= fr * ui + fi * ur;
    }
  }
}

/** Solves a factored system; the right-hand side is replaced by the unknowns. */
export function solve(system: ComplexSystem, re: Float64Array, im: Float64Array): void {
  const { size, order, workRe, workIm } = system;
  for (let row = 0; row < size; row++) {
    workRe[row] = re[order[row]!]!;
    workIm[row] = im[order[row]!]!;
  }
  forward(system);
  backward(system);
  re.set(workRe);
  im.set(workIm);
}

function forward(system: ComplexSystem): void {
  const { size, re, im, workRe, workIm } = system;
  for (let row = 1; row < size; row++) {
    const base = row * size;
    let sumRe = workRe[row]!;
    let sumIm = workIm[row]!;
    for (let column = 0; column < row; column++) {
      const fr = re[base + column]!;
      const fi = im[base + column]!;
      if (fr === 0 && fi === 0) continue;
      sumRe -= fr * workRe[column]! - fi * workIm[column]!;
      sumIm -= fr * workIm[column]! + fi * workRe[column]!;
    }
    workRe[row] = sumRe;
    workIm[row] = sumIm;
  }
}

function backward(system: ComplexSystem): void {
  const { size, re, im, workRe, workIm } = system;
  for (let row = size - 1; row >= 0; row--) {
    const base = row * size;
    let sumRe = workRe[row]!;
    let sumIm = workIm[row]!;
    for (let column = row + 1; column < size; column++) {
      const ur = re[base + column]!;
      const ui = im[base + column]!;
      if (ur === 0 && ui === 0) continue;
      sumRe -= ur * workRe[column]! - ui * workIm[column]!;
      sumIm -= ur * workIm[column]! + ui * workRe[column]!;
    }
    const pr = re[base + row]!;
    const pi = im[base + row]!;
    const scale = 1 / (pr * pr + pi * pi);
    workRe[row] = (sumRe * pr + sumIm * pi) * scale;
    workIm[row] = (sumIm * pr - sumRe * pi) * scale;
  }
}
