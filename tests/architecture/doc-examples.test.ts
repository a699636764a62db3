import { describe, expect, test } from 'vitest';
import * as units from '../../src/units/units.ts';
import { examplesIn, wrongIn } from './support/examples.ts';
import { productFiles, type SourceFile } from './support/sources.ts';

/** Examples in docstrings are promises: each is run against the module that it stands in. */
const modules = import.meta.glob<Record<string, unknown>>([
  '../../src/**/*.ts',
  '../../machines/**/*.ts',
  '!**/main.ts',
  '!**/*.worker.ts',
]);
const withExamples = productFiles().filter((file) => examplesIn(file).length > 0);

async function wrongExamples(file: SourceFile, scope: Record<string, unknown>): Promise<string[]> {
  return examplesIn(file).flatMap((example) => wrongIn(example, { ...units, ...scope }) ?? []);
}

describe('examples in docstrings', () => {
  test('there are some', () => {
    expect(withExamples.map(({ path }) => path)).toContain('src/units/units.ts');
    expect(withExamples.length).toBeGreaterThan(5);
  });

  test.each(withExamples.map((file) => [file.path, file] as const))('%s', async (path, file) => {
    const load = modules[`../../${path}`];
    expect(load, 'a module that can be imported in a test').toBeDefined();
    expect(await wrongExamples(file, (await load?.()) ?? {})).toEqual([]);
  });
});

describe('a wrong example is caught', () => {
  const file = (line: string): SourceFile => ({
    path: 'src/units/a.ts',
    text: `/**\n * Why.\n *\n * @example\n * ${line}\n */\nexport const a = 1;`,
  });

  test('a number that is off', async () => {
    expect(await wrongExamples(file("of(2, 'kohm') // => 200"), {})).toEqual([
      "src/units/a.ts:5: of(2, 'kohm') gives 2000, not 200",
    ]);
  });

  test('a text and a list that are off', async () => {
    expect(await wrongExamples(file("'a' + 'b' // => 'ba'"), {})).toHaveLength(1);
    expect(await wrongExamples(file('[1, 2] // => [2, 1]'), {})).toHaveLength(1);
  });

  test('and a right one passes', async () => {
    expect(await wrongExamples(file("[of(1, 'kohm'), 'x'] // => [1000, 'x']"), {})).toEqual([]);
  });

  test('a line that is no claim is left alone', () => {
    expect(examplesIn(file("of(2, 'kohm')"))).toEqual([]);
    expect(examplesIn({ path: 'a.ts', text: 'const x = 1; // => 2' })).toEqual([]);
  });
});
