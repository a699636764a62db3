import type { Page } from 'playwright-core';
import type { Reading } from '../../src/schema/case.ts';
import { catalog } from './content.ts';
import type { Site } from './truth.ts';

const words = catalog().words.en;
if (words === undefined) throw new Error('technician: no English words');

/**
 * Walks a call by tapping: does what the screen says, types what the simulated site shows. Knows the
 * screens only by their names, the checks on them and the words on the keys.
 */
export interface Walk {
  /** Checks answered, in order. */
  readonly checks: string[];
  /** Steps that made the site safe, in order. */
  readonly siteSteps: string[];
  /** Title of the verdict. */
  readonly verdict: string;
  /** All that its screen says. */
  readonly text: string;
}

export interface Person {
  readonly page: Page;
  readonly site: Site;
  /**
   * Called before every step is done: a test may kill the page here.
   *
   * @returns true when the screen may have changed, so that it must be looked at again
   */
  beforeStep?(screen: string): Promise<unknown>;
}

const STEPS_MOST = 120;
/** Longer than any key wants to be held. */
const HOLD_MILLISECONDS = 1100;

/** From the step on screen to the verdict. */
export async function walkToVerdict(person: Person): Promise<Walk> {
  return walkTo(person, 'verdict');
}

/** Until a screen whose name begins like this. */
export async function walkTo(person: Person, end: string): Promise<Walk> {
  const walk: { checks: string[]; siteSteps: string[] } = { checks: [], siteSteps: [] };
  for (let step = 0; step < STEPS_MOST; step++) {
    const screen = await screenNow(person.page);
    if ((await person.beforeStep?.(screen)) === true) continue;
    const { page } = person;
    if (screen.startsWith(end)) {
      const [verdict, text] = await Promise.all([
        page.locator('h1').textContent(),
        page.locator('main').textContent(),
      ]);
      return { ...walk, verdict: verdict ?? '', text: text ?? '' };
    }
    await takeStep(person, screen, walk);
    await leaves(page, screen);
  }
  throw new Error(`technician: no ${end} after ${STEPS_MOST} steps; ${walk.checks.join(', ')}`);
}

async function takeStep(
  person: Person,
  screen: string,
  walk: { checks: string[]; siteSteps: string[] },
): Promise<void> {
  const { page } = person;
  const [kind] = screen.split(' ');
  if (kind === 'judged') await press(page, 'Go on');
  else if (kind === 'site') walk.siteSteps.push(await doSiteStep(page, screen));
  else if (kind === 'check') walk.checks.push(...(await answerChecks(person, screen)));
  else if (kind === 'ask') await press(page, 'Do not know');
  else throw new Error(`technician: nothing to do on "${screen}"`);
}

/** Name of the screen, once the engine has answered. */
export async function screenNow(page: Page): Promise<string> {
  const settled = await page.waitForFunction(() => {
    const frame = document.querySelector('.case[aria-busy="false"] .frame');
    const name = frame?.getAttribute('data-screen') ?? 'waiting';
    return name === 'waiting' || name === 'judging' ? undefined : name;
  });
  return (await settled.jsonValue()) ?? '';
}

/** Waits until another screen has taken the place of this one. */
export async function leaves(page: Page, screen: string): Promise<void> {
  await page.waitForFunction(
    (name) => document.querySelector('.frame')?.getAttribute('data-screen') !== name,
    screen,
  );
}

export async function press(page: Page, words: string): Promise<void> {
  await page.getByRole('button', { name: words, exact: true }).first().click();
}

export async function doSiteStep(page: Page, screen: string): Promise<string> {
  const held = page.locator('[data-hold]');
  if ((await held.count()) > 0) await hold(page);
  else await press(page, 'Done');
  return screen.replace(/^site /, '').trim();
}

/** A press that is held until the key has filled. */
export async function hold(page: Page): Promise<void> {
  const key = page.locator('[data-hold]');
  await key.scrollIntoViewIfNeeded();
  const box = await key.boundingBox();
  if (box === null) throw new Error('technician: the key to hold is not on screen');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.waitForTimeout(HOLD_MILLISECONDS);
  await page.mouse.up();
}

/** All boxes of the screen, one after the other: the screen moves on by itself. */
export async function answerChecks({ page, site }: Person, screen: string): Promise<string[]> {
  const done: string[] = [];
  for (;;) {
    if ((await page.locator('.frame').getAttribute('data-screen')) !== screen) return done;
    const check = await page.locator('[data-check]').first().getAttribute('data-check');
    if (check === null) throw new Error(`technician: no check on "${screen}"`);
    await give(page, check, site.read(check));
    done.push(check);
    await page.waitForFunction(
      ([name, last]) =>
        document.querySelector('.frame')?.getAttribute('data-screen') !== name ||
        document.querySelector('[data-check]')?.getAttribute('data-check') !== last,
      [screen, check],
    );
  }
}

export async function give(page: Page, check: string, reading: Reading): Promise<void> {
  if ('answer' in reading) return press(page, answerText(check, reading.answer));
  if ('open' in reading) return press(page, 'open');
  if ('unstable' in reading) return press(page, 'unstable');
  if ('notTaken' in reading) {
    await press(page, 'Can’t take it');
    return press(page, named('not-taken', reading.notTaken));
  }
  const [value, unit] = reading.value;
  for (const digit of plain(value)) await page.locator(`[data-digit="${digit}"]`).click();
  await page.locator(`[data-unit="${unit}"]`).click();
  const asTyped = page.locator('.offer .key').first();
  if (await asTyped.isVisible()) await asTyped.click();
}

/** Digits and a point, never an exponent: what a pad can type. */
const plain = (value: number): string => value.toFixed(6).replace(/\.?0+$/, '');

function answerText(check: string, answer: string): string {
  return words?.checks[check]?.answers?.[answer] ?? named('outcomes', answer);
}

export function named(list: string, id: string): string {
  const text = words?.names[list]?.texts[id];
  if (text === undefined) throw new Error(`technician: no name for ${id} in ${list}`);
  return text;
}
