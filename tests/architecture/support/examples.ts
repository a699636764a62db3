import { isDeepStrictEqual } from 'node:util';
import type { SourceFile } from './sources.ts';

/** One line of a docstring that claims a value: `expr // => value`. */
export interface Example {
  readonly path: string;
  readonly line: number;
  readonly expression: string;
  readonly claimed: string;
}

/** Lines of the form `expr // => value` below an `@example`, until the docstring ends. */
export function examplesIn({ path, text }: SourceFile): Example[] {
  let inside = false;
  return text.split('\n').flatMap((line, index): Example[] => {
    if (/^\s*\*\s*@example\b/.test(line)) inside = true;
    else if (/^\s*\*\s*@|\*\//.test(line)) inside = false;
    const found = /^\s*\*\s*(.+?)\s*\/\/ => (.+)$/.exec(line);
    const [, expression, claimed] = found ?? [];
    if (!inside || expression === undefined || claimed === undefined) return [];
    return [{ path, line: index + 1, expression, claimed: claimed.trim() }];
  });
}

/** Names that an example may use: what its own module exports, and the units. */
export type Scope = Readonly<Record<string, unknown>>;

/** What is wrong with an example, or nothing. */
export function wrongIn(example: Example, scope: Scope): string | undefined {
  const at = `${example.path}:${example.line}`;
  const value = evaluate(example.expression, scope);
  const claimed = evaluate(`(${example.claimed})`, scope);
  if (isDeepStrictEqual(value, claimed)) return undefined;
  if (typeof value === 'number' && typeof claimed === 'number' && closeTo(value, claimed)) return undefined;
  return `${at}: ${example.expression} gives ${JSON.stringify(value)}, not ${example.claimed}`;
}

/** Rounding of the last bit is no mistake of the docstring. */
const closeTo = (value: number, claimed: number): boolean =>
  Math.abs(value - claimed) <= 1e-9 * Math.max(1, Math.abs(claimed));

function evaluate(expression: string, scope: Scope): unknown {
  return new Function(...Object.keys(scope), `return ${expression};`)(...Object.values(scope));
}
