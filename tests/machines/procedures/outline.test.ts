import { describe, expect, test } from 'vitest';
import { PROCEDURES } from '../../../machines/procedures/all.ts';
import { stepsOf } from '../../../machines/procedures/steps.ts';
import type { Answer } from '../../../src/cli/command.ts';
import { trees } from '../../../src/cli/commands/trees.ts';
import { catalogFrom } from '../../../src/proof/content.ts';

/** The trees as they are printed, for somebody of the trade to object to. */
const built = catalogFrom('content');

function printed(...operands: string[]): Promise<Answer> {
  if ('problems' in built) throw new Error(`content: ${JSON.stringify(built.problems[0])}`);
  const around = {
    catalog: built.catalog,
    readText: () => Promise.reject(new Error('trees reads no file; take the call away')),
  };
  return trees.run({ operands, flags: new Map() }, around);
}

const textOf = (answer: Answer): string => (answer.kind === 'text' ? answer.text : '');

describe('the tables', () => {
  test('tell which tree claims a fault, which asks a check, and what is left over', async () => {
    const text = textOf(await printed());
    expect(text).toMatch(/^ {2}tank-waterlogged +tank-and-cycling waterlogged$/m);
    expect(text).toMatch(/^ {2}by none: second-feed-live$/m);
    expect(text).toMatch(/^ {2}volts-breaker-1 +pump-feed$/m);
    expect(text).toMatch(/the planner's own: .*ohms-sum-test/);
    expect(text).toMatch(/^ {2}well-head +\d+ states +Well head +begins where another hands over$/m);
  });
});

describe.each(PROCEDURES)('the outline of $id', ({ id, machine }) => {
  test('tells each state that asks once, and every ending', async () => {
    const lines = textOf(await printed(id)).split('\n');
    for (const { state, check, ends } of stepsOf(machine).values()) {
      const told = lines.filter((line) => new RegExp(`(^|→ )${state}: `).test(line));
      if (ends === undefined) expect(told).toHaveLength(1);
      else expect(told.length).toBeGreaterThan(0);
      if (check !== undefined) expect(told[0]).toContain(`(${check})`);
    }
  });

  test('calls every check, answer, fault and tree by its name', async () => {
    const text = textOf(await printed(id));
    expect(text).not.toMatch(/unnamed/);
    expect(text.startsWith(`${id} (`)).toBe(false);
  });
});

describe('called wrongly', () => {
  test('a tree that is not there, or two of them', async () => {
    expect(await printed('deliveri')).toMatchObject({
      kind: 'usage',
      line: expect.stringContaining('delivery'),
    });
    expect(await printed('supply', 'well')).toMatchObject({ kind: 'usage' });
  });
});
