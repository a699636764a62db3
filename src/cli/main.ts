import { fileURLToPath } from 'node:url';
import { catalogFrom } from '../proof/content.ts';
import { CASE_BYTES_MOST } from '../records/case-file.ts';
import { didYouMean } from '../records/nearest.ts';
import { sortArguments } from './arguments.ts';
import { type Answer, type Around, badInput, type Command } from './command.ts';
import { EFFECTS_FLAGS, effects } from './commands/effects.ts';
import { expect } from './commands/expect.ts';
import { interlock } from './commands/interlock.ts';
import { list } from './commands/list.ts';
import { next } from './commands/next.ts';
import { SEPARATE_FLAGS, SEPARATE_SWITCHES, separate } from './commands/separate.ts';
import { SIMULATE_FLAGS, simulate } from './commands/simulate.ts';
import { trees } from './commands/trees.ts';
import { asJson } from './print.ts';
import { problemLines } from './problem-lines.ts';
import { readText } from './read-text.ts';

interface Entry {
  readonly command: Command;
  readonly flags: readonly string[];
  readonly switches?: readonly string[];
}

/**
 * The engine without a screen: JSON on the standard output, messages on the error output, nothing
 * written. Ends with 0, with 1 when the input is wrong, with 2 when it was called wrongly.
 */
const COMMANDS: Readonly<Record<string, Entry>> = {
  next: { command: next, flags: [] },
  expect: { command: expect, flags: [] },
  simulate: { command: simulate, flags: SIMULATE_FLAGS },
  list: { command: list, flags: [] },
  interlock: { command: interlock, flags: [] },
  trees: { command: trees, flags: [] },
  effects: { command: effects, flags: EFFECTS_FLAGS },
  separate: { command: separate, flags: SEPARATE_FLAGS, switches: SEPARATE_SWITCHES },
};

const CONTENT = fileURLToPath(new URL('../../content', import.meta.url));

/** The part of a process that is used: tests hand in their own. */
export interface Process {
  readonly stdin: AsyncIterable<Uint8Array | string>;
  readonly stdout: { write(text: string): unknown };
  readonly stderr: { write(text: string): unknown };
  readonly env: Readonly<Record<string, string | undefined>>;
  cwd(): string;
}

/** @param words what follows the program's name @returns the exit code */
export async function main(words: readonly string[], process: Process): Promise<0 | 1 | 2> {
  const [name, ...rest] = words;
  if (name === 'help' || name === '--help') {
    process.stdout.write(`${usage()}\n`);
    return 0;
  }
  const answer = await answerTo(name, rest, process);
  switch (answer.kind) {
    case 'data':
      process.stdout.write(asJson(answer.data));
      return 0;
    case 'text':
      process.stdout.write(answer.text);
      return 0;
    case 'bad-input':
      for (const line of answer.lines) process.stderr.write(`${line}\n`);
      return 1;
    case 'usage':
      process.stderr.write(`${answer.line}\n${usage()}\n`);
      return 2;
    default: {
      const never: never = answer;
      return never;
    }
  }
}

async function answerTo(
  name: string | undefined,
  rest: readonly string[],
  process: Process,
): Promise<Answer> {
  if (name === undefined) return { kind: 'usage', line: 'name a command' };
  const found = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (found === undefined) {
    return {
      kind: 'usage',
      line: `there is no command "${name}"; ${didYouMean(name, Object.keys(COMMANDS))}`.trim(),
    };
  }
  const sorted = sortArguments(rest, found.flags, found.switches);
  if ('mistake' in sorted) return { kind: 'usage', line: sorted.mistake };
  const loaded = catalogFrom(CONTENT);
  if ('problems' in loaded) return badInput(...problemLines(loaded.problems, 'content'));
  return found.command.run(sorted.given, around(loaded.catalog, process));
}

function around(catalog: Around['catalog'], process: Process): Around {
  const started = process.env.INIT_CWD;
  const folders = started === undefined ? [process.cwd()] : [process.cwd(), started];
  return {
    catalog,
    tell: (line) => process.stderr.write(`${line}\n`),
    readText: (path) => readText({ path, capBytes: CASE_BYTES_MOST, standardInput: process.stdin, folders }),
  };
}

function usage(): string {
  const lines = Object.values(COMMANDS).map(({ command }) => `  ${command.usage}\n      ${command.about}`);
  return [
    'usage: npm run -s ohmwell -- COMMAND',
    ...lines,
    '  A case file may be - for the standard input.',
  ].join('\n');
}
