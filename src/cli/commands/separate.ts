import { type Pair, type PairKind, type Separation, separate as separated } from '../../proof/separate.ts';
import { separationProblems } from '../../proof/separate-problems.ts';
import { type Act, SITES } from '../../proof/separate-sites.ts';
import { didYouMean } from '../../records/nearest.ts';
import { type Answer, type Around, type Command, type Given, usageError } from '../command.ts';
import { minutes, share } from '../print.ts';

/** What tells which faults apart: what rests on one check alone, what is kept together, what is left. */
export const separate: Command = {
  usage: 'separate [--site NAME] [--all]',
  about: `faults that one check alone tells apart, groups, and what nothing tells apart; sites: ${Object.keys(SITES).join(', ')}`,
  run: async (given, around) => run(given, around),
};

export const SEPARATE_FLAGS = ['site'];
export const SEPARATE_SWITCHES = ['all'];

function run({ operands, flags }: Given, { catalog, tell }: Around): Answer {
  if (operands.length > 0) return usageError('separate takes no case file');
  const wanted = flags.get('site');
  const known = wanted === undefined ? undefined : SITES[wanted];
  if (wanted !== undefined && known === undefined)
    return usageError(`there is no site "${wanted}"; ${didYouMean(wanted, Object.keys(SITES))}`.trim());
  const sites = wanted === undefined || known === undefined ? SITES : { [wanted]: known };
  const found = separated(catalog, { sites, progress: tell });
  return { kind: 'text', text: [...summary(found), ...chapters(found, flags.has('all'))].join('\n') };
}

const TITLES: Readonly<Record<PairKind, string>> = {
  alike: 'Told apart by nothing, with different repairs',
  single: 'Told apart by one act alone; the dear ones first',
  weak: 'Told apart by several, by none of them well',
  grouped: 'Kept together on purpose, and told apart all the same',
  shared: 'Told apart by nothing, with one repair',
};
/** Long lists that say little by themselves. */
const ONLY_WITH_ALL: readonly PairKind[] = ['weak', 'shared'];

function summary(found: Separation): string[] {
  const counts = Object.keys(TITLES).map(
    (kind) => `${kind} ${found.pairs.filter((pair) => pair.kind === kind).length}`,
  );
  return [`installations: ${found.sites.join(', ')}`, `pairs: ${counts.join(', ')}`];
}

function chapters(found: Separation, all: boolean): string[] {
  const kinds = (Object.keys(TITLES) as PairKind[]).filter((kind) => all || !ONLY_WITH_ALL.includes(kind));
  return [
    ...chapter(
      'To be mended',
      separationProblems(found).map(({ at, message, hint }) => `${at}: ${message} (${hint})`),
    ),
    ...chapter('On none of these installations', found.nowhere),
    ...kinds.flatMap((kind) => chapter(TITLES[kind], pairLines(found, kind))),
    ...chapter(
      'Kept together on purpose',
      found.groups.map(({ id, faults, actions }) => `${id}: ${faults.join(', ')} → ${actions.join(' or ')}`),
    ),
  ];
}

const chapter = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', `## ${title} (${lines.length})`, ...lines.map((line) => `  ${line}`), ''];

function pairLines(found: Separation, kind: PairKind): string[] {
  const own = found.pairs.filter((pair) => pair.kind === kind);
  const dearest = [...own].sort((one, other) => cost(other.by) - cost(one.by));
  return (kind === 'single' ? dearest : own).map((pair) => pairLine(pair, found.sites.length));
}

/** The opened well weighs more than any minutes. */
const cost = (act: Act | undefined): number =>
  act === undefined ? 0 : act.minutes + (act.opensWell ? WELL_WEIGHT : 0);
const WELL_WEIGHT = 1000;

function pairLine({ faults, sites, told, by }: Pair, of: number): string {
  const where = sites.length === of ? 'everywhere' : sites.join(', ');
  const act = by === undefined || told === 0 ? 'by nothing' : `by ${actText(by)}`;
  return `${faults.join(' ~ ')}: ${act}, ${share(told)}, ${where}`;
}

function actText({ id, minutes: needed, opensWell, energised }: Act): string {
  const notes = [
    `${minutes(needed)} min`,
    ...(opensWell ? ['well opened'] : []),
    ...(energised ? ['live'] : []),
  ];
  return `${id} (${notes.join(', ')})`;
}
