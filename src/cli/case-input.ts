import type { Problem } from '../catalog/catalog.ts';
import { readCaseText, tooLarge } from '../records/case-file.ts';
import { eventIdOf, FILE_DEVICE } from '../records/event-id.ts';
import { foldCase } from '../records/fold.ts';
import { lapse, lapseDue } from '../records/lapse.ts';
import type { RecordedCase } from '../records/recorded.ts';
import type { CaseState } from '../schema/case-state.ts';
import { type Answer, type Around, badInput, type Given, usageError } from './command.ts';
import { problemLines } from './problem-lines.ts';
import type { TextRead } from './read-text.ts';

/**
 * The case that a command is about: one file or `-`, read, checked and folded.
 *
 * A file is history. Whatever it claims about the work site lapses on reading, so that the answer is
 * the same tomorrow and never skips a lock-out that nobody has done today.
 */
export type CaseInput = { readonly state: CaseState } | { readonly answer: Answer };

export async function caseInput(given: Given, around: Around): Promise<CaseInput> {
  const [path, ...more] = given.operands;
  if (path === undefined) return { answer: usageError('name one case file, or - for the standard input') };
  if (more.length > 0) return { answer: usageError('name one case file only') };
  const name = path === '-' ? 'standard input' : path;
  const read = await around.readText(path);
  if ('refused' in read) return refused([refusal(read.refused)], name);
  const found = readCaseText(read.text, { known: around.catalog });
  if ('problems' in found) return refused(found.problems, name);
  return { state: stateNow(found.ok, around) };
}

function stateNow({ case: caseId, events }: RecordedCase, around: Around): CaseState {
  const state = foldCase(caseId, events, around.catalog.checks);
  const moment = { reason: 'import', lastEventAt: undefined, now: new Date(0), lapseMinutes: 0 } as const;
  if (lapseDue(state, moment) === undefined) return state;
  const id = eventIdOf({ case: caseId, sequence: state.lastSequence + 1, device: FILE_DEVICE });
  return foldCase(caseId, [...events, { ...lapse(), id }], around.catalog.checks);
}

function refusal(reason: Extract<TextRead, { refused: string }>['refused']): Problem {
  switch (reason) {
    case 'missing':
      return { at: 'the file', message: 'is not there', hint: 'Mend the path.' };
    case 'not-a-file':
      return { at: 'the file', message: 'is a folder', hint: 'Name a case file in it.' };
    case 'not-text':
      return { at: 'the file', message: 'is not UTF-8 text', hint: 'Export the case again.' };
    case 'too-large':
      return tooLarge();
    default: {
      const never: never = reason;
      return never;
    }
  }
}

const refused = (problems: readonly Problem[], name: string): CaseInput => ({
  answer: badInput(...problemLines(problems, name)),
});
