import { cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import type { ExpectedWindow, Verdict } from '../../../src/diagnosis/types.ts';
import type { EventDraft } from '../../../src/records/recorded.ts';
import { CASE, callView, eventsOf, stage } from './harness.tsx';

const EVENTS: readonly EventDraft[] = [
  { kind: 'opened', site: 'Larch Hollow' },
  { kind: 'person', role: 'qualified' },
  { kind: 'answer', check: 'start-capacitance', reading: { value: [4, 'uF'] } },
  {
    kind: 'answer',
    check: 'start-capacitance',
    reading: { value: [0.4, 'uF'] },
    corrects: `${CASE}:000003:test`,
  },
];

const capacitance: ExpectedWindow = {
  check: 'start-capacitance',
  kind: 'range',
  low: 100e-6,
  high: 132e-6,
  unit: 'uF',
  parts: [{ name: 'label', low: 105e-6, high: 126e-6, from: [{ source: 'a', where: 'b', mark: 'memory' }] }],
  quality: 'nameplate',
  fromMemory: true,
};

const open = { fault: 'start-capacitor-open', variant: 'open', action: 'replace-start-capacitor' };
const verdict: Verdict = {
  kind: 'named',
  verdictClass: 'surface',
  action: 'replace-start-capacitor',
  faults: [{ ...open, probability: 0.994 }],
  probability: 0.994,
  evidence: [
    {
      check: 'start-capacitance',
      reading: { value: [0.4, 'uF'] },
      outcome: 'low',
      window: capacitance,
      weight: 4,
      rulesOut: ['winding-main-open'],
    },
  ],
  causes: [],
  owed: [],
  proof: [{ ...capacitance, check: 'amps-red', unit: 'A', low: 0, high: 1.4 }],
};

const withVerdict = (over: Partial<Verdict> = {}) =>
  callView({ next: { kind: 'verdict', verdict: { ...verdict, ...over } } });

test('a named verdict shows what was read against what was expected, the repair and the empty proof run', async () => {
  const { store } = await stage({ hash: `#/case/${CASE}/step`, events: EVENTS, view: () => withVerdict() });
  await screen.findByRole('heading', { level: 1, name: /Start capacitor/ });
  expect(screen.getByText('Do not pull.')).toBeVisible();
  const evidence = screen.getByRole('table');
  expect(evidence).toHaveTextContent('0.4 µF');
  expect(evidence).toHaveTextContent('100–132 µF ◇');
  expect(screen.getByText('Would overturn it:')).toBeVisible();
  expect(screen.getByText('Its steps are shown once the site is safe for them.')).toBeVisible();
  await userEvent.click(screen.getByRole('button', { name: 'Make it safe and repair' }));
  await waitFor(async () =>
    expect((await eventsOf(store)).at(-1)).toMatchObject({ kind: 'visit', type: 'consent-given' }),
  );
});

test('the steps of the repair are shown when no site step is missing, and not to those it is not for', async () => {
  const repair = (refer: 'qualified' | undefined) =>
    callView({ next: { kind: 'repair', steps: [], verdict, refer } });
  const { store } = await stage({
    hash: `#/case/${CASE}/step`,
    events: EVENTS,
    view: () => repair(undefined),
  });
  await userEvent.click(await screen.findByRole('button', { name: 'Repaired: prove it' }));
  await waitFor(async () =>
    expect((await eventsOf(store)).at(-1)).toMatchObject({ kind: 'visit', type: 'repaired' }),
  );
  cleanup();
  await stage({ hash: `#/case/${CASE}/step`, events: EVENTS, view: () => repair('qualified') });
  await screen.findByText('Its steps are shown once the site is safe for them.');
  expect(screen.queryByRole('button', { name: 'Repaired: prove it' })).toBeNull();
});

test('a pull is said in words', async () => {
  await stage({
    hash: `#/case/${CASE}/step`,
    events: EVENTS,
    view: () => withVerdict({ verdictClass: 'pull' }),
  });
  await screen.findByText('Pull the pump.');
});

test('a contradiction names the reading to take again and offers no repair', async () => {
  await stage({
    hash: `#/case/${CASE}/step`,
    events: EVENTS,
    view: () => withVerdict({ kind: 'contradiction', takeAgain: 'start-capacitance' }),
  });
  await screen.findByRole('heading', { name: 'These readings disagree' });
  expect(screen.getByRole('button', { name: 'Take it again' })).toBeVisible();
  expect(screen.queryByRole('button', { name: 'Make it safe and repair' })).toBeNull();
});

test('the report prints no probability, and the corrected reading with the one before', async () => {
  await stage({ hash: `#/case/${CASE}/report`, events: EVENTS, view: () => withVerdict() });
  const sheet = await screen.findByRole('article');
  expect(sheet).toHaveTextContent('Larch Hollow');
  expect(sheet).toHaveTextContent('0.4 µF');
  expect(sheet).not.toHaveTextContent(/in 100|%|0\.99/);
  expect(sheet).toHaveTextContent(/printed on the part 105 to 126 µF ◇/);
  expect(sheet).toHaveTextContent(/Lock out and prove dead/);
});

test('the trail shows both readings, the corrected one struck, and a tap opens the one that stands', async () => {
  await stage({ hash: `#/case/${CASE}/trail`, events: EVENTS, view: () => withVerdict() });
  const struck = await screen.findByText('corrected');
  expect(struck.closest('li')).toHaveTextContent('4 µF');
  await userEvent.click(screen.getByRole('button', { name: /0\.4 µF/ }));
  await screen.findByRole('heading', { name: /^Correct:/ });
  expect(screen.getByText(/Read before: 0\.4 µF/)).toBeVisible();
});

test('suspects are told in hundredths, and each ruled-out one names its reading', async () => {
  await stage({
    hash: `#/case/${CASE}/suspects`,
    events: EVENTS,
    view: () =>
      callView({
        ...withVerdict(),
        judged: [{ check: 'start-capacitance', reading: { value: [0.4, 'uF'] }, outcome: 'low' }],
        suspects: [
          { ...open, probability: 0.71 },
          {
            fault: 'start-capacitor-weak',
            variant: 'open',
            action: 'replace-start-capacitor',
            probability: 0.2,
          },
          {
            fault: 'winding-main-open',
            variant: 'main',
            action: 'pull-pump',
            probability: 0.001,
            ruledOutBy: 'start-capacitance',
          },
        ],
      }),
  });
  await screen.findByText('71 in 100');
  expect(screen.getByText(/One repair for these/)).toBeVisible();
  const ruledOut = screen.getByRole('heading', { name: 'Ruled out, by which reading' }).closest('section');
  if (ruledOut === null) throw new Error('no list of what is ruled out');
  expect(within(ruledOut).getByText(/0\.4 µF/)).toBeVisible();
});

test('a proof run that is held offers the close, and an odd reading says that nothing is proved', async () => {
  const { store } = await stage({
    hash: `#/case/${CASE}/step`,
    events: EVENTS,
    view: () =>
      callView({
        next: {
          kind: 'proof',
          steps: [],
          check: undefined,
          cannotRead: [],
          done: [{ check: 'amps-red', reading: { value: [6, 'A'] }, outcome: 'high' }],
          verdict,
        },
      }),
  });
  await screen.findByText(/the repair is not proved/);
  await userEvent.click(screen.getByRole('button', { name: 'It did not help' }));
  await waitFor(async () =>
    expect((await eventsOf(store)).at(-1)).toMatchObject({ kind: 'visit', type: 'repair-did-not-help' }),
  );
});

test('a call that was closed without a repair shows that it is closed', async () => {
  await stage({
    hash: `#/case/${CASE}/step`,
    events: [...EVENTS, { kind: 'visit', type: 'closed' }],
    view: () => ({ ...withVerdict({ kind: 'watch' }), visit: 'closed' }),
  });
  await screen.findByRole('heading', { name: 'Closed' });
});
