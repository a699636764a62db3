import { expect, test } from 'vitest';
import { separate } from '../../src/proof/separate.ts';
import { separationProblems } from '../../src/proof/separate-problems.ts';
import { SITES } from '../../src/proof/separate-sites.ts';
import { catalog } from '../published/support/catalog.ts';

/**
 * The real catalogue held against the plant, in the coarse form and on two installations that differ
 * most. `npm run -s ohmwell -- separate` does all of them in full.
 */
const QUICK = ['two-wire', 'contactor'];
const sites = Object.fromEntries(Object.entries(SITES).filter(([name]) => QUICK.includes(name)));
const found = separate(catalog, { sites, coarse: true });

test('every fault changes a reading, every two are told apart, every check is moved', () => {
  expect(separationProblems(found).map(({ at, message }) => `${at}: ${message}`)).toEqual([]);
});

test('the two installations have most of the faults', () => {
  expect(found.sites).toEqual(QUICK);
  expect(found.nowhere.length).toBeLessThan(Object.keys(catalog.faults).length / 10);
});
