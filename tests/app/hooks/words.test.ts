import { expect, test } from 'vitest';
import { horsepower } from '../../../src/app/hooks/horsepower.ts';
import { plates } from '../../../src/app/hooks/installation-facts.ts';
import { motorName } from '../../../src/app/hooks/installation-options.ts';
import { factWithRow, motorRows } from '../../../src/app/hooks/motor-rows.ts';
import { stripWords } from '../../../src/app/hooks/strip-words.ts';
import { partsWords, readingWords, windowWords } from '../../../src/app/hooks/wording.ts';
import { textsOf } from '../../../src/app/words/texts.ts';
import type { Reading } from '../../../src/schema/case.ts';
import { installation } from '../../../src/schema/installation.ts';
import { content } from '../screens/content.ts';

const known = content();
const english = known.words.en;
if (english === undefined) throw new Error('no English words');
const texts = textsOf(english);

const ohms = {
  check: 'ohms-yellow-black',
  kind: 'range',
  low: 2.41,
  high: 3.12,
  unit: 'ohm',
  parts: [{ name: 'table', low: 1.8, high: 2.2, from: [{ source: 'a', where: 'b', mark: 'memory' }] }],
  quality: 'table',
  fromMemory: true,
} as const;

test('a window is worded with both ends, its unit and the mark of memory', () => {
  expect(windowWords(texts, ohms)).toBe('2.4–3.1 Ω ◇');
  expect(partsWords(texts, ohms)).toBe('motor table 1.8 to 2.2 Ω ◇');
});

test('a window with one end says over or up to', () => {
  const { high: _high, ...over } = { ...ohms, low: 2e6, unit: 'Mohm', fromMemory: false };
  expect(windowWords(texts, over)).toBe('over 2 MΩ');
  expect(windowWords(texts, { ...ohms, low: 0, fromMemory: false })).toBe('up to 3.1 Ω');
});

const READINGS: readonly [Reading, string][] = [
  [{ value: [4.7, 'ohm'] }, '4.7 Ω'],
  [{ open: true }, 'open'],
  [{ notTaken: 'no-tool' }, 'not taken: not the tool for it'],
];

test.each(READINGS)('reading %j is worded', (reading, words) => {
  expect(readingWords(texts, 'ohms-yellow-black', reading)).toBe(words);
});

test.each([
  [0.5, '1/2'],
  [0.75, '3/4'],
  [1, '1'],
  [1.5, '1 1/2'],
  [7.5, '7 1/2'],
  [15, '15'],
])('%d horsepower is printed as plates print it', (power, text) => {
  expect(horsepower(power)).toBe(text);
});

test('a motor row is known by itself once power, wires and kind of box leave only one', () => {
  const before = installation.parse({
    family: 'contactor',
    leads: '3-wire',
    box: 'contactor-loop-fed-from-l2',
  });
  const event = factWithRow(known, before, { set: { power: [3, 'hp'] } });
  expect(event).toMatchObject({ kind: 'installation', set: { motor: '3-wire-3hp-230v-start-and-run' } });
});

test('where several rows are left none is assumed, and an old row is dropped', () => {
  const before = installation.parse({ leads: '3-wire', motor: '3-wire-2hp-230v-start-and-run' });
  const event = factWithRow(known, before, { set: { power: [1, 'hp'] } });
  expect(event).toMatchObject({ unknown: ['motor'] });
  expect(motorRows(known, installation.parse({ leads: '3-wire', power: [1, 'hp'] })).length).toBeGreaterThan(
    1,
  );
});

test('no two rows of the motor table have the same name', () => {
  const names = plates(known).map((row) => motorName(texts, known, row.id));
  expect(new Set(names).size).toBe(names.length);
});

test('no text of the screens has two meanings', () => {
  const keys = Object.values(english.names)
    .filter(({ id }) => id.startsWith('ui-'))
    .flatMap((list) => Object.keys(list.texts));
  expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
});

test('the strip says LIVE as long as nothing is known', () => {
  expect(stripWords(texts, undefined)).toMatchObject({ word: 'live', title: 'LIVE until proved' });
});

const site = {
  word: 'locked',
  supply: 'locked',
  places: { panel: 'closed', switch: 'closed', box: 'proved', well: 'closed' },
  leads: 'lifted',
  charge: 'bled',
  disinfection: 'none',
  secondSource: 'possible',
  stopped: false,
  here: undefined,
  lapsed: false,
} as const;

test('dead at another place is not called proved here', () => {
  expect(stripWords(texts, site).title).toBe('LOCKED');
  expect(stripWords(texts, { ...site, here: 'well' }).title).toBe('LOCKED, not proved');
  expect(stripWords(texts, { ...site, word: 'proved', here: 'box' }).line).toMatch(/control box · AC and DC/);
});

test('after a lapse the strip asks to say it again', () => {
  expect(stripWords(texts, { ...site, word: 'live', supply: 'live', lapsed: true }).line).toMatch(
    /say it again/,
  );
});
