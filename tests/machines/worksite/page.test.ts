import { describe, expect, test } from 'vitest';
import { CHECK_INVARIANTS, STEP_INVARIANTS } from '../../../machines/worksite/invariants.ts';
import { CHANGE_INVARIANTS, STATE_INVARIANTS } from '../../../machines/worksite/invariants-of-the-machine.ts';
import { RULES } from '../../../machines/worksite/permits.ts';
import { SITE_STEPS, stepIds } from '../../../machines/worksite/step-table.ts';
import { loadCatalog } from '../../../src/catalog/load.ts';
import { interlockPage } from '../../../src/cli/interlock.ts';

const built = loadCatalog();
const catalog = 'catalog' in built ? built.catalog : undefined;

describe('the page of the interlock', () => {
  test('the content stands', () => expect('catalog' in built ? [] : built.problems).toEqual([]));
  const page = catalog === undefined ? '' : interlockPage(catalog);

  test('has a line for every step, with its minutes, its words and what shows that it is done', () => {
    for (const id of stepIds) {
      for (const line of SITE_STEPS[id].lines) {
        const words = catalog?.words.en?.siteSteps[line];
        expect(page).toContain(words?.ask ?? `no words for ${line}`);
        expect(page).toContain(words?.shows ?? `no words for ${line}`);
      }
      const minutes = SITE_STEPS[id].lines.map((line) => catalog?.siteSteps[line]?.minutes).join(' + ');
      expect(page).toContain(`| ${minutes} |`);
    }
  });

  test('has every rule and every promise, each with a number', () => {
    const sentences = [
      ...RULES,
      ...CHECK_INVARIANTS,
      ...STEP_INVARIANTS,
      ...STATE_INVARIANTS,
      ...CHANGE_INVARIANTS,
    ];
    for (const { name, sentence } of sentences) {
      expect(page).toMatch(new RegExp(`^\\| [A-Z]\\d+ \\| ${name} \\| `, 'm'));
      expect(page).toContain(sentence);
    }
  });

  test('has the way to every check on some installation, and says who stands above it', () => {
    for (const { name } of Object.values(catalog?.words.en?.checks ?? {})) expect(page).toContain(name);
    expect(page).toContain('local codes');
    expect(page).toContain('licensed practice');
  });

  test('leaves nothing unknown', () => {
    expect(page).not.toContain('undefined');
    expect(page).not.toContain('not known');
    expect(page).not.toContain('a while away');
  });

  test('refuses a language that it has no words for', () => {
    if (catalog !== undefined) expect(() => interlockPage(catalog, 'xx')).toThrow('xx');
  });
});
