import { describe, expect, test } from 'vitest';
import { type Separation, separate } from '../../src/proof/separate.ts';
import { separationProblems } from '../../src/proof/separate-problems.ts';
import type { Check } from '../../src/schema/check.ts';
import type { Fault } from '../../src/schema/fault.ts';
import { check, fault, only, small } from './support/small.ts';

/** Faults that change nothing and checks that nothing moves, on an installation with a start-and-run box. */
const sites = only('start-and-run');
const START = check('start-capacitance');
const open = fault('start-capacitor-open');

const found = (faults: readonly Fault[], checks: readonly Check[]): Separation =>
  separate(small(faults, checks), { sites });
const messages = (one: Separation): string[] =>
  separationProblems(one).map(({ at, message }) => `${at}: ${message}`);

const idle: Fault = {
  ...fault('start-capacitor-open'),
  id: 'does-nothing',
  variants: [{ id: 'nothing', edits: [] }],
  signs: [],
};

describe('a fault that does nothing', () => {
  test('is named', () => {
    expect(messages(found([open, idle], [START]))).toEqual(['faults/does-nothing: changes no reading']);
  });

  test('is none when it is what a sound system is called', () => {
    expect(found([open, { ...idle, verdict: 'normal' }], [START]).still).toEqual([]);
  });

  test('does something as soon as it has a sign that differs', () => {
    const look = check('look-box');
    const answer =
      'answers' in look.reads ? look.reads.answers.find((one) => one !== look.expected) : undefined;
    if (answer === undefined) throw new Error('look-box has one answer only');
    const signed: Fault = { ...idle, signs: [{ check: look.id, answer, how: 'usually' }] };
    expect(found([signed], [look]).still).toEqual([]);
  });

  test('a sign that is seldom seen is not enough', () => {
    const look = check('look-box');
    const signed: Fault = { ...idle, signs: [{ check: look.id, answer: 'burnt-blade', how: 'seldom' }] };
    expect(found([signed], [look]).still).toEqual(['does-nothing']);
  });

  test('one variant that does nothing is named beside one that does', () => {
    const half: Fault = { ...open, variants: [...open.variants, { id: 'nothing', edits: [] }] };
    expect(found([half], [START]).still).toEqual(['start-capacitor-open › nothing']);
  });

  test('one that can occur on none of the installations is listed apart', () => {
    const elsewhere = fault('start-switch-inside-failed');
    const one = found([open, elsewhere], [START]);
    expect(one.nowhere).toEqual(['start-switch-inside-failed']);
    expect(one.still).toEqual([]);
  });
});

describe('a check that nothing moves', () => {
  const ohms = check('ohms-disconnect-1');
  const proofless = { ...small([], []).actions };

  test('is named', () => {
    expect(messages(found([open], [START, ohms]))).toEqual(['checks/ohms-disconnect-1: no fault moves it']);
  });

  test('serves all the same when it tells the interlock something', () => {
    const telling = { ...ohms, says: [{ fact: 'overload-read' as const }] };
    expect(found([open], [START, telling]).unmoved).toEqual([]);
  });

  test('serves all the same when it proves a repair', () => {
    const [action] = Object.values(proofless);
    if (action === undefined) throw new Error('no action');
    const proved = { ...action, proof: [ohms.id] };
    const catalog = { ...small([open], [START, ohms]), actions: { [proved.id]: proved } };
    expect(separate(catalog, { sites }).unmoved).toEqual([]);
  });

  test('is moved by a fault that only another fault is told from', () => {
    const look = check('look-box', {
      usual: [
        { answer: 'clean', how: 'even' },
        { answer: 'burnt-blade', how: 'even' },
      ],
    });
    const one: Fault = { ...idle, id: 'one', signs: [{ check: look.id, answer: 'clean', how: 'usually' }] };
    const other: Fault = {
      ...idle,
      id: 'other',
      signs: [{ check: look.id, answer: 'burnt-blade', how: 'usually' }],
    };
    expect(found([one, other], [look]).unmoved).toEqual([]);
  });
});

test('a check that the interlock lets nobody take is named with the rule', () => {
  const impossible = check('start-capacitance', { hazards: ['unheard-of'] });
  const one = found([open], [impossible]);
  expect(one.forbidden).toEqual([{ check: 'start-capacitance', why: 'hazards-known' }]);
  expect(messages(one)).toContain(
    'checks/start-capacitance: the interlock lets nobody take it: hazards-known',
  );
});

test('a group of one is a slip of the name', () => {
  const alone = { ...open, together: 'start-capacitor' };
  expect(messages(found([alone], [START]))).toEqual([
    'faults/start-capacitor-open › together: nothing else is kept together under start-capacitor',
  ]);
});

test('progress is told', () => {
  const lines: string[] = [];
  separate(small([open], [START]), { sites, progress: (line) => lines.push(line) });
  expect(lines[0]).toBe('start-and-run: setting up');
});
