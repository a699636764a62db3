import type { Page } from 'playwright-core';
import { horsepower } from '../../src/app/hooks/horsepower.ts';
import { catalog } from './content.ts';
import { give, leaves, named, press, screenNow } from './technician.ts';
import type { Site, Truth } from './truth.ts';

interface Call {
  readonly truth: Truth;
  readonly site: Site;
  /** Called on each screen before it is left. */
  look?(screen: string): Promise<void>;
}

/** From an empty device to the first step: who is there, what is seen, what is known. */
export async function startCall(page: Page, address: string, call: Call): Promise<void> {
  await page.goto(address);
  await press(page, 'Start a call');
  await page.getByLabel('Name of the site').fill('Larch Hollow');
  await press(page, named('persons', 'qualified'));
  await call.look?.('start');
  await press(page, 'Start');
  await screenNow(page);
  for (const check of ['what-is-seen', 'breaker-lever', 'gauge-zone']) {
    await give(page, check, call.site.read(check));
  }
  await call.look?.('seen');
  await press(page, 'Begin');
  await call.look?.('known');
  await fillIn(page, call.truth);
  await press(page, 'Go on');
  await leaves(page, 'known');
}

/** The title block, line by line, as far as the truth has it. */
async function fillIn(page: Page, { installation }: Truth): Promise<void> {
  const { box, power, supply, buried, drop } = installation;
  const kind = catalog().boxes[box ?? ''];
  if (kind === undefined) throw new Error(`start: no box ${box}`);
  await line(page, 'Control box');
  await press(page, named('families', kind.family));
  const several = Object.values(catalog().boxes).filter((one) => one.family === kind.family).length > 1;
  if (several) await press(page, named('boxes', kind.id));
  await press(page, 'Next question');
  if (power !== undefined) await press(page, `${horsepower(power[0])} hp`);
  await press(page, 'Next question');
  if (supply?.volts !== undefined) await press(page, `${supply.volts[0]} V`);
  await press(page, 'Next question');
  for (const run of [buried, drop]) {
    const gauge = catalog().conductors[run?.conductor ?? '']?.gauge;
    if (gauge !== undefined) await press(page, String(gauge));
    if (run?.length !== undefined) await page.getByLabel('Length one way').fill(String(run.length[0]));
    await press(page, 'Next question');
  }
  await press(page, 'All lines');
}

async function line(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name }).first().click();
}
