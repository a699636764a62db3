import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseJson, whereBroken } from '../../src/records/json-text.ts';

describe('where JSON breaks', () => {
  test.each([
    ['{"a": 1,}', 1, 9, 'name in quotes'],
    ['{"a" 1}', 1, 6, ':'],
    ['{"a": 1\n "b": 2}', 2, 2, ', or }'],
    ['[1, 2', 1, 6, ', or ]'],
    ['[1,\n\n  x]', 3, 3, 'value'],
    ['{"a": 01}', 1, 8, ', or }'],
    ['"a\tb"', 1, 1, 'value'],
    ['{} {}', 1, 4, 'end'],
    ["{'a': 1}", 1, 2, 'name in quotes or }'],
  ])('%j breaks in line %i, column %i', (text, line, column, wanted) => {
    expect(whereBroken(text)).toMatchObject({ line, column, wanted });
  });
});

const seeded = { seed: 20260301, numRuns: 2000 };
/** JSON with one letter taken out, put in or changed: mostly broken, sometimes not. */
const nearly = fc
  .tuple(
    fc.json({ maxDepth: 3 }),
    fc.nat(),
    fc.constantFrom('', '"', ',', '}', ']', ':', '0', 'e', '\\', '\n', 'x'),
    fc.nat(1),
  )
  .map(([text, place, letter, cut]) => {
    const at = place % (text.length + 1);
    return text.slice(0, at) + letter + text.slice(at + cut);
  });

test('the scanner finds a fault exactly where the engine refuses the text', () => {
  fc.assert(
    fc.property(nearly, (text) => {
      const parsed = parseJson(text);
      expect(whereBroken(text) === undefined).toBe('value' in parsed);
      if ('value' in parsed) expect(parsed.value).toEqual(JSON.parse(text));
    }),
    seeded,
  );
});
