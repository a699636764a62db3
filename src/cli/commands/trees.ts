import { PROCEDURES, type Procedure } from '../../../machines/procedures/all.ts';
import type { Ending } from '../../../machines/procedures/ask.ts';
import { askedBy, coverage } from '../../../machines/procedures/coverage.ts';
import { type DrawnEdge, type DrawnState, drawTree } from '../../../machines/procedures/drawing.ts';
import { stepsOf } from '../../../machines/procedures/steps.ts';
import type { Words } from '../../catalog/catalog.ts';
import { didYouMean } from '../../records/nearest.ts';
import { type Answer, type Around, type Command, type Given, usageError } from '../command.ts';

/** What the troubleshooting trees claim and ask between them, or one of them as an outline to object to. */
export const trees: Command = {
  usage: 'trees [TREE]',
  about: 'which tree claims which fault and asks which check; one tree as an outline, to object to',
  run: async (given, around) => run(given, around),
};

function run({ operands }: Given, { catalog }: Around): Answer {
  const [id, ...more] = operands;
  if (more.length > 0) return usageError('name one tree, or none for the tables');
  const words = catalog.words.en;
  if (id === undefined) {
    const faults = Object.keys(catalog.faults).sort();
    const checks = Object.keys(catalog.checks).sort();
    return { kind: 'text', text: page(faultTable(faults), checkTable(checks), treeTable(words)) };
  }
  const procedure = PROCEDURES.find((one) => one.id === id);
  if (procedure !== undefined) return { kind: 'text', text: page(outline(procedure, words)) };
  const ids = PROCEDURES.map((one) => one.id);
  return usageError(`there is no tree "${id}"; ${didYouMean(id, ids)}`.trim());
}

const page = (...blocks: readonly (readonly string[])[]): string =>
  `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;

function faultTable(faults: readonly string[]): string[] {
  const rows = coverage(PROCEDURES, faults);
  const claimed = rows.filter(({ claims }) => claims.length > 0);
  const left = rows.filter(({ claims }) => claims.length === 0).map(({ fault }) => fault);
  return [
    `Faults: ${claimed.length} of ${rows.length} are claimed by some tree`,
    ...columns(
      claimed.map(({ fault, claims }) => [
        fault,
        claims.map(({ procedure, state }) => `${procedure} ${state}`).join(', '),
      ]),
    ),
    `  by none: ${left.join(', ') || 'no fault'}`,
  ];
}

function checkTable(checks: readonly string[]): string[] {
  const rows = askedBy(PROCEDURES, checks);
  const asked = rows.filter(({ procedures }) => procedures.length > 0);
  const own = rows.filter(({ procedures }) => procedures.length === 0).map(({ check }) => check);
  return [
    `Checks: ${asked.length} of ${rows.length} are asked by some tree`,
    ...columns(asked.map(({ check, procedures }) => [check, procedures.join(', ')])),
    `  the planner's own: ${own.join(', ') || 'no check'}`,
  ];
}

function treeTable(words: Words | undefined): string[] {
  return [
    `Trees: ${PROCEDURES.length}`,
    ...columns(
      PROCEDURES.map(({ id, machine, seen }) => [
        id,
        `${String(stepsOf(machine).size).padStart(2)} states`,
        treeName(id, words),
        beginning(seen),
      ]),
    ),
  ];
}

const beginning = (seen: Procedure['seen']): string =>
  seen.length > 0 ? `begins with ${seen.join(', ')}` : 'begins where another hands over';

function outline({ id, machine, seen }: Procedure, words: Words | undefined): string[] {
  const first = drawTree(machine, []);
  return [
    `${treeName(id, words)} (${id}), ${stepsOf(machine).size} states, ${beginning(seen)}`,
    '',
    `${first.state}: ${what(first, words)}`,
    ...below(first, '  ', { words, endings: endingsOf(machine) }),
    '',
    'A reading that will not settle, and a check that is not there, go where “not taken” goes unless it says otherwise.',
  ];
}

const endingsOf = (machine: Procedure['machine']): ReadonlyMap<string, Ending> =>
  new Map(
    [...stepsOf(machine).values()].flatMap(({ state, ends }): [string, Ending][] =>
      ends === undefined ? [] : [[state, ends]],
    ),
  );

/** The ways on from a state, readings before what could not be read. An ending is told wherever it is led to. */
function below({ check, fork, edges }: DrawnState, indent: string, told: Told): string[] {
  const readFirst = [...edges].sort((one, other) => Number(isUnread(one)) - Number(isUnread(other)));
  return readFirst.flatMap(({ outcomes, to, drawn }) => {
    const said = outcomesTold(outcomes, fork).map((outcome) => outcomeWord(outcome, check, told.words));
    const line = `${indent}${said.join(', ')} → ${to}`;
    const ends = told.endings.get(to);
    if (ends !== undefined) return [`${line}: ${endingText(ends, told.words)}`];
    if (drawn === undefined) return [`${line} (told elsewhere)`];
    return [`${line}: ${what(drawn, told.words)}`, ...below(drawn, `${indent}  `, told)];
  });
}

interface Told {
  readonly words: Words | undefined;
  readonly endings: ReadonlyMap<string, Ending>;
}

const UNREAD: readonly string[] = ['not-taken', 'unstable', 'not-here'];

/** What could not be read comes last, and in one word where it all leads the same way. */
function outcomesTold(outcomes: readonly string[], fork: string | undefined): string[] {
  if (fork !== undefined) return [...outcomes];
  const read = outcomes.filter((outcome) => !UNREAD.includes(outcome));
  const unread = UNREAD.filter((outcome) => outcomes.includes(outcome));
  return [...read, ...(unread[0] === 'not-taken' ? ['not-taken'] : unread)];
}

const isUnread = ({ outcomes }: DrawnEdge): boolean => outcomes.every((outcome) => UNREAD.includes(outcome));

/** Answers stand as the screen gives them; outcomes of a number are words already. */
function outcomeWord(outcome: string, check: string | undefined, words: Words | undefined): string {
  const answer = check === undefined ? undefined : words?.checks[check]?.answers?.[outcome];
  return answer === undefined ? outcome.replaceAll('-', ' ') : `“${answer}”`;
}

function what({ check, fork, ends }: DrawnState, words: Words | undefined): string {
  if (ends !== undefined) return endingText(ends, words);
  if (fork !== undefined) return `is there ${checkName(fork, words)}?`;
  return check === undefined ? '' : checkName(check, words);
}

function endingText({ claims, clears, handsOver, undecided }: Ending, words: Words | undefined): string {
  if (claims !== undefined) return `CLAIMS ${claims.map((fault) => faultName(fault, words)).join(' / ')}`;
  if (handsOver !== undefined) return `GOES ON WITH ${treeName(handsOver, words)} (${handsOver})`;
  return clears === undefined ? `DOES NOT DECIDE about ${undecided}` : `FINDS NOTHING in ${clears}`;
}

const checkName = (id: string, words: Words | undefined): string =>
  `${words?.checks[id]?.name ?? 'unnamed check'} (${id})`;
const faultName = (id: string, words: Words | undefined): string =>
  `${words?.faults[id]?.name ?? 'unnamed fault'} (${id})`;
const treeName = (id: string, words: Words | undefined): string => words?.names.procedures?.texts[id] ?? id;

/** Rows with every column but the last as wide as its widest cell. */
function columns(rows: readonly (readonly string[])[]): string[] {
  const width = (column: number): number => Math.max(...rows.map((row) => row[column]?.length ?? 0));
  return rows.map((row) => {
    const cells = row.map((cell, column) => (column < row.length - 1 ? cell.padEnd(width(column)) : cell));
    return `  ${cells.join('  ')}`.trimEnd();
  });
}
