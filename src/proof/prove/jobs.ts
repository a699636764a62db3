import type { Row } from './matrix.ts';
import { randomFrom, seedOf } from './random.ts';

/**
 * Which calls are played, in blocks that share one known installation: a worker then works out the
 * predictions of that installation once.
 */
export type PlayName = 'clean' | 'noisy' | 'mismatch';
/** By how often things go wrong, or every fault that causes a complaint alike. */
export type Drawing = 'prior' | 'uniform';
/** Who chooses the order of the checks: the engine, or one of the yardsticks. */
export type Order = 'engine' | 'catalogue' | 'sequence' | 'random';
/** Facts of the installation that the engine is not told. */
export type Hidden = 'family' | 'box' | 'motor' | 'buried' | 'drop';

export interface Job {
  readonly play: PlayName;
  readonly drawing: Drawing;
  readonly order: Order;
  readonly row: Row;
  readonly hidden: readonly Hidden[];
  /** Hidden facts are told when they are asked for. */
  readonly tells: boolean;
  readonly first: number;
  readonly count: number;
}

/** How many calls of each kind. */
export type Counts = Readonly<Record<PlayName, Readonly<Record<Drawing, number>>>> & {
  /** Of each yardstick: so many of the clean calls by prior, played again. */
  readonly yardstick: number;
  /** Rows that are played, the most usual of each box family; without it all of them. */
  readonly rowsOfFamily?: number;
  /** Pairs of unknown facts that each row plays. */
  readonly pairs: number;
};

interface Knowing {
  readonly hidden: readonly Hidden[];
  readonly tells: boolean;
}

/** All told, or what a technician finds out on the way: the family of the box and the row when asked, no more. */
const KNOWING: readonly Knowing[] = [
  { hidden: [], tells: true },
  { hidden: ['family', 'box', 'motor', 'buried', 'drop'], tells: true },
];

const HIDEABLE: readonly Hidden[] = ['family', 'box', 'motor', 'buried', 'drop'];

/** Two facts that nobody can tell; the family takes the box with it. Each row plays some of the pairs. */
const PAIRS: readonly Knowing[] = HIDEABLE.flatMap((one, index) =>
  HIDEABLE.slice(index + 1)
    .filter((other) => !(one === 'family' && other === 'box'))
    .map((other) => ({
      hidden: one === 'family' ? (['family', 'box', other] as const) : [one, other],
      tells: false,
    })),
);

export function jobsFor(all: readonly Row[], counts: Counts, yardsticks: readonly Order[]): Job[] {
  const rows = mostUsual(all, counts.rowsOfFamily);
  const plays: readonly PlayName[] = ['clean', 'noisy', 'mismatch'];
  const drawings: readonly Drawing[] = ['prior', 'uniform'];
  const engine = plays.flatMap((play) => {
    const cells = cellsOf(rows, play, counts.pairs);
    return drawings.flatMap((drawing) =>
      blocks(cells, { play, drawing, order: 'engine' }, counts[play][drawing]),
    );
  });
  const measured = engine.filter(({ play, drawing }) => play === 'clean' && drawing === 'prior');
  return [...engine, ...yardsticks.flatMap((order) => someOf(measured, order, counts.yardstick))];
}

function mostUsual(rows: readonly Row[], most: number | undefined): readonly Row[] {
  if (most === undefined) return rows;
  const families = [...new Set(rows.map((row) => row.installation.family))];
  return families.flatMap((family) =>
    rows
      .filter((row) => row.installation.family === family)
      .sort((one, other) => other.weight - one.weight)
      .slice(0, most),
  );
}

type Cell = Pick<Job, 'row' | 'hidden' | 'tells'>;

/** Rows with what the engine knows of them; the pairs go round, so that all of them are played. */
function cellsOf(rows: readonly Row[], play: PlayName, pairs: number): Cell[] {
  return rows.flatMap((row, at) => {
    const turned = PAIRS.map((_, index) => PAIRS[(pairs * at + index) % PAIRS.length]!);
    const knowings = play === 'noisy' ? turned.slice(0, pairs) : KNOWING;
    return knowings.map((knowing) => ({ row, ...knowing }));
  });
}

/** Some of the engine's own calls, played again in another order of the checks. */
function someOf(jobs: readonly Job[], order: Order, count: number): Job[] {
  const counts = jobs.map((job) => job.count);
  const all = counts.reduce((sum, one) => sum + one, 0);
  return shareOut(counts, Math.min(all, count)).flatMap((share, index) =>
    share === 0 ? [] : [{ ...jobs[index]!, order, count: share }],
  );
}

/** The calls of one kind, shared out over the cells in proportion to the weights of their rows. */
function blocks(cells: readonly Cell[], kind: Pick<Job, 'play' | 'drawing' | 'order'>, count: number): Job[] {
  const weights = cells.map(({ row }) => (kind.drawing === 'prior' ? row.weight : 1));
  return shareOut(weights, count)
    .map((share, index) => ({ ...kind, ...cells[index]!, first: 0, count: share }))
    .filter((job) => job.count > 0);
}

/**
 * Whole numbers in proportion to weights that sum to `count`: what is left over after rounding down is
 * dealt out by chance, in proportion to the parts rounded away.
 */
export function shareOut(weights: readonly number[], count: number): number[] {
  const sum = weights.reduce((total, one) => total + one, 0);
  const exact = weights.map((weight) => (weight / sum) * count);
  const shares = exact.map(Math.floor);
  const random = randomFrom(seedOf('share-out', count, weights.length));
  const left = exact.map((one, index) => one - shares[index]!);
  for (let dealt = shares.reduce((total, one) => total + one, 0); dealt < count; dealt++) {
    const index = random.weighted(left);
    shares[index]!++;
    left[index] = 0;
  }
  return shares;
}
