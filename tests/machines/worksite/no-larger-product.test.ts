import { describe, expect, test } from 'vitest';
import type { AnyStateMachine } from 'xstate';
import { setup } from 'xstate';
import { PROCEDURES } from '../../../machines/procedures/all.ts';
import { everyEvent } from '../../../machines/worksite/events.ts';
import { SITE_STEPS, stepIds } from '../../../machines/worksite/step-table.ts';
import { siteSteps } from './support/site-steps.ts';

/**
 * The worksite machine is walked alone because no other machine holds the state of the site. This is
 * what would have to change before a larger product exists.
 */
const SITE_WORDS = new Set<string>(everyEvent().map(({ type }) => type));

/** What in a troubleshooting tree would be a second owner of the site. */
function siteStateIn(machine: AnyStateMachine): string[] {
  const heard = machine.events
    .filter((type) => SITE_WORDS.has(String(type)))
    .map((type) => `hears ${String(type)}`);
  const regions = machine.root.type === 'parallel' ? ['has regions'] : [];
  const remembers = machine.config.context === undefined ? [] : ['remembers'];
  return [...heard, ...regions, ...remembers];
}

describe('no troubleshooting tree holds the state of the site', () => {
  test.each(PROCEDURES)('$id', ({ machine }) => expect(siteStateIn(machine)).toEqual([]));

  test('one that did would be refused', () => {
    const tree = setup({}).createMachine({
      context: { isLocked: false },
      type: 'parallel',
      states: { box: { initial: 'open', states: { open: { on: { 'prove-dead': 'proved' } }, proved: {} } } },
    });
    expect(siteStateIn(tree)).toEqual(['hears prove-dead', 'has regions', 'remembers']);
  });
});

describe('every step can be shown', () => {
  test('each of its lines has minutes and words', () => {
    const { minutes, words } = siteSteps();
    const lines = stepIds.flatMap((id) => [...SITE_STEPS[id].lines]);
    expect(lines.filter((line) => !minutes.has(line))).toEqual([]);
    expect(lines.filter((line) => !words.has(line))).toEqual([]);
  });

  test('the proof of dead tells of both legs, of ground, of AC and of DC, and of the tester before and after', () => {
    const { words } = siteSteps();
    const proof = SITE_STEPS['prove-dead'].lines.map((line) => words.get(line) ?? '');
    expect(proof[0]).toMatch(/known|source|tester/i);
    expect(proof[1]).toMatch(/ground/i);
    expect(proof[1]).toMatch(/\bAC\b.*\bDC\b/s);
    expect(proof[1]).toMatch(/pair/i);
    expect(proof[2]).toMatch(/again|once more/i);
  });
});
