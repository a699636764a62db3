import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/cli/command.ts';
import { separate } from '../../src/cli/commands/separate.ts';
import { check, fault, small } from '../proof/support/small.ts';
import { inProcess } from './support/in-process.ts';

/** The command on a catalogue of a few faults; the whole one takes more than a minute. */
const twin = fault('start-capacitor-open', { id: 'start-capacitor-gone', action: 'replace-box' });
const catalog = small(
  [
    fault('start-capacitor-open'),
    twin,
    fault('nothing-wrong', { signs: [] }),
    { ...twin, id: 'start-capacitor-lost' },
    fault('motor-protector-open', { together: 'pull' }),
    fault('winding-main-open', { together: 'pull' }),
  ],
  [check('start-capacitance'), check('ohms-yellow-black')],
);

const lines: string[] = [];
async function textOf(...flags: [string, string][]): Promise<string> {
  const around = {
    catalog,
    readText: () => Promise.reject(new Error('no file')),
    tell: (line: string) => lines.push(line),
  };
  const given = { operands: [], flags: new Map([['site', 'start-and-run'], ...flags]) };
  const answer: Answer = await separate.run(given, around);
  if (answer.kind !== 'text') throw new Error(`no text: ${JSON.stringify(answer)}`);
  return answer.text;
}

describe('the page', () => {
  test('says what nothing tells apart, what one act does, and what is kept together', async () => {
    const text = await textOf();
    expect(text).toMatch(/^installations: start-and-run$/m);
    expect(text).toMatch(/faults\/start-capacitor-open: nothing tells it from start-capacitor-gone/);
    expect(text).toMatch(/start-capacitor-open ~ nothing-wrong: by start-capacitance \(\d+ min\), \d/);
    expect(text).toMatch(/^ {2}pull: motor-protector-open, winding-main-open → pull-pump$/m);
  });

  test('shows the long lists only when asked', async () => {
    expect(await textOf()).not.toContain('with one repair');
    expect(await textOf(['all', ''])).toContain('with one repair');
  });

  test('tells how far it has come', () => {
    expect(lines).toContain('start-and-run: setting up');
  });
});

describe('called wrongly', () => {
  test.each([
    [['case.json'], 'takes no case file'],
    [['--site', 'contacter'], 'contactor'],
    [['--site'], '--site needs a value'],
  ])('%s', async (words, told) => {
    const wrong = await inProcess(['separate', ...words], { cwd: '/' });
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain(told);
  });
});
