import { describe, expect, test } from 'vitest';
import { catalog } from '../../journeys/content.ts';
import type { Truth } from '../../journeys/truth.ts';
import { MASTER_WALKS } from './eight-walks.ts';
import { play, verdictOf } from './play.ts';

const known = catalog();

/** The act that the content gives the fault on this box. */
function actionOf({ fault, installation }: Truth): string {
  const record = known.faults[fault];
  const isPlug = known.boxes[installation.box ?? '']?.plugApart === true;
  return (isPlug ? record?.actionInPlugApart : undefined) ?? record?.action ?? '';
}

describe.each(Object.entries(MASTER_WALKS))('%s', (_name, walk) => {
  const truth: Truth = walk.truth;
  const played = play(truth);
  test('ends in the right repair, and says pull only where it is one', () => {
    const verdict = verdictOf(played);
    expect(verdict.action).toBe(actionOf(truth));
    expect(['named', 'group']).toContain(verdict.kind);
    expect(verdict.verdictClass.startsWith('pull')).toBe(known.actions[verdict.action]?.pull);
  });
  test('sums up in the open: no reading is asked twice', () => {
    expect(new Set(played.checks).size).toBe(played.checks.length);
  });
});

test('a hole in the pipe is not called a pull before the ohms and the insulation stand', () => {
  const { checks } = play(MASTER_WALKS['weak for weeks, never stops'].truth);
  expect(checks).toEqual(
    expect.arrayContaining(['ohms-yellow-black', 'insulation-system', 'leak-down-isolated']),
  );
});
