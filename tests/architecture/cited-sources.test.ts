import { describe, expect, test } from 'vitest';
import { loadCatalog } from '../../src/catalog/load.ts';
import { filesBelow, productFiles, type SourceFile } from './support/sources.ts';

/** Docstrings and tables cite records of content/sources; a source that nothing cites is no source. */
const sources = filesBelow('content/sources', ['.json']).map(({ path }) =>
  path.replace(/^.*\/|\.json$/g, ''),
);

const CITATION = /^\s*\*\s*@source\s+(.*)$/gm;
const FORM = /^(law|method|table|practice): \S/;

function citations({ path, text }: SourceFile): { path: string; citation: string }[] {
  return [...text.matchAll(CITATION)].map(([, citation = '']) => ({ path, citation }));
}

function wrongIn(files: readonly SourceFile[]): string[] {
  return files.flatMap(citations).flatMap(({ path, citation }) => {
    if (!FORM.test(citation)) return [`${path}: "${citation}" is none of law, method, table, practice`];
    const table = /^table: (\S+)/.exec(citation)?.[1];
    return table === undefined || sources.includes(table) ? [] : [`${path}: content/sources has no ${table}`];
  });
}

test('every @source is a law, a method, a table of content/sources, or practice', () => {
  expect(wrongIn(productFiles())).toEqual([]);
});

describe('a bad citation is caught', () => {
  const file = (citation: string): SourceFile => ({
    path: 'src/a.ts',
    text: `/**\n * @source ${citation}\n */`,
  });

  test('a form of its own', () => {
    expect(wrongIn([file('somewhere on a page')])).toHaveLength(1);
    expect(wrongIn([file('law:')])).toHaveLength(1);
  });

  test('a table that is no source', () => {
    expect(wrongIn([file('table: hearsay (page 3)')])).toEqual(['src/a.ts: content/sources has no hearsay']);
  });

  test('and a good one passes', () => {
    expect(wrongIn([file('table: nist-sp-811 (factors)'), file('law: of Ohm')])).toEqual([]);
  });
});

test('every source is cited by a record, a docstring or a test of published values', () => {
  const built = loadCatalog();
  const { sources: _, words: __, version: ___, ...tables } = 'catalog' in built ? built.catalog : {};
  const text = JSON.stringify(tables);
  const cited = productFiles().flatMap(citations);
  const published = filesBelow('tests/published', ['.ts'])
    .map((file) => file.text)
    .join('\n');
  const isCited = (id: string): boolean =>
    text.includes(`"source":"${id}"`) ||
    cited.some(({ citation }) => citation.startsWith(`table: ${id}`)) ||
    new RegExp(`Sources?: [^\n]*\\b${id}\\b`).test(published);
  expect(sources.filter((id) => !isCited(id))).toEqual([]);
});
