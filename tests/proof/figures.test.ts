import { describe, expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { countsByFolder, countsOf, type Figure, figuresOf } from '../../src/proof/figures.ts';
import { idle, settlements } from '../../src/proof/figures-settle.ts';
import { figuresText } from '../../src/proof/figures-text.ts';
import { windowsAt } from '../../src/proof/figures-windows.ts';
import { catalog } from '../published/support/catalog.ts';
import { only } from './support/small.ts';

const all = figuresOf(catalog);
const fieldsOf = (folder: string, record: string): Record<string, string> =>
  Object.fromEntries(
    all
      .filter((one) => one.folder === folder && one.record === record)
      .map(({ field, mark }) => [field, mark]),
  );

describe('figures are counted under the mark that vouches for them', () => {
  test('an entry for the field comes before one for the record', () => {
    expect(fieldsOf('motors', '3-wire-3hp-230v-start-and-run')).toMatchObject({
      'serviceFactorLoad.amps.yellow': 'seen',
      'serviceFactorLoad.watts': 'memory',
    });
  });

  test('both ends of a range count, numbers of the evidence do not', () => {
    const fields = fieldsOf('motors', '2-wire-0.5hp-230v');
    expect(Object.keys(fields)).toEqual(
      expect.arrayContaining(['winding.lineToLine.low', 'winding.lineToLine.high']),
    );
    expect(Object.keys(fields).filter((field) => field.startsWith('from'))).toEqual([]);
  });

  test('the weakest of those that vouch alike counts', () => {
    const [judgement] = Object.values(catalog.judgements);
    if (judgement === undefined) throw new Error('no judgement');
    const from = (['seen', 'memory'] as const).map((mark) => ({ source: 'a-book', where: 'a page', mark }));
    const spoilt: Catalog = { ...catalog, judgements: { one: { ...judgement, id: 'one', value: 3, from } } };
    expect(figuresOf(spoilt).filter(({ record }) => record === 'one')).toEqual([
      { folder: 'judgements', record: 'one', field: 'value', mark: 'memory' },
    ]);
  });

  test('a drawing is one statement, whatever its coordinates', () => {
    expect(fieldsOf('netlists', 'motor-3-wire')).toEqual({ '': 'memory' });
    const [netlists] = countsByFolder(all).filter(({ folder }) => folder === 'netlists');
    expect(netlists?.figures).toEqual(countsOf([]));
    const statements = Object.values(netlists?.statements ?? {}).reduce((sum, count) => sum + count, 0);
    expect(statements).toBe(Object.keys(catalog.netlists).length);
  });
});

describe('what would settle them', () => {
  const settled = settlements(catalog, all);

  test('every record points at figures, and at some that nobody has measured', () => {
    expect(settled.length).toBeGreaterThan(8);
    expect(idle(settled).map(({ calibration }) => calibration.id)).toEqual([]);
  });

  test('a pointer that finds nothing is named', () => {
    const [first] = Object.values(catalog.calibration);
    if (first === undefined) throw new Error('no calibration');
    const lost = { ...first, figures: [{ in: 'motors', ids: ['no-such-row'], field: 'winding' }] };
    const [found] = idle(settlements({ ...catalog, calibration: { [lost.id]: lost } }, all));
    expect(found?.lost).toEqual(['motors › no-such-row › winding']);
  });

  test('a record whose figures have all been measured is idle', () => {
    const [first] = Object.values(catalog.calibration);
    if (first === undefined) throw new Error('no calibration');
    const measured: Figure[] = all.map((figure) => ({ ...figure, mark: 'seen' }));
    expect(idle(settlements(catalog, measured))).toHaveLength(settled.length);
  });
});

describe('windows on memory', () => {
  const [found] = windowsAt(catalog, only('start-and-run'));

  test('ohms of a row that is remembered condemn nothing alone', () => {
    const window = found?.remembered.find(({ check }) => check === 'ohms-yellow-black');
    expect(window?.restsOnMemory).toBe(true);
    expect(window?.where).toContainEqual(expect.stringContaining('motor-manual-2007'));
    expect(found?.ranges).toBeGreaterThan(found?.remembered.filter((one) => one.restsOnMemory).length ?? 0);
  });

  test('a remembered band is named by its part', () => {
    const window = found?.remembered.find(({ check }) => check === 'volts-pole-1');
    expect(window).toMatchObject({ restsOnMemory: true, parts: ['practice'] });
  });
});

test('all of it goes on a page', () => {
  const text = figuresText({
    figures: all,
    windows: windowsAt(catalog, only('start-and-run')),
    settled: settlements(catalog, all),
  });
  expect(text).toMatch(/^figures +memory +practice +derived +seen\n/);
  expect(text).toMatch(/^motors +\d+ +\d+ +\d+ +\d+$/m);
  expect(text).toMatch(/^ {2}start-and-run +\d+ of \d+$/m);
  expect(text).toContain('contact-drop (6 memory)');
  expect(text).not.toContain('points at nothing');
});
