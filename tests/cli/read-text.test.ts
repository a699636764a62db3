import { mkdtemp, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readText } from '../../src/cli/read-text.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ohmwell-'));
});
afterAll(() => rm(folder, { recursive: true }));

/** Gives ten bytes at a time for ever, and remembers how many were taken. */
function endless() {
  const taken = { bytes: 0 };
  async function* bytes(): AsyncGenerator<Uint8Array> {
    for (;;) {
      taken.bytes += 10;
      yield new Uint8Array(10).fill(65);
    }
  }
  return { taken, standardInput: bytes() };
}

const source = (
  path: string,
  standardInput: AsyncIterable<Uint8Array | string> = endless().standardInput,
) => ({
  path,
  standardInput,
  capBytes: 100,
  folders: ['/nowhere', folder],
});

describe('reading a text', () => {
  test('finds a relative path in the folders in turn, and keeps letters of several bytes whole', async () => {
    await writeFile(join(folder, 'small.json'), '{"Ω": 1}');
    expect(await readText(source('small.json'))).toEqual({ text: '{"Ω": 1}' });
  });
  test('takes exactly the cap and refuses one byte more', async () => {
    await writeFile(join(folder, 'cap'), 'x'.repeat(100));
    await writeFile(join(folder, 'over'), 'x'.repeat(101));
    expect(await readText(source('cap'))).toHaveProperty('text');
    expect(await readText(source('over'))).toEqual({ refused: 'too-large' });
  });
  test('refuses a huge file by its size, unread', async () => {
    await writeFile(join(folder, 'huge'), '');
    await truncate(join(folder, 'huge'), 50e9);
    expect(await readText(source('huge'))).toEqual({ refused: 'too-large' });
  });
  test('stops taking from an endless input just past the cap', async () => {
    const { taken, standardInput } = endless();
    expect(await readText(source('-', standardInput))).toEqual({ refused: 'too-large' });
    expect(taken.bytes).toBe(110);
  });
  test('stops reading a device that says it is empty', async () => {
    expect(await readText(source('/dev/zero'))).toEqual({ refused: 'too-large' });
  });
  test('says what is missing, a folder, or not text', async () => {
    await writeFile(join(folder, 'bytes'), Uint8Array.from([0xff, 0xfe, 0x00]));
    expect(await readText(source('gone'))).toEqual({ refused: 'missing' });
    expect(await readText(source(folder))).toEqual({ refused: 'not-a-file' });
    expect(await readText(source('bytes'))).toEqual({ refused: 'not-text' });
  });
});
