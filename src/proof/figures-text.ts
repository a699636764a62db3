import { type Counts, countsByFolder, type Figure, MARKS } from './figures.ts';
import type { Settled } from './figures-settle.ts';
import type { SiteWindows } from './figures-windows.ts';

/** The figures on a page: counts by folder, windows that rest on memory, and what would settle them. */
export function figuresText(found: {
  readonly figures: readonly Figure[];
  readonly windows: readonly SiteWindows[];
  readonly settled: readonly Settled[];
}): string {
  return [
    ...countLines(found.figures),
    '',
    ...windowLines(found.windows),
    '',
    'What would settle the figures that matter most',
    ...found.settled.flatMap(settleLines),
  ].join('\n');
}

const NAME_WIDTH = 16;
const COUNT_WIDTH = 9;

const row = (name: string, cells: readonly (string | number)[]): string =>
  name.padEnd(NAME_WIDTH) + cells.map((cell) => String(cell).padStart(COUNT_WIDTH)).join('');

const cells = (counts: Counts): number[] => MARKS.map((mark) => counts[mark]);

function countLines(figures: readonly Figure[]): string[] {
  const folders = countsByFolder(figures);
  const block = (kind: 'figures' | 'statements'): string[] => {
    const own = folders.filter((folder) => cells(folder[kind]).some((count) => count > 0));
    const sums = MARKS.map((mark) => own.reduce((sum, folder) => sum + folder[kind][mark], 0));
    return [
      row(kind, MARKS),
      ...own.map((folder) => row(folder.folder, cells(folder[kind]))),
      row('all', sums),
    ];
  };
  return [...block('figures'), '', ...block('statements')];
}

function windowLines(sites: readonly SiteWindows[]): string[] {
  const all = sites.flatMap(({ remembered }) => remembered);
  const onMemory = all.filter(({ restsOnMemory }) => restsOnMemory);
  const others = all.filter(({ restsOnMemory }) => !restsOnMemory);
  const parts = [...new Set(others.flatMap((window) => window.parts))];
  return [
    'Windows that rest on memory and condemn nothing alone',
    ...sites.map(({ site, ranges, remembered }) =>
      row(`  ${site}`, [`${remembered.filter(({ restsOnMemory }) => restsOnMemory).length} of ${ranges}`]),
    ),
    `  ${listed(onMemory.map(({ check }) => check))}`,
    `  remembered from ${listed(
      onMemory.flatMap(({ where }) => where),
      '; ',
    )}`,
    '',
    'Windows that hold a remembered part and condemn all the same, by part',
    ...parts.map((part) => {
      const own = others.filter((window) => window.parts.includes(part));
      return `  ${part}: ${listed(own.map(({ check }) => check))}`;
    }),
  ];
}

const listed = (names: readonly string[], between = ', '): string => [...new Set(names)].sort().join(between);

function settleLines({ calibration, counts, lost }: Settled): string[] {
  const { id, effect, settle } = calibration;
  const stands = MARKS.filter((mark) => counts[mark] > 0).map((mark) => `${counts[mark]} ${mark}`);
  return [
    '',
    `${id} (${stands.join(', ') || 'no figure'})`,
    `  hangs on it: ${effect}`,
    `  settled by: ${settle}`,
    ...lost.map((pointer) => `  points at nothing: ${pointer}`),
  ];
}
