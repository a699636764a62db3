import { expect, test } from 'vitest';
import { newCaseId } from '../../../src/app/hooks/new-case-id.ts';
import { caseId } from '../../../src/schema/case.ts';

const random = new Uint8Array([0, 1, 2, 3]);

test.each([
  ['Larch Hollow', 'larch-hollow-2345'],
  ['', 'call-2345'],
  ['***', 'call-2345'],
  ['Ölmühle 7', 'olmuhle-7-2345'],
])('"%s" becomes %s', (site, id) => {
  expect(newCaseId(site, random)).toBe(id);
});

test('a name that is far too long still makes an id', () => {
  expect(() => caseId.parse(newCaseId('long name '.repeat(20), random))).not.toThrow();
});
