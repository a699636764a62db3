import { describe, expect, test } from 'vitest';
import { restAfter, type TripKind, tripClass, tripsOf } from '../../src/plant/electrical/trips.ts';
import type { Edit } from '../../src/schema/fault.ts';
import type { Element } from '../../src/schema/netlist.ts';
import { contentInput, type Swaps } from './support/content.ts';
import { elements, input, small } from './support/inputs.ts';
import { runUp } from './support/vectors.ts';

/** How soon does a fuse blow, and when does what opened by heat close again? */
const FUSED: Swaps = { panel: 'panel-fused' };
const locked: Edit = { edit: 'shaft', state: 'locked' };

function trip(kind: TripKind, multiple: number): number {
  const { trip: record } = elements[kind]!;
  if (record === undefined) throw new Error(`${kind} has no trip`);
  if (record.atOnce !== undefined && multiple >= record.atOnce) return 0;
  return multiple > record.holds ? record.seconds / (multiple ** 2 - record.holds ** 2) : Infinity;
}

describe('a time-delay fuse', () => {
  /** Practice for small time-delay fuses: what its curve has to keep to. */
  test('carries its rating, blows within the hour at 1.35 and within two minutes at twice of it', () => {
    expect(trip('fuse', 1)).toBe(Infinity);
    expect(trip('fuse', 1.35)).toBeLessThan(3600);
    expect(trip('fuse', 2)).toBeLessThan(120);
  });

  test('lets a start through: five times its rating for ten seconds', () => {
    expect(trip('fuse', 5)).toBeGreaterThanOrEqual(10);
  });

  const plant = (swaps: Swaps) =>
    contentInput('start-only-potential-relay', '3-wire-0.75hp-230v-start-only', swaps);
  const first = (swaps: Swaps, edits: readonly Edit[], ohms?: number) => {
    const { circuit, at } = runUp(plant(swaps), edits, ohms);
    return tripsOf(circuit, at);
  };

  test('holds a sound motor, and is slower than its breaker on a stalled one', () => {
    expect(first(FUSED, [])).toEqual([]);
    const kinds = first(FUSED, [locked]).map(({ kind }) => kind);
    expect(kinds.indexOf('breaker-pole')).toBeLessThan(kinds.indexOf('fuse'));
  });

  test('melts at once on a short in the box', () => {
    const short: Edit = { edit: 'leak', nodes: ['box.L1', 'box.L2'] };
    const fuses = first(FUSED, [short], 0.3).filter(({ kind }) => kind === 'fuse');
    expect(fuses.map(({ seconds }) => seconds)).toEqual([0, 0]);
  });

  test('a load protector adds no trip of its own', () => {
    const kinds = (swaps: Swaps) => first(swaps, [locked]).map(({ kind }) => kind);
    expect(kinds({ panel: 'panel-load-protector' })).toEqual(kinds({}));
  });
});

describe('cooling', () => {
  const minutes = (kind: 'overload' | 'protector') => restAfter(elements[kind]!, 10)!.closesAfter / 60;

  test('a protector in a motor closes after 10 to 40 min, an overload in a box within 10', () => {
    expect(minutes('protector')).toBeGreaterThan(10);
    expect(minutes('protector')).toBeLessThan(40);
    expect(minutes('overload')).toBeLessThan(10);
  });

  /** e^(−t/τ) = ½ at t = τ ln 2; half of the heat is left, so half of the time is saved. */
  test('by the formula', () => {
    const half: Element = { ...elements.overload!, closesAt: 0.5 };
    const rest = restAfter(half, 8)!;
    expect(rest.closesAfter).toBeCloseTo(240 * Math.LN2, 9);
    expect(rest.opensAgain).toBeCloseTo(4, 12);
  });

  test('a stalled motor opens its overload, and sooner the second time', () => {
    const { circuit, at } = runUp(input(small), [locked]);
    const overload = tripsOf(circuit, at).find(({ kind }) => kind === 'overload');
    expect(overload?.rest?.closesAfter).toBeCloseTo(240 * Math.log(1 / 0.3), 6);
    expect(overload!.rest!.opensAgain).toBeLessThan(overload!.seconds);
  });

  test('what is reset or replaced by hand has no rest of its own', () => {
    const { circuit, at } = runUp(input(small), [locked]);
    const rests = tripsOf(circuit, at).filter(({ kind }) => kind === 'breaker-pole');
    expect(rests.map(({ rest }) => rest)).toEqual([undefined, undefined]);
    expect(tripClass(tripsOf(circuit, at))).toBe('seconds');
  });
});
