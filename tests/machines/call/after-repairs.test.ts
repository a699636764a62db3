import { describe, expect, test } from 'vitest';
import { viewCall } from '../../../machines/call/call.ts';
import type { CaseEventInput } from '../../../src/schema/case.ts';
import { catalog } from '../../journeys/content.ts';
import { TRUTHS } from '../../journeys/truths.ts';
import { play, stateOf, verdictOf } from './play.ts';

const known = catalog();

describe('a repair that did not help', () => {
  const played = play(TRUTHS.tornTank);
  const { action } = verdictOf(played);
  const asFound: CaseEventInput[] = [
    { kind: 'person', role: 'qualified' },
    { kind: 'installation', set: TRUTHS.tornTank.installation },
    { kind: 'visit', type: 'motor-unknown' },
    ...played.state.answers.map(({ check, reading }): CaseEventInput => ({ kind: 'answer', check, reading })),
  ];
  const failed: CaseEventInput[] = [
    ...asFound,
    { kind: 'visit', type: 'consent-given' },
    { kind: 'visit', type: 'repaired', note: action },
    { kind: 'answer', check: 'fill-time', reading: { value: [7, 's'] }, asLeft: true },
    { kind: 'visit', type: 'repair-did-not-help' },
  ];
  const share = (events: CaseEventInput[]): number =>
    viewCall(known, stateOf(events))
      .suspects.filter((one) => one.action === action)
      .reduce((sum, one) => sum + one.probability, 0);

  test('takes the certainty back and lets the call go on', () => {
    expect(share(asFound)).toBeGreaterThan(0.99);
    expect(share(failed)).toBeLessThan(0.99);
    const { next } = viewCall(known, stateOf(failed));
    expect(['check', 'site-steps', 'verdict']).toContain(next.kind);
  });

  test('makes the reading as left one of what is found', () => {
    const { judged } = viewCall(known, stateOf(failed));
    expect(judged.map((one) => one.check)).toContain('fill-time');
    const before = viewCall(known, stateOf(failed.slice(0, -1)));
    expect(before.judged.map((one) => one.check)).not.toContain('fill-time');
  });

  test('without the note of what was repaired nothing is taken back', () => {
    const unsaid = failed.map((event) =>
      event.kind === 'visit' && event.type === 'repaired'
        ? { kind: 'visit' as const, type: 'repaired' }
        : event,
    );
    expect(share(unsaid)).toBeGreaterThan(share(failed));
  });
});
