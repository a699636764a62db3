import { describe, expect, test } from 'vitest';
import { filesBelow, productFiles, type SourceFile } from './support/sources.ts';

/** Short files stay readable on a phone and in one head: source at 400 lines, a record at 60. */
const SOURCE_MOST = 400;
const RECORD_MOST = 60;

/** Drawings are lists of coordinates, words are lists of texts: their length is no sign of tangle. */
const FREE = [/^content\/netlists\//, /^content\/words\//];

const linesOf = ({ text }: SourceFile): number => text.trimEnd().split('\n').length;

function tooLong(files: readonly SourceFile[], most: number): string[] {
  return files
    .filter((file) => !FREE.some((pattern) => pattern.test(file.path)) && linesOf(file) > most)
    .map((file) => `${file.path} has ${linesOf(file)} lines, at most ${most}`);
}

describe('sizes', () => {
  test('no source file is longer than it may be', () => {
    expect(tooLong(productFiles(), SOURCE_MOST)).toEqual([]);
  });

  test('no record is longer than it may be', () => {
    const records = filesBelow('content', ['.json']);
    expect(records.length).toBeGreaterThan(300);
    expect(tooLong(records, RECORD_MOST)).toEqual([]);
  });
});

describe('an offender is caught', () => {
  const lines = (count: number): string => 'x\n'.repeat(count);

  test('one line too many', () => {
    expect(tooLong([{ path: 'src/units/a.ts', text: lines(401) }], SOURCE_MOST)).toEqual([
      'src/units/a.ts has 401 lines, at most 400',
    ]);
    expect(tooLong([{ path: 'content/faults/a.json', text: lines(61) }], RECORD_MOST)).toHaveLength(1);
  });

  test('and not the one before it, nor a drawing', () => {
    expect(tooLong([{ path: 'src/units/a.ts', text: lines(400) }], SOURCE_MOST)).toEqual([]);
    expect(tooLong([{ path: 'content/netlists/a.json', text: lines(90) }], RECORD_MOST)).toEqual([]);
  });
});
