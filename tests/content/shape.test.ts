import { describe, expect, test } from 'vitest';
import { files, type Json, problemsOf, read, withEdit, withFile } from './support/broken.ts';

/** First ring: a record that is not what it says it is, and the path by which it is found. */
const source = { id: 'a-book', title: 'A book', kind: 'book' };

describe('a record of the wrong shape is named with its path', () => {
  test('a volt where ohms belong', () => {
    const spoilt = withEdit('motors/3-wire-1hp-230v-start-only', (record) => {
      record.winding = { main: [2.2, 2.7, 'V'], start: [9.9, 12.1, 'ohm'] };
    });
    expect(problemsOf(spoilt)).toEqual([
      expect.stringContaining('motors/3-wire-1hp-230v-start-only › winding › main[2]: Invalid option'),
    ]);
  });

  test('the units that would do are in the hint', () => {
    const spoilt = withEdit('motors/2-wire-1hp-230v', (record) => {
      record.lockedRotor = [48.7, 'V'];
    });
    const [problem] = read(spoilt);
    expect(problem?.at).toBe('motors/2-wire-1hp-230v › lockedRotor[1]');
    expect(problem?.hint).toContain('A, mA');
  });

  test('evidence without a mark', () => {
    const spoilt = withEdit('conductors/copper-12', (record) => {
      record.from = [{ source: 'motor-manual-2007', where: 'table 45A' }];
    });
    expect(problemsOf(spoilt)).toEqual([
      expect.stringContaining('conductors/copper-12 › from[0] › mark: Invalid'),
    ]);
  });

  test('no evidence at all', () => {
    const spoilt = withEdit('conductors/copper-12', (record) => {
      record.from = [];
    });
    expect(problemsOf(spoilt)).toEqual([expect.stringContaining('conductors/copper-12 › from: ')]);
  });

  test('a range that runs backwards', () => {
    const spoilt = withEdit('boxes/start-only-current-relay', (record) => {
      record.power = [1, 0.33, 'hp'];
    });
    expect(problemsOf(spoilt)).toEqual([
      'boxes/start-only-current-relay › power: the range runs backwards: write [low, high, unit]',
    ]);
  });

  test('a field that no record of the kind has', () => {
    const spoilt = withEdit('hazards/dead-work', (record) => {
      record.severety = 3;
    });
    expect(problemsOf(spoilt)).toEqual(['hazards/dead-work › severety: there is no such field']);
  });

  test('an instruction of more than twenty words', () => {
    const spoilt = withEdit('words/en/checks/ohms-yellow-black', (record) => {
      record.ask = 'word '.repeat(21).trim();
    });
    expect(problemsOf(spoilt)).toEqual([
      'words/en/checks/ohms-yellow-black › ask: at most 20 words: say the rest in "how"',
    ]);
  });
});

describe('a file in the wrong place is named', () => {
  test('an id that is not the file name', () => {
    expect(problemsOf(withFile('sources/another-book', source))).toEqual([
      'sources/another-book › id: the id is a-book, the file is another-book.json',
    ]);
  });

  test('an unknown folder', () => {
    expect(problemsOf(withFile('sauces/a-book', source))).toEqual([
      'sauces/a-book: no kind of record lives here',
    ]);
  });

  test('a folder that every object has', () => {
    expect(problemsOf(withFile('constructor/a-book', source))).toEqual([
      'constructor/a-book: no kind of record lives here',
    ]);
  });

  test('the same id twice, in two groups of one folder', () => {
    const twice = [...withFile('sources/one/a-book', source), { path: 'sources/two/a-book', data: source }];
    expect(problemsOf(twice)).toEqual(['sources/two/a-book › id: a-book stands in another file too']);
  });

  test('grouping alone is no problem', () => {
    expect(problemsOf(withFile('sources/books/a-book', source))).toEqual([]);
  });
});

test('all problems are collected, not the first only', () => {
  const spoilt = files.map((file) => {
    if (!file.path.startsWith('conductors/copper')) return file;
    return { path: file.path, data: { ...(file.data as Json), metal: 'gold' } };
  });
  expect(problemsOf(spoilt)).toHaveLength(8);
});
