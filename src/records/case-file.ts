import type { Problem } from '../catalog/catalog.ts';
import { type CaseEventInput, caseFile, event as eventShape } from '../schema/case.ts';
import { eventIdOf, FILE_DEVICE, highestSequence, idParts, inOrder } from './event-id.ts';
import { eventFits, type Known } from './fits.ts';
import { type JsonFault, parseJson } from './json-text.ts';
import type { RecordedCase, RecordedEvent } from './recorded.ts';
import { sameContent } from './same-content.ts';
import { pathText, shapeProblems, shown } from './shape-problems.ts';

/**
 * A case file in, a case out, or every problem it has.
 *
 * The text may come from anywhere: it is refused by size before it is parsed, then by syntax with
 * line and column, then by shape, then by what this content knows. Nothing is guessed or repaired.
 */
export type ReadCase = { readonly ok: RecordedCase } | { readonly problems: readonly Problem[] };

/** A case of 5,000 events is under 1 MB; what is larger is no case. */
export const CASE_BYTES_MOST = 2_000_000;

export const FORMAT = 'ohmwell-case';
export const FORMAT_VERSION = 1;

/**
 * @param text the whole file; a byte takes at least one letter, so its length is a fair size check
 */
export function readCaseText(text: string, { known }: { known: Known }): ReadCase {
  if (text.length > CASE_BYTES_MOST) return { problems: [tooLarge()] };
  const parsed = parseJson(text.replace(/^\uFEFF/, ''));
  if ('broken' in parsed) return { problems: [syntaxProblem(parsed.broken)] };
  const envelope = envelopeProblems(parsed.value);
  if (envelope.length > 0) return { problems: envelope };
  const whole = caseFile.safeParse(parsed.value);
  const { events, problems } = readEvents(parsed.value, known);
  const all = whole.success ? problems : [...outerProblems(whole.error.issues, parsed.value), ...problems];
  if (all.length > 0 || !whole.success) return { problems: all };
  return withIds(whole.data.case, events);
}

/** The refusal of a file by its size alone; the command line gives it without reading the file. */
export function tooLarge(): Problem {
  return {
    at: 'the file',
    message: `is larger than ${CASE_BYTES_MOST / 1e6} MB, so it was not read`,
    hint: 'A case is far smaller: choose the case file itself.',
  };
}

function syntaxProblem({ line, column, found, wanted }: JsonFault): Problem {
  return {
    at: `line ${line}, column ${column}`,
    message: `this is not JSON: ${found} stands where ${wanted} belongs`,
    hint: 'Mend the text there, or export the case again.',
  };
}

/** Is it a case at all, and of a version that is read here? Nothing else is said until it is. */
function envelopeProblems(value: unknown): Problem[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return [
      {
        at: 'the file',
        message: `holds ${shown(value)}, not a case`,
        hint: `Write {"format": "${FORMAT}", …}.`,
      },
    ];
  }
  const { format, version }: { format?: unknown; version?: unknown } = value;
  if (format !== FORMAT) {
    const message =
      format === undefined
        ? 'this field is missing: nothing says that this is a case'
        : `${shown(format)} is not "${FORMAT}"`;
    return [{ at: 'format', message, hint: `Write "format": "${FORMAT}".` }];
  }
  if (version === undefined) {
    return [{ at: 'version', message: 'this field is missing', hint: `Write "version": ${FORMAT_VERSION}.` }];
  }
  if (version !== FORMAT_VERSION) {
    const hint =
      typeof version === 'number' && version > FORMAT_VERSION
        ? 'It comes from a newer Ohmwell: update this one.'
        : `Write "version": ${FORMAT_VERSION}.`;
    return [
      {
        at: 'version',
        message: `version ${shown(version)} cannot be read; this reads version ${FORMAT_VERSION}`,
        hint,
      },
    ];
  }
  return [];
}

type Issues = Parameters<typeof shapeProblems>[0];

/** Problems outside single events: those are told event by event. */
function outerProblems(issues: Issues, value: unknown): Problem[] {
  return shapeProblems(
    issues.filter(({ path }) => path.length < 2),
    value,
  );
}

interface PlacedEvent {
  readonly event: CaseEventInput;
  readonly at: string;
}

function readEvents(value: unknown, known: Known): { events: PlacedEvent[]; problems: Problem[] } {
  const rows: unknown = typeof value === 'object' && value !== null && 'events' in value ? value.events : [];
  const events: PlacedEvent[] = [];
  const problems: Problem[] = [];
  for (const [index, row] of (Array.isArray(rows) ? rows : []).entries()) {
    const path = ['events', index];
    const told = readEvent(row, known, path);
    if ('event' in told) events.push({ event: told.event, at: pathText(path) });
    else problems.push(...told.problems);
  }
  return { events, problems };
}

/** One event as it is written, when its shape and its ids are right. */
export function readEvent(
  row: unknown,
  known: Known,
  path: readonly (string | number)[],
): { event: CaseEventInput } | { problems: Problem[] } {
  if (!isEvent(row))
    return { problems: shapeProblems(eventShape.safeParse(row).error?.issues ?? [], row, path) };
  const problems = eventFits(row, known, pathText(path));
  return problems.length > 0 ? { problems } : { event: row };
}

/** The shape only turns quantities into SI; what it accepts is an event as written. */
const isEvent = (row: unknown): row is CaseEventInput => eventShape.safeParse(row).success;

/** Events without an id get the next sequences of the file, so the same text gives the same ids. */
function withIds(caseId: string, placed: readonly PlacedEvent[]): ReadCase {
  const given = placed.flatMap(({ event }) => (event.id === undefined ? [] : [event.id]));
  let sequence = highestSequence(given);
  const problems: Problem[] = [];
  const byId = new Map<string, RecordedEvent>();
  for (const { event, at } of placed) {
    const id = event.id ?? eventIdOf({ case: caseId, sequence: ++sequence, device: FILE_DEVICE });
    const recorded = { ...event, id };
    const twin = byId.get(id);
    if (idParts(id).sequence > SEQUENCE_MOST) problems.push(sequenceProblem(id, at));
    else if (idParts(id).case !== caseId) problems.push(strangerProblem(id, caseId, at));
    else if (twin !== undefined && !sameContent(twin, recorded)) problems.push(twinProblem(id, at));
    else byId.set(id, recorded);
  }
  if (problems.length > 0) return { problems };
  return { ok: { case: caseId, events: inOrder([...byId.values()]) } };
}

/** A case of 5,000 events cannot have counted further; beyond it a file would leave no room for ours. */
const SEQUENCE_MOST = 100_000;

function sequenceProblem(id: string, at: string): Problem {
  return { at: `${at} › id`, message: `"${id}" counts too far`, hint: `Sequences end at ${SEQUENCE_MOST}.` };
}

function strangerProblem(id: string, caseId: string, at: string): Problem {
  return {
    at: `${at} › id`,
    message: `"${id}" belongs to another case than "${caseId}"`,
    hint: 'One file holds one case.',
  };
}

function twinProblem(id: string, at: string): Problem {
  return {
    at: `${at} › id`,
    message: `"${id}" stands twice with other content`,
    hint: 'Remove the one that is wrong.',
  };
}

/** One event a line, in the order of the case, fields in a fixed order: two writings of a case are equal. */
export function writeCaseText({ case: caseId, events }: RecordedCase): string {
  const lines = inOrder(events).map((event) => `    ${JSON.stringify(inFieldOrder(event))}`);
  const head = `{\n  "format": "${FORMAT}",\n  "version": ${FORMAT_VERSION},\n  "case": ${JSON.stringify(caseId)},\n`;
  return `${head}  "events": [\n${lines.join(',\n')}\n  ]\n}\n`;
}

const FIRST = ['id', 'at', 'kind'];

/** Id, time and kind first, the rest by name, all the way down. */
function inFieldOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inFieldOrder);
  if (typeof value !== 'object' || value === null) return value;
  const rank = (key: string): string => `${FIRST.includes(key) ? FIRST.indexOf(key) : FIRST.length} ${key}`;
  const entries = Object.entries(value).filter(([, inner]) => inner !== undefined);
  entries.sort(([one], [other]) => (rank(one) < rank(other) ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, inFieldOrder(inner)]));
}
