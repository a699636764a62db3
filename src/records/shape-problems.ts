import type { z } from 'zod';
import type { Problem } from '../catalog/catalog.ts';
import { didYouMean } from './nearest.ts';

/**
 * What is wrong with the shape of a value, in words a technician can act on: one problem for one
 * mistake, its path inside the file, the value that was found, and what to write instead.
 */
type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

export function shapeProblems(issues: readonly Issue[], value: unknown, path: Path = []): Problem[] {
  return issues.flatMap((issue) => problemsOf(issue, value, path));
}

/**
 * `events[3] › reading › value[0]`
 *
 * @example
 * pathText(['events', 3, 'reading']) // => 'events[3] › reading'
 */
export function pathText(path: Path): string {
  const text = path
    .map((step) => (typeof step === 'number' ? `[${step}]` : ` › ${clean(String(step))}`))
    .join('');
  return text.replace(/^ › /, '') || 'the file';
}

function problemsOf(issue: Issue, value: unknown, base: Path): Problem[] {
  const path = [...base, ...issue.path];
  const at = pathText(path);
  const found = shown(valueAt(value, issue.path));
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        at: pathText([...path, key]),
        message: `there is no field "${clean(key)}" here`,
        hint: 'Remove it or mend its name.',
      }));
    case 'invalid_type':
      return [typeProblem(at, found, issue.expected)];
    case 'invalid_value':
      return [choiceProblem(at, found, issue.values.map(String))];
    case 'too_small':
      return [sizeProblem({ at, found, origin: issue.origin, limit: `at least ${issue.minimum}` })];
    case 'too_big':
      return [sizeProblem({ at, found, origin: issue.origin, limit: `at most ${issue.maximum}` })];
    case 'invalid_union':
      return unionProblems(issue, valueAt(value, issue.path), path);
    default:
      return [{ at, message: `${found} will not do: ${formatText(issue)}`, hint: 'Mend the value.' }];
  }
}

function typeProblem(at: string, found: string, expected: string): Problem {
  const kind = expected === 'tuple' ? 'list such as [4.2, "ohm"]' : (KINDS[expected] ?? expected);
  if (found === MISSING) return { at, message: 'this field is missing', hint: `Write a ${kind}.` };
  return { at, message: `${found} is not a ${kind}`, hint: `Write a ${kind}.` };
}

const KINDS: Readonly<Record<string, string>> = {
  number: 'number',
  string: 'text in quotes',
  object: 'group in braces {…}',
  array: 'list in brackets […]',
  boolean: 'true or false',
};

function choiceProblem(at: string, found: string, values: readonly string[]): Problem {
  const list = values.join(', ');
  if (found === MISSING)
    return { at, message: 'this field is missing', hint: `Write ${oneOf(values, list)}.` };
  const meant = didYouMean(found.replace(/^"|"$/g, ''), values);
  return {
    at,
    message: `${found} is not ${oneOf(values, list)}`,
    hint: `${meant}Write ${oneOf(values, list)}.`,
  };
}

const oneOf = (values: readonly string[], list: string): string =>
  values.length === 1 ? list : `one of ${list}`;

function sizeProblem(told: { at: string; found: string; origin: string; limit: string }): Problem {
  const { at, found, origin, limit } = told;
  if (origin === 'number') return { at, message: `${found} is out of range`, hint: `Write ${limit}.` };
  const unit = origin === 'string' ? 'letters' : 'entries';
  return { at, message: `${found} has the wrong length`, hint: `Write ${limit} ${unit}.` };
}

/** Of the forms that a value may take, the one that was most likely meant speaks alone. */
function unionProblems(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  value: unknown,
  path: Path,
): Problem[] {
  if ('options' in issue && Array.isArray(issue.options)) {
    return [choiceProblem(pathText(path), shown(value), issue.options.map(String))];
  }
  const [closest] = [...issue.errors].sort((one, other) => strangeness(one) - strangeness(other));
  return shapeProblems(closest ?? [], value, path);
}

/** How little a value looks like a form: fields it lacks and fields it has too many. */
function strangeness(issues: readonly Issue[]): number {
  return issues.reduce(
    (sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 0) + top(issue),
    0,
  );
}

const top = (issue: Issue): number => (issue.path.length <= 1 && issue.code.startsWith('invalid') ? 1 : 0);

function formatText(issue: Issue): string {
  if (issue.code === 'invalid_format' && issue.format === 'datetime')
    return 'a time is written 2026-03-01T09:30:00Z';
  return issue.message;
}

const MISSING = 'nothing';

/** A value as it may be printed: short, on one line, without control characters. */
export function shown(value: unknown): string {
  if (value === undefined) return MISSING;
  const text = JSON.stringify(value) ?? String(value);
  return clean(text.length > 40 ? `${text.slice(0, 37)}…` : text);
}

function clean(text: string): string {
  // Control and formatting characters could rearrange a terminal or hide text.
  return text.slice(0, 80).replace(/\p{Cc}|\p{Cf}/gu, '?');
}

function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (inner, step) => (isRecord(inner) && Object.hasOwn(inner, step) ? inner[step] : undefined),
    value,
  );
}

function isRecord(value: unknown): value is Record<PropertyKey, unknown> {
  return typeof value === 'object' && value !== null;
}
