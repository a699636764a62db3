import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { catalogFrom } from '../../src/proof/content.ts';
import { readCaseText, writeCaseText } from '../../src/records/case-file.ts';
import { foldCase } from '../../src/records/fold.ts';

const path = (text: string) => fileURLToPath(new URL(text, import.meta.url));
const built = catalogFrom(path('../../content'));
if ('problems' in built) throw new Error(`content has ${built.problems.length} problems`);
const known = built.catalog;

const CASES = path('../cases/');
const files = readdirSync(CASES).map((name): [string, string] => [name, readFileSync(CASES + name, 'utf8')]);

test.each(files)('%s reads, and written it reads back the same', (_, text) => {
  const read = readCaseText(text, { known });
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  expect(readCaseText(writeCaseText(read.ok), { known })).toEqual(read);
});

/** Every place of a JSON value, as a path. */
function places(value: unknown, at: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [at];
  const steps = Array.isArray(value) ? value.map((_, index) => index) : Object.keys(value);
  return [at, ...steps.flatMap((step) => places(Reflect.get(value, step), [...at, step]))];
}

function put(value: unknown, at: readonly (string | number)[], instead: unknown): unknown {
  const [step, ...rest] = at;
  if (step === undefined || typeof value !== 'object' || value === null) return instead;
  const copy: object = Array.isArray(value) ? [...value] : { ...value };
  Reflect.set(copy, step, put(Reflect.get(value, step), rest, instead));
  return copy;
}

const odd = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom<unknown>(
    -1,
    0,
    1e308,
    -0,
    '',
    'ohm',
    'V',
    '__proto__',
    [],
    {},
    null,
    [1e308, 'kohm'],
    [1e308, 'ft'],
  ),
);
/** A good case with one to three places of it replaced by something odd. */
const spoilt = fc
  .tuple(fc.constantFrom(...files), fc.array(fc.tuple(fc.nat(), odd), { minLength: 1, maxLength: 3 }))
  .map(([[, text], changes]) =>
    changes.reduce<unknown>((value, [pick, instead]) => {
      const all = places(value);
      return put(value, all[pick % all.length] ?? [], instead);
    }, JSON.parse(text)),
  );

test('a spoilt case is either told what is wrong, place by place, or is a case that folds to finite facts', () => {
  let refused = 0;
  fc.assert(
    fc.property(spoilt, (value) => {
      const read = readCaseText(JSON.stringify(value), { known });
      if ('problems' in read) {
        refused++;
        expect(read.problems.length).toBeGreaterThan(0);
        for (const { at, message, hint } of read.problems) {
          for (const text of [at, message, hint]) expect(text).toMatch(/^\P{Cc}+$/u);
        }
        return;
      }
      const state = foldCase(read.ok.case, read.ok.events, known.checks);
      expect(state.trail).toHaveLength(read.ok.events.length);
      // JSON turns a number that is not finite into null.
      expect(JSON.stringify(state.installation)).not.toContain('null');
    }),
    { seed: 20260301, numRuns: 600 },
  );
  expect(refused).toBeGreaterThan(300);
});
