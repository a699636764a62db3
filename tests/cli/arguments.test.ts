import { expect, test } from 'vitest';
import { sortArguments } from '../../src/cli/arguments.ts';

const sort = (...words: string[]) => sortArguments(words, ['fault', 'severity'], ['all']);

test('operands and flags in any order, both ways of giving a value', () => {
  expect(sort('--fault', 'rotor-locked', 'case.json', '--severity=0.5')).toEqual({
    given: {
      operands: ['case.json'],
      flags: new Map([
        ['fault', 'rotor-locked'],
        ['severity', '0.5'],
      ]),
    },
  });
});

test('a lone dash is an operand', () => {
  expect(sort('-')).toEqual({ given: { operands: ['-'], flags: new Map() } });
});

test('a switch takes no value', () => {
  expect(sort('--all', 'case.json')).toEqual({
    given: { operands: ['case.json'], flags: new Map([['all', '']]) },
  });
});

test.each([
  [['--fualt', 'x'], 'no option --fualt'],
  [['--fault'], '--fault needs a value'],
  [['--fault', '--severity', '1'], '--fault needs a value'],
  [['--fault='], '--fault needs a value'],
  [['--fault', 'x', '--fault', 'y'], 'stands twice'],
  [['--all', '--all'], 'stands twice'],
  [['--all=yes'], '--all takes no value'],
])('%j is a mistake', (words, message) => {
  expect(sort(...words)).toEqual({ mistake: expect.stringContaining(message) });
});
