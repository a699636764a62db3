import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { catalog } from './content.ts';
import { type Served, serve } from './served.ts';
import { startCall } from './start.ts';
import { screenNow, walkToVerdict } from './technician.ts';
import { siteOf } from './truth.ts';
import { TRUTHS } from './truths.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

interface Kept {
  readonly answers: number;
  readonly lastSite: string | undefined;
}

/** What the browser's own database holds of the case. */
function kept(page: Page): Promise<Kept> {
  return page.evaluate(
    () =>
      new Promise<Kept>((resolve, reject) => {
        const opening = indexedDB.open('ohmwell');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction('events').objectStore('events').getAll();
          all.onerror = () => reject(all.error);
          all.onsuccess = () => {
            opening.result.close();
            const events = all.result
              .map((row) => row.event)
              .sort((one, other) => (one.id < other.id ? -1 : 1));
            resolve({
              answers: events.filter((event) => event.kind === 'answer').length,
              lastSite: events.filter((event) => event.kind === 'site').at(-1)?.event.type,
            });
          };
        };
      }),
  );
}

/** Kills the page where it stands and opens the same address again, as a phone does. */
async function reopen(context: BrowserContext, page: Page): Promise<Page> {
  const address = page.url();
  await page.close();
  const fresh = await context.newPage();
  await fresh.goto(address);
  await screenNow(fresh);
  return fresh;
}

test('a page that is killed at any step comes back to it with every reading, and asks again about the site', async () => {
  const { context, page } = await served.phone();
  const truth = TRUTHS.mainOverload;
  const site = siteOf(catalog(), truth);
  await startCall(page, served.address, { truth, site });
  const person = { page, site };
  const killedAt = new Set<string>();
  const walked = await walkToVerdict({
    get page() {
      return person.page;
    },
    site,
    beforeStep: async (screen) => {
      if (killedAt.has(screen)) return false;
      killedAt.add(screen);
      const before = await kept(person.page);
      person.page = await reopen(context, person.page);
      const after = await kept(person.page);
      expect(after.answers).toBe(before.answers);
      const hadClaims = before.lastSite !== undefined && before.lastSite !== 'lapsed';
      const now = await screenNow(person.page);
      if (hadClaims) expect(after.lastSite).toBe('lapsed');
      if (!hadClaims) expect(now).toBe(screen);
      if (hadClaims && screen.startsWith('site')) expect(now).toMatch(/^site/);
      if (hadClaims) expect(await person.page.locator('.strip-title').textContent()).toMatch(/^LIVE/);
      return true;
    },
  });
  expect(walked.verdict).toMatch(/Main overload/);
  expect(killedAt.size).toBeGreaterThan(12);
});
