import { catalog } from './content.ts';
import { type Person, press, screenNow, type Walk, walkTo } from './technician.ts';
import { siteOf, type Truth } from './truth.ts';

/** From the verdict through consent, repair and proof run to the closed call; nothing is wrong any more. */
export async function walkToClose(person: Person, truth: Truth): Promise<Walk> {
  const { page, beforeStep } = person;
  await press(page, 'Make it safe and repair');
  await walkTo(person, 'repair');
  await beforeStep?.('repair');
  await press(page, 'Repaired: prove it');
  await page.waitForFunction(
    () => !document.querySelector('.frame')?.getAttribute('data-screen')?.startsWith('repair'),
  );
  const { severity: _, ...sound } = truth;
  const repaired = siteOf(catalog(), { ...sound, fault: 'nothing-wrong', variant: 'none' });
  const proof = await walkTo({ ...person, site: repaired }, 'proof done');
  await beforeStep?.('proof done');
  await press(page, 'Close the call');
  await page.getByRole('heading', { name: 'Closed' }).waitFor();
  await beforeStep?.('closed');
  await press(page, 'Report');
  await screenNow(page);
  await beforeStep?.('report');
  return proof;
}
