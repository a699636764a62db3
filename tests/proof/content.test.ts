import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readContent } from '../../src/catalog/read.ts';
import { catalogFrom, filesIn } from '../../src/proof/content.ts';

test('the content folder read from disk is the content that the app is built with', () => {
  const folder = fileURLToPath(new URL('../../content', import.meta.url));
  expect(filesIn(folder).map(({ path }) => path)).toEqual(readContent().map(({ path }) => path));
  expect(filesIn(folder)).toEqual(readContent());
});

test('a bad record is a problem, not a crash', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ohmwell-'));
  mkdirSync(join(folder, 'circumstances'));
  writeFileSync(join(folder, 'circumstances', 'flood.json'), '{"id": "flood", "colour": "blue"}');
  const built = catalogFrom(folder);
  rmSync(folder, { recursive: true });
  expect(built).toMatchObject({ problems: [{ at: expect.stringContaining('circumstances/flood') }, {}] });
});
