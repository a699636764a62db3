/**
 * JSON text into a value, or the place where it stops being JSON.
 *
 * Engines word their own syntax errors differently and some give no position, so the place is found
 * by a small scanner of our own; it runs only on text that the engine has refused, keeps its own
 * stack (deep nesting cannot break it) and builds nothing.
 *
 * @source method: RFC 8259, the grammar
 */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly wanted: string;
}

export type ParsedJson = { readonly value: unknown } | { readonly broken: JsonFault };

export function parseJson(text: string): ParsedJson {
  try {
    return { value: JSON.parse(text) };
  } catch (error) {
    const broken = whereBroken(text);
    if (broken === undefined) throw error;
    return { broken };
  }
}

const SPACE = /[ \t\n\r]*/y;
const STRING = /"(?:[^"\\]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const SCALAR = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)/y;

/** What may stand at a place. */
type Wanted =
  | 'value'
  | 'value or ]'
  | 'name in quotes or }'
  | 'name in quotes'
  | ':'
  | ', or }'
  | ', or ]'
  | 'end';

/** The first place where the text is not JSON; nothing when all of it is. */
export function whereBroken(text: string): JsonFault | undefined {
  const open: ('{' | '[')[] = [];
  let wanted: Wanted = 'value';
  let at = 0;
  for (;;) {
    at = matchAt(SPACE, text, at) ?? at;
    if (wanted === 'end' && at === text.length) return undefined;
    const next = readToken(text, at, { wanted, open });
    if (next === undefined) return faultAt(text, at, wanted);
    ({ at, wanted } = next);
  }
}

interface Standing {
  readonly wanted: Wanted;
  readonly open: ('{' | '[')[];
}

/** Takes one token; `open` grows and shrinks with the brackets. */
function readToken(
  text: string,
  at: number,
  { wanted, open }: Standing,
): { at: number; wanted: Wanted } | undefined {
  const mark = text[at];
  const afterValue = (end: number) => ({ at: end, wanted: afterAny(open) });
  if (mark === '}' && (wanted === ', or }' || wanted === 'name in quotes or }')) {
    open.pop();
    return afterValue(at + 1);
  }
  if (mark === ']' && (wanted === ', or ]' || wanted === 'value or ]')) {
    open.pop();
    return afterValue(at + 1);
  }
  if (mark === ',' && wanted === ', or }') return { at: at + 1, wanted: 'name in quotes' };
  if (mark === ',' && wanted === ', or ]') return { at: at + 1, wanted: 'value' };
  if (mark === ':' && wanted === ':') return { at: at + 1, wanted: 'value' };
  if (wanted.startsWith('name')) {
    const end = stringAt(text, at);
    return end === undefined ? undefined : { at: end, wanted: ':' };
  }
  if (!wanted.startsWith('value')) return undefined;
  if (mark === '{' || mark === '[') {
    open.push(mark);
    return { at: at + 1, wanted: mark === '{' ? 'name in quotes or }' : 'value or ]' };
  }
  const end = stringAt(text, at) ?? matchAt(SCALAR, text, at);
  return end === undefined ? undefined : afterValue(end);
}

function afterAny(open: readonly string[]): Wanted {
  const inside = open.at(-1);
  if (inside === undefined) return 'end';
  return inside === '{' ? ', or }' : ', or ]';
}

/** End of a string, unless it holds a bare control character. */
function stringAt(text: string, at: number): number | undefined {
  const end = matchAt(STRING, text, at);
  for (let index = at; index < (end ?? at); index++) if (text.charCodeAt(index) < 0x20) return undefined;
  return end;
}

function matchAt(pattern: RegExp, text: string, at: number): number | undefined {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}

function faultAt(text: string, at: number, wanted: Wanted): JsonFault {
  const before = text.slice(0, at).split('\n');
  const found = at >= text.length ? 'the end of the text' : JSON.stringify(text.slice(at, at + 12));
  return { line: before.length, column: (before.at(-1) ?? '').length + 1, found, wanted };
}
