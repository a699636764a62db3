import type { Catalog } from '../catalog/catalog.ts';
import type { Calibration } from '../schema/smaller.ts';
import { type Counts, countsOf, type Figure } from './figures.ts';

/**
 * What would settle the figures that matter most? Each record of content/calibration names figures by
 * folder, record and field; here they are found again, so that a list which points at nothing, or at
 * what has been measured since, is seen.
 */
export interface Settled {
  readonly calibration: Calibration;
  /** What its figures stand on today. */
  readonly counts: Counts;
  /** Pointers that find no figure. */
  readonly lost: readonly string[];
}

type Pointer = Calibration['figures'][number];

export function settlements({ calibration }: Catalog, figures: readonly Figure[]): Settled[] {
  return Object.values(calibration).map((record) => {
    const found = record.figures.map((pointer) => figures.filter((figure) => isNamed(figure, pointer)));
    return {
      calibration: record,
      counts: countsOf([...new Set(found.flat())]),
      lost: record.figures.filter((_, index) => found[index]?.length === 0).map(nameOf),
    };
  });
}

function isNamed({ folder, record, field }: Figure, { in: wanted, ids, field: part }: Pointer): boolean {
  return (
    folder === wanted &&
    (ids === undefined || ids.includes(record)) &&
    (part === undefined || field === part || field.startsWith(`${part}.`))
  );
}

const nameOf = ({ in: folder, ids, field }: Pointer): string =>
  [folder, ...(ids === undefined ? [] : [ids.join(', ')]), ...(field === undefined ? [] : [field])].join(
    ' › ',
  );

/** Records of content/calibration that need none: all is measured, or nothing is there. */
export function idle(settled: readonly Settled[]): Settled[] {
  return settled.filter(({ counts, lost }) => {
    const { seen: _, ...open } = counts;
    return lost.length > 0 || Object.values(open).every((count) => count === 0);
  });
}
