import { expect, test } from 'vitest';
import { viewCall } from '../../../machines/call/call.ts';
import type { CallView } from '../../../machines/call/types.ts';
import type { CaseEventInput } from '../../../src/schema/case.ts';
import { catalog } from '../../journeys/content.ts';
import { siteOf } from '../../journeys/truth.ts';
import { TRUTHS } from '../../journeys/truths.ts';
import { stateOf } from './play.ts';

const known = catalog();
const truth = TRUTHS.mainOverload;
const site = siteOf(known, truth);
const opening = ['what-is-seen', 'breaker-lever', 'gauge-zone'].map(
  (check): CaseEventInput => ({ kind: 'answer', check, reading: site.read(check) }),
);
const start: CaseEventInput[] = [
  { kind: 'person', role: 'qualified' },
  { kind: 'installation', set: truth.installation },
  { kind: 'visit', type: 'motor-unknown' },
  ...opening,
];

const viewOf = (events: readonly CaseEventInput[]): CallView => viewCall(known, stateOf(events));

/** Checks that the step is about, site steps still missing or not. */
function about({ next }: CallView): readonly string[] {
  if (next.kind === 'site-steps') return next.towards;
  return next.kind === 'check' ? next.checks.map((one) => one.check) : [];
}

test('a check that is asked for by name comes next, with its site steps before it', () => {
  expect(about(viewOf(start))).not.toContain('insulation-system');
  const asked = viewOf([...start, { kind: 'visit', type: 'asked-for.insulation-system' }]);
  expect(about(asked)).toContain('insulation-system');
  expect(asked.next.kind).toBe('site-steps');
});

test('once it is answered the planner chooses again', () => {
  const answered = viewOf([
    ...start,
    { kind: 'visit', type: 'asked-for.insulation-system' },
    { kind: 'answer', check: 'insulation-system', reading: site.read('insulation-system') },
  ]);
  expect(about(answered)).not.toContain('insulation-system');
});

test('a check that this installation lacks is not asked for', () => {
  const view = viewOf([...start, { kind: 'visit', type: 'asked-for.ohms-two-wire' }]);
  expect(about(view)).toEqual(about(viewOf(start)));
});
