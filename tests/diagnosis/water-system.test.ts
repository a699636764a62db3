import { describe, expect, test } from 'vitest';
import { hypothesesOf } from '../../src/diagnosis/belief/hypotheses.ts';
import { resolveSystem } from '../../src/diagnosis/system.ts';
import { waterInput, waterSpreads } from '../../src/diagnosis/water-system.ts';
import { of } from '../../src/units/units.ts';
import { catalog } from '../published/support/catalog.ts';

const BOX = { box: 'start-and-run-main-overload-in-line', motor: '3-wire-1.5hp-230v-start-and-run' };

describe('a water system that is partly known', () => {
  const usual = waterInput(catalog, {})!;

  test('takes what is known as it is', () => {
    const known = waterInput(catalog, {
      cutIn: of(40, 'psi'),
      tank: { volume: of(86, 'gal') },
      well: { staticLevel: of(33, 'ft') },
    })!;
    expect(known.switch.cutIn).toBe(of(40, 'psi'));
    expect(known.tank.volume).toBe(of(86, 'gal'));
    expect(known.well.staticLevel).toBe(of(33, 'ft'));
  });

  test('keeps the rest in proportion: cut-out and precharge with cut-in, a longer pump for a deeper well', () => {
    const deep = waterInput(catalog, { cutIn: of(40, 'psi'), well: { intake: of(400, 'ft') } })!;
    expect(deep.switch.cutOut - deep.switch.cutIn).toBeCloseTo(usual.switch.cutOut - usual.switch.cutIn, 6);
    expect(deep.tank.precharge).toBeCloseTo(of(38, 'psi'), 3);
    expect(deep.well.staticLevel / usual.well.staticLevel).toBeCloseTo(2, 6);
    expect(deep.pump.shutOffHead).toBeGreaterThan(usual.pump.shutOffHead);
  });

  test('is less sure of what nobody said', () => {
    const spreads = waterSpreads(catalog, { tank: { volume: of(44, 'gal') } });
    expect(spreads.tankVolume).toBeUndefined();
    expect(spreads.waterLevel).toBeGreaterThan(0);
  });
});

describe('fittings', () => {
  const weightOf = (fault: string, fittings?: Record<string, boolean>): number =>
    hypothesesOf(catalog, resolveSystem(catalog, { ...BOX, ...(fittings === undefined ? {} : { fittings }) }))
      .filter((one) => one.fault.id === fault && one.cause === undefined)
      .reduce((sum, one) => sum + one.weight, 0);

  test('known to be there they make their faults likelier, known to be missing impossible', () => {
    const unsaid = weightOf('filter-clogged');
    expect(unsaid).toBe(catalog.faults['filter-clogged']?.prior.weight);
    expect(weightOf('filter-clogged', { 'cartridge-filter': true })).toBeGreaterThan(unsaid);
    expect(weightOf('filter-clogged', { 'cartridge-filter': false })).toBe(0);
  });

  test('swap pieces of the netlist once they are known', () => {
    const parts = (fittings: Record<string, boolean>): string[] =>
      resolveSystem(catalog, { ...BOX, fittings }).choices[0]!.input.pieces.flatMap((piece) =>
        piece.parts.map((part) => part.id),
      );
    expect(parts({ fuses: true })).toContain('panel.fuse-1');
    expect(parts({ fuses: false })).not.toContain('panel.fuse-1');
  });
});

describe('a cause beside its consequence', () => {
  const all = hypothesesOf(catalog, resolveSystem(catalog, BOX));
  const pairs = all.filter((one) => one.cause !== undefined);

  test('is held with its own weight, under that of the cause alone', () => {
    const pair = pairs.find((one) => one.cause?.fault.id === 'tank-waterlogged')!;
    const alone = all.find((one) => one.fault.id === 'tank-waterlogged' && one.cause === undefined)!;
    expect(pair.weight).toBeGreaterThan(0);
    expect(pair.weight).toBeLessThan(alone.weight);
    expect(catalog.faults['tank-waterlogged']?.tendsToCause).toContain(pair.fault.id);
  });

  test('no fault is its own cause', () => {
    expect(pairs.filter((one) => one.cause?.fault.id === one.fault.id)).toEqual([]);
  });
});
