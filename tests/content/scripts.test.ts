import { execFile } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { schemaFiles } from '../../src/catalog/schema-files.ts';
import { RECORD_SHAPES, WORD_SHAPES } from '../../src/catalog/shapes.ts';
import { files } from './support/broken.ts';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

interface Run {
  readonly code: number;
  readonly out: string;
  readonly problems: readonly string[];
}

function check(folder: string): Promise<Run> {
  return new Promise((done) => {
    const script = at('../../src/catalog/check-content.mjs');
    execFile('node', [script, folder], (error, out, problems) => {
      const code = error === null ? 0 : Number(error.code);
      done({ code, out, problems: problems.trim().split('\n') });
    });
  });
}

describe('the content check of the command line', () => {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'content-'));
    await cp(at('../../content'), folder, { recursive: true });
  });
  afterAll(() => rm(folder, { recursive: true }));

  test('is silent about sound content and ends well', async () => {
    const { code, out } = await check(folder);
    expect(code).toBe(0);
    expect(out).toContain(`${files.length} records, no problems`);
  });

  test('names record, path and hint of a bad one and ends with 1', async () => {
    const path = join(folder, 'conductors/copper-12.json');
    const text = await readFile(path, 'utf8');
    await writeFile(path, text.replace('"copper"', '"gold"'));
    const { code, problems } = await check(folder);
    await writeFile(path, text);
    expect(code).toBe(1);
    expect(problems).toEqual([
      expect.stringMatching(/^conductors\/copper-12 › metal: Invalid .* \(write one of copper, aluminium\)$/),
      '1 problem',
    ]);
  });

  test('names every file that is no JSON at all', async () => {
    await writeFile(join(folder, 'parts/half.json'), '{ "id": ');
    await writeFile(join(folder, 'parts/none.json'), '');
    const { code, problems } = await check(folder);
    expect(code).toBe(1);
    expect(problems).toEqual([
      expect.stringMatching(/^parts\/half: .*mend the JSON/),
      expect.stringMatching(/^parts\/none: .*mend the JSON/),
      '2 problems',
    ]);
  });
});

describe('schemas for the editor', () => {
  const schemas = schemaFiles();

  test('there is one for every folder of content', () => {
    const folders = [
      ...Object.keys(RECORD_SHAPES),
      ...Object.keys(WORD_SHAPES).map((kind) => `words-${kind}`),
    ];
    expect(schemas.map(({ name }) => name)).toEqual(folders);
  });

  test('they describe what is written, printed units and all', () => {
    const conductor = schemas.find(({ name }) => name === 'conductors')?.schema;
    expect(conductor).toMatchObject({
      type: 'object',
      additionalProperties: false,
      properties: {
        perLength: { prefixItems: [{ type: 'number' }, { enum: ['ohm/m', 'ohm/kft'] }] },
        from: { items: { properties: { mark: { enum: ['seen', 'memory', 'derived', 'practice'] } } } },
      },
    });
  });
});
