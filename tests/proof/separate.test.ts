import { describe, expect, test } from 'vitest';
import { type Pair, separate } from '../../src/proof/separate.ts';
import { separationProblems } from '../../src/proof/separate-problems.ts';
import type { Fault } from '../../src/schema/fault.ts';
import { check, fault, only, small } from './support/small.ts';

/** Checkers fed with catalogues of two or three faults, on an installation with a start-and-run box. */
const sites = only('start-and-run');
const START = check('start-capacitance');
const OHMS = ['ohms-yellow-black', 'ohms-yellow-red', 'ohms-black-red'].map((id) => check(id));

const open = fault('start-capacitor-open');
const weak = fault('start-capacitor-weak');
const sound = fault('nothing-wrong', { signs: [] });

const pairs = (faults: readonly Fault[], checks = [START]): readonly Pair[] =>
  separate(small(faults, checks), { sites }).pairs;

describe('two faults that nothing tells apart', () => {
  const twin = fault('start-capacitor-open', { id: 'start-capacitor-gone', action: 'replace-box' });

  test('are alike, and a problem of the content', () => {
    const found = separate(small([open, twin], [START]), { sites });
    expect(found.pairs).toEqual([
      expect.objectContaining({ kind: 'alike', faults: ['start-capacitor-open', 'start-capacitor-gone'] }),
    ]);
    expect(separationProblems(found).map(({ at, message }) => `${at}: ${message}`)).toEqual([
      'faults/start-capacitor-open: nothing tells it from start-capacitor-gone on start-and-run',
    ]);
  });

  test('need not be told apart when the repair is one', () => {
    const [pair] = pairs([open, { ...twin, action: open.action }]);
    expect(pair?.kind).toBe('shared');
  });

  test('are no problem when they are kept together on purpose', () => {
    const group = { together: 'start-capacitors' };
    const found = separate(
      small(
        [
          { ...open, ...group },
          { ...twin, ...group },
        ],
        [START],
      ),
      { sites },
    );
    expect(separationProblems(found)).toEqual([]);
    expect(found.groups).toEqual([
      {
        id: 'start-capacitors',
        faults: ['start-capacitor-open', 'start-capacitor-gone'],
        actions: [open.action, 'replace-box'],
      },
    ]);
  });

  test('stay alike however many leads they have: each lead hides behind its like', () => {
    const splice = fault('wellhead-splice-open');
    const other = { ...splice, id: 'wellhead-splice-cut', action: 'replace-box' };
    expect(splice.variants.length).toBeGreaterThan(1);
    expect(pairs([splice, other], OHMS).map(({ kind }) => kind)).toEqual(['alike']);
  });

  test('are told apart where one of them has a lead that the other lacks', () => {
    const splice = fault('wellhead-splice-open');
    const [first] = splice.variants;
    if (first === undefined) throw new Error('no variant');
    const one = { ...splice, id: 'wellhead-splice-cut', action: 'replace-box', variants: [first] };
    expect(pairs([splice, one], OHMS).map(({ kind }) => kind)).toEqual(['alike']);
    const leads = splice.variants.filter(({ id }) => id !== first.id);
    expect(pairs([{ ...splice, variants: leads }, one], OHMS)).not.toContainEqual(
      expect.objectContaining({ kind: 'alike' }),
    );
  });
});

describe('what tells two faults apart', () => {
  test('a single check is named with its minutes', () => {
    const [pair] = pairs([open, sound]);
    expect(pair).toMatchObject({ kind: 'single', by: { id: 'start-capacitance', opensWell: false } });
    expect(pair?.by?.minutes).toBeGreaterThan(START.minutes.hands);
    expect(pair?.told).toBeGreaterThan(0.9);
  });

  test('two checks of one set are one act', () => {
    const [pair] = pairs([fault('winding-start-open'), sound], OHMS);
    expect(pair).toMatchObject({ kind: 'single', by: { id: 'ohms-leads' } });
  });

  test('two acts are none that stands alone', () => {
    expect(pairs([open, sound], [START, check('what-is-seen')])).toEqual([]);
  });

  test('a part that is hardly out of tolerance is told less well than one that is gone', () => {
    const told = (one: Fault): number => pairs([one, sound])[0]?.told ?? 0;
    expect(told(weak)).toBeLessThan(told(open));
    expect(told(weak)).toBeGreaterThan(0.4);
  });

  test('a check of a fitting that may be missing tells only faults of that fitting', () => {
    const fitted = check('start-capacitance', { fitting: 'drive' });
    expect(pairs([open, sound], [fitted])).toEqual([expect.objectContaining({ kind: 'alike' })]);
    expect(pairs([{ ...open, fitting: 'drive' }, sound], [fitted])).toEqual([
      expect.objectContaining({ kind: 'single' }),
    ]);
  });

  test('faults kept together although a check tells them apart are shown', () => {
    const group = { together: 'anything' };
    const found = pairs([
      { ...open, ...group },
      { ...sound, ...group },
    ]);
    expect(found.map(({ kind }) => kind)).toEqual(['grouped']);
  });

  test('the coarse form finds the same', () => {
    const catalog = small([open, weak, sound], [START, check('what-is-seen')]);
    const kinds = (coarse: boolean) =>
      separate(catalog, { sites, coarse }).pairs.map(({ kind, faults }) => `${kind} ${faults.join(' ')}`);
    expect(kinds(true)).toEqual(kinds(false));
  });
});
