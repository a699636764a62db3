import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { CASE, callView, eventsOf, stage } from './harness.tsx';

const openedBy = (role: 'qualified' | 'caller') =>
  [
    { kind: 'opened', site: 'Larch Hollow' },
    { kind: 'person', role },
  ] as const;
const asking = () =>
  callView({ next: { kind: 'check', checks: [], procedure: undefined, ranked: undefined, others: [] } });

test('an empty device says so, and a call cannot start before somebody is named', async () => {
  const { store } = await stage({ hash: '#/' });
  await screen.findByText(/No case on this device yet/);
  await userEvent.click(screen.getByRole('button', { name: 'Start a call' }));
  const start = await screen.findByRole('button', { name: 'Start' });
  expect(start).toBeDisabled();
  await userEvent.type(screen.getByLabelText(/Name of the site/), 'Larch Hollow');
  await userEvent.click(screen.getByRole('button', { name: 'Qualified for live work' }));
  await userEvent.click(start);
  await screen.findByRole('heading', { name: 'What is seen?' });
  const [kept] = await store.list();
  expect(kept).toMatchObject({ site: 'Larch Hollow' });
  const { events } = await store.read(kept?.case ?? '');
  expect(events.map((event) => event.kind)).toEqual(['opened', 'person']);
});

test('each tap of the first screen is stored, a second one corrects it, and Begin waits for the first', async () => {
  const { store } = await stage({ hash: `#/case/${CASE}/seen`, events: openedBy('qualified'), view: asking });
  const begin = await screen.findByRole('button', { name: 'Begin' });
  expect(begin).toBeDisabled();
  await userEvent.click(screen.getByRole('button', { name: 'Hums, or trips' }));
  await waitFor(() =>
    expect(screen.getByRole('button', { name: 'Hums, or trips' })).toHaveAttribute('aria-pressed', 'true'),
  );
  expect(begin).toBeEnabled();
  await userEvent.click(screen.getByRole('button', { name: 'Silent, no pressure' }));
  await waitFor(async () => expect(await eventsOf(store)).toHaveLength(4));
  const [, , first, second] = await eventsOf(store);
  expect(second).toMatchObject({
    check: 'what-is-seen',
    reading: { answer: 'silent-without-pressure' },
    corrects: first?.id,
  });
});

test('the danger key stops the call at once', async () => {
  const { store } = await stage({
    hash: `#/case/${CASE}/seen`,
    events: openedBy('caller'),
    view: (state) =>
      state.siteEvents.some((one) => one.said.type === 'stop-unsafe')
        ? callView({ next: { kind: 'stopped', safeState: ['stop-hands-off', 'shut-the-door-and-leave'] } })
        : asking(),
  });
  await userEvent.click(await screen.findByRole('button', { name: /Tingle, burning smell/ }));
  await screen.findByRole('heading', { name: 'Stopped, unsafe' });
  expect((await eventsOf(store)).at(-1)).toMatchObject({ kind: 'site', event: { type: 'stop-unsafe' } });
});

test('a browser that keeps nothing is named on every screen, with the file one tap away', async () => {
  await stage({
    hash: `#/case/${CASE}/seen`,
    events: openedBy('qualified'),
    view: asking,
    refusesStorage: true,
  });
  await screen.findByText(/This browser keeps nothing/);
  expect(screen.getByRole('button', { name: 'Save the case file' })).toBeEnabled();
});

test('a family of boxes is stored with what follows from it, and "do not know" takes it back', async () => {
  const { store } = await stage({
    hash: `#/case/${CASE}/known/box`,
    events: openedBy('qualified'),
    view: asking,
  });
  await userEvent.click(await screen.findByRole('button', { name: 'Contactor box' }));
  await waitFor(async () =>
    expect((await eventsOf(store)).at(-1)).toMatchObject({
      kind: 'installation',
      set: { family: 'contactor', leads: '3-wire' },
    }),
  );
  const [unknown] = screen.getAllByRole('button', { name: 'Do not know' });
  if (unknown === undefined) throw new Error('no key for the unknown');
  await userEvent.click(unknown);
  await waitFor(async () =>
    expect((await eventsOf(store)).at(-1)).toMatchObject({
      kind: 'installation',
      unknown: expect.arrayContaining(['family', 'box']),
    }),
  );
});
