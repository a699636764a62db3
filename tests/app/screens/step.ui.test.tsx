import { fireEvent, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import type { SiteStepView } from '../../../machines/call/types.ts';
import type { ExpectedWindow } from '../../../src/diagnosis/types.ts';
import { CASE, callView, eventsOf, stage } from './harness.tsx';

const EVENTS = [
  { kind: 'opened', site: 'Larch Hollow' },
  { kind: 'person', role: 'qualified' },
] as const;

const lock: SiteStepView = {
  step: 'lock-and-tag',
  place: undefined,
  minutes: 2,
  says: { type: 'lock-and-tag' },
  hold: true,
  lines: ['lock-and-tag', 'try-to-start'],
  who: 'qualified',
};

const ohms: ExpectedWindow = {
  check: 'ohms-yellow-black',
  kind: 'range',
  low: 2.4,
  high: 3.1,
  unit: 'ohm',
  parts: [],
  quality: 'table',
  fromMemory: false,
};
const windows = {
  'ohms-yellow-black': ohms,
  'ohms-yellow-red': { ...ohms, check: 'ohms-yellow-red', low: 8.1, high: 10.3 },
  'ohms-black-red': { ...ohms, check: 'ohms-black-red', low: 9.8, high: 12.4 },
};
const SET = ['ohms-yellow-black', 'ohms-yellow-red', 'ohms-black-red'] as const;

const onSiteSteps = () =>
  callView({
    next: {
      kind: 'site-steps',
      steps: [lock],
      towards: ['ohms-yellow-black'],
      ranked: undefined,
      others: [],
    },
  });

const onOhms = () =>
  callView({
    windows,
    next: {
      kind: 'check',
      checks: SET.map((check) => ({ check, window: windows[check] })),
      procedure: 'motor-and-cable',
      ranked: undefined,
      others: [],
    },
  });

test('lock-out is not said by a tap, only by a press that is held', async () => {
  const { store } = await stage({ hash: `#/case/${CASE}/step`, events: EVENTS, view: onSiteSteps });
  const key = await screen.findByRole('button', { name: /Hold: done/ });
  fireEvent.pointerDown(key);
  fireEvent.pointerUp(key);
  expect(await eventsOf(store)).toHaveLength(2);
  fireEvent.pointerDown(key);
  await waitFor(
    async () => expect((await eventsOf(store)).at(-1)).toMatchObject({ event: { type: 'lock-and-tag' } }),
    {
      timeout: 4000,
    },
  );
});

test('every instruction that one press confirms is on screen', async () => {
  await stage({ hash: `#/case/${CASE}/step`, events: EVENTS, view: onSiteSteps });
  await screen.findByRole('button', { name: /Hold: done/ });
  expect(screen.getAllByText(/Done when/)).toHaveLength(2);
});

test('a step that cannot be done passes the check over with a reason', async () => {
  const { store } = await stage({ hash: `#/case/${CASE}/step`, events: EVENTS, view: onSiteSteps });
  await userEvent.click(await screen.findByRole('button', { name: 'Can’t do this' }));
  await userEvent.click(screen.getByRole('button', { name: 'not safe' }));
  await waitFor(async () =>
    expect((await eventsOf(store)).at(-1)).toMatchObject({
      check: 'ohms-yellow-black',
      reading: { notTaken: 'not-safe' },
    }),
  );
});

test('a set of three fills box by box; the unit key is the enter key; the screen moves on by itself', async () => {
  const { store } = await stage({ hash: `#/case/${CASE}/step`, events: EVENTS, view: onOhms });
  for (const [index, digits] of ['27', '92', '111'].entries()) {
    await screen.findByRole('button', { name: /enter$/ });
    for (const digit of digits) await userEvent.click(screen.getByRole('button', { name: digit }));
    await userEvent.click(screen.getByRole('button', { name: /enter$/ }));
    await waitFor(async () => expect(await eventsOf(store)).toHaveLength(3 + index));
  }
  const answers = (await eventsOf(store)).slice(2);
  expect(answers.map((one) => one.kind === 'answer' && one.check)).toEqual([...SET]);
  expect(answers[0]).toMatchObject({ reading: { value: [27, 'ohm'] } });
  await waitFor(() => expect(window.location.hash).toContain('/judged/'));
});

test('a reading a thousand times off is asked about before it counts', async () => {
  const { store } = await stage({ hash: `#/case/${CASE}/step`, events: EVENTS, view: onOhms });
  await userEvent.click(await screen.findByRole('button', { name: '3' }));
  await userEvent.click(screen.getByRole('button', { name: /kilohms/ }));
  await screen.findByText(/Which unit did the meter show/);
  expect(await eventsOf(store)).toHaveLength(2);
  await userEvent.click(screen.getByRole('button', { name: '3 Ω' }));
  await waitFor(async () =>
    expect((await eventsOf(store)).at(-1)).toMatchObject({ reading: { value: [3, 'ohm'] } }),
  );
});

test('a set that was begun comes back after a reload with its boxes filled', async () => {
  await stage({
    hash: `#/case/${CASE}/step`,
    events: [...EVENTS, { kind: 'answer', check: 'ohms-yellow-black', reading: { value: [2.7, 'ohm'] } }],
    view: () =>
      callView({
        windows,
        next: {
          kind: 'check',
          checks: SET.slice(1).map((check) => ({ check, window: windows[check] })),
          procedure: undefined,
          ranked: undefined,
          others: [],
        },
      }),
  });
  const boxes = await screen.findByRole('group', { name: 'Readings of this step' });
  expect(boxes).toHaveTextContent('2.7');
  expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Ohms yellow–red');
});

test('what was said about the site lapses when the page is opened afresh', async () => {
  const { store } = await stage({
    hash: `#/case/${CASE}/step`,
    events: [...EVENTS, { kind: 'site', event: { type: 'switch-off' } }],
    view: onSiteSteps,
  });
  await screen.findByRole('button', { name: /Hold: done/ });
  expect((await eventsOf(store)).at(-1)).toMatchObject({ kind: 'site', event: { type: 'lapsed' } });
});

test('STOP is on the screen and recorded at once', async () => {
  const { store } = await stage({ hash: `#/case/${CASE}/step`, events: EVENTS, view: onOhms });
  await userEvent.click(await screen.findByRole('button', { name: /^STOP/ }));
  await waitFor(async () =>
    expect((await eventsOf(store)).at(-1)).toMatchObject({ event: { type: 'stop-unsafe' } }),
  );
});

test('an engine that fails gives no advice and keeps the readings on screen', async () => {
  await stage({
    hash: `#/case/${CASE}/step`,
    events: [...EVENTS, { kind: 'answer', check: 'ohms-yellow-black', reading: { value: [2.7, 'ohm'] } }],
    view: () => {
      throw new Error('plant: floating node box.Y');
    },
  });
  await screen.findByRole('heading', { name: /No advice/ });
  expect(screen.getByText('plant: floating node box.Y')).toBeVisible();
  expect(screen.getByText('2.7 Ω')).toBeVisible();
  expect(screen.queryByRole('button', { name: /Done/ })).toBeNull();
});
