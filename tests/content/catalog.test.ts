import { describe, expect, test } from 'vitest';
import { buildCatalog } from '../../src/catalog/build.ts';
import { loadCatalog } from '../../src/catalog/load.ts';
import { inUnit } from '../../src/units/units.ts';
import { catalogOf, files, problemsOf, withEdit } from './support/broken.ts';

const catalog = catalogOf(loadCatalog());

describe('the real content', () => {
  test('has no problems', () => {
    expect(problemsOf(files)).toEqual([]);
  });

  test('holds the whole single-phase table: 5 two-lead, 16 three-lead, 8 auxiliary rows', () => {
    const rows = Object.values(catalog.motors);
    const count = (leads: string, auxiliary: boolean): number =>
      rows.filter((row) => row.leads === leads && (row.auxiliary ?? false) === auxiliary).length;
    expect([count('2-wire', false), count('3-wire', false), count('3-wire', true)]).toEqual([5, 16, 8]);
  });

  test('carries the mark of each figure from its source', () => {
    const marks = (id: string, field: string): string[] =>
      (catalog.motors[id]?.from ?? []).filter(({ of }) => of?.includes(field)).map(({ mark }) => mark);
    expect(marks('2-wire-0.5hp-230v', 'winding')).toEqual(['seen']);
    expect(marks('2-wire-0.5hp-115v', 'winding')).toEqual(['memory']);
    expect(marks('3-wire-3hp-230v-start-and-run', 'serviceFactorLoad.amps')).toEqual(['seen']);
    expect(marks('3-wire-3hp-230v-start-and-run', 'serviceFactorLoad.watts')).toEqual(['memory']);
  });

  test('gives every motor that a box may serve a box, and every box a motor', () => {
    const plates = Object.values(catalog.motors).filter((motor) => motor.auxiliary === undefined);
    const pairs = Object.values(catalog.boxes).flatMap((box) =>
      plates
        .filter((motor) => motor.leads === box.leads && box.serves.includes(motor.circuit))
        .filter(
          ({ power }) => power >= box.power.low - 1 && power <= box.power.high + 1, // watts: rounding of hp
        )
        .map((motor) => [box.id, motor.id] as const),
    );
    expect(Object.keys(catalog.boxes).filter((id) => !pairs.some(([box]) => box === id))).toEqual([]);
    expect(plates.filter(({ id }) => !pairs.some(([, motor]) => motor === id))).toEqual([]);
  });

  test('is in SI once read, as printed in the file', () => {
    const row = catalog.motors['3-wire-1hp-230v-start-and-run'];
    expect(row?.runCapacitor).toBeCloseTo(10e-6, 12);
    expect(row && inUnit(row.power, 'hp')).toBeCloseTo(1, 9);
  });

  test('is frozen: a reader cannot change what the next one reads', () => {
    expect(Object.isFrozen(catalog)).toBe(true);
    expect(Object.isFrozen(catalog.motors)).toBe(true);
    expect(Object.isFrozen(catalog.motors['2-wire-1hp-230v']?.from)).toBe(true);
  });
});

describe('the version of the content', () => {
  test('does not depend on the order in which files are found', () => {
    expect(catalogOf(buildCatalog([...files].reverse())).version).toBe(catalog.version);
  });

  test('changes with any figure', () => {
    const changed = withEdit('conductors/copper-12', (record) => {
      record.temperature = [51, 'degF'];
    });
    expect(catalogOf(buildCatalog(changed)).version).not.toBe(catalog.version);
  });
});
