import { describe, expect, test } from 'vitest';
import { CASE_BYTES_MOST, readCaseText, writeCaseText } from '../../src/records/case-file.ts';
import { KNOWN } from './support/known.ts';

const read = (value: unknown) =>
  readCaseText(typeof value === 'string' ? value : JSON.stringify(value), { known: KNOWN });
const file = (...events: unknown[]) => ({
  format: 'ohmwell-case',
  version: 1,
  case: 'larch-hollow-1',
  events,
});
const answer = (check: string, reading: unknown, more: object = {}) => ({
  kind: 'answer',
  check,
  reading,
  ...more,
});

/** Everything that is wrong, as `path: message hint`. */
function problems(value: unknown): string[] {
  const found = read(value);
  if ('ok' in found) throw new Error('read without a problem');
  return found.problems.map(({ at, message, hint }) => `${at}: ${message}. ${hint}`);
}

function good(value: unknown) {
  const found = read(value);
  if ('problems' in found) throw new Error(JSON.stringify(found.problems));
  return found.ok;
}

const OPENED = { kind: 'opened', site: 'Larch Hollow' };

describe('one clear message for each mistake, with its path', () => {
  test.each([
    [
      'not JSON',
      '{"format": "ohmwell-case",\n  "version": 1,}',
      'line 2, column 16',
      ['not JSON', 'name in quotes'],
    ],
    ['cut off', '{"format": "ohmwell-case"', 'line 1, column 26', ['the end of the text']],
    ['empty', '', 'line 1, column 1', ['the end of the text']],
    ['a list', [], 'the file', ['not a case']],
    ['another format', { format: 'other', version: 1 }, 'format', ['"other"', 'ohmwell-case']],
    ['no format', { version: 1 }, 'format', ['missing']],
    [
      'missing version',
      { format: 'ohmwell-case', case: 'a', events: [] },
      'version',
      ['missing', '"version": 1'],
    ],
    ['older version', { ...file(), version: 0 }, 'version', ['version 0', 'Write "version": 1']],
    ['newer version', { ...file(), version: 2 }, 'version', ['version 2', 'update']],
    ['version in letters', { ...file(), version: '1' }, 'version', ['"1"']],
    ['unknown field of the file', { ...file(), extra: 1 }, 'extra', ['no field "extra"']],
    [
      'unknown field of an event',
      file(OPENED, { ...OPENED, colour: 'red' }),
      'events[1] › colour',
      ['no field "colour"'],
    ],
    ['unknown kind', file({ kind: 'answr' }), 'events[0] › kind', ['"answr"', 'Did you mean "answer"?']],
    ['no kind', file({}), 'events[0] › kind', ['missing', 'answer']],
    ['a case id with spaces', { ...file(), case: 'Larch Hollow' }, 'case', ['lower-case words']],
    ['events that are no list', { ...file(), events: {} }, 'events', ['list']],
    [
      'negative ohm',
      file(OPENED, answer('ohms-yellow-black', { value: [-4.2, 'ohm'] })),
      'events[1] › reading › value[0]',
      ['-4.2', 'at least 0'],
    ],
    [
      'letters for a number',
      file(answer('ohms-yellow-black', { value: ['four', 'ohm'] })),
      'events[0] › reading › value[0]',
      ['"four"', 'number'],
    ],
    [
      'a bare number',
      file(answer('ohms-yellow-black', { value: 4.2 })),
      'events[0] › reading › value',
      ['4.2', '[4.2, "ohm"]'],
    ],
    [
      'no unit',
      file(answer('ohms-yellow-black', { value: [4.2] })),
      'events[0] › reading › value',
      ['wrong length', '2 entries'],
    ],
    [
      'a unit that is none',
      file(answer('ohms-yellow-black', { value: [4.2, 'ohms'] })),
      'events[0] › reading › value[1]',
      ['"ohms"', 'Did you mean "ohm"?'],
    ],
    [
      'a unit of another quantity',
      file(answer('ohms-yellow-black', { value: [4.2, 'V'] })),
      'events[0] › reading › value[1]',
      ['not read in V', 'ohm, mohm, kohm, Mohm'],
    ],
    [
      'a number no meter shows',
      file(answer('ohms-yellow-black', { value: [1e300, 'Mohm'] })),
      'events[0] › reading › value[0]',
      ['no meter'],
    ],
    [
      'a reading in words',
      file(answer('ohms-yellow-black', '4.2 ohm')),
      'events[0] › reading',
      ['"4.2 ohm"'],
    ],
    [
      'an answer for a number',
      file(answer('ohms-yellow-black', { answer: 'fine' })),
      'events[0] › reading',
      ['is a number'],
    ],
    [
      'a number for an answer',
      file(answer('what-is-seen', { value: [1, 'ohm'] })),
      'events[0] › reading',
      ['in words', 'hums-or-trips'],
    ],
    [
      'an answer that is none',
      file(answer('what-is-seen', { answer: 'hums-or-trip' })),
      'events[0] › reading › answer',
      ['Did you mean "hums-or-trips"?'],
    ],
    [
      'a reading of two kinds',
      file(answer('ohms-yellow-black', { open: true, unstable: true })),
      'events[0] › reading › unstable',
      ['no field'],
    ],
    [
      'no reason for not taking',
      file(answer('ohms-yellow-black', { notTaken: 'lazy' })),
      'events[0] › reading › notTaken',
      ['no-tool'],
    ],
    [
      'unknown check',
      file(answer('ohms-yelow-black', { open: true })),
      'events[0] › check',
      ['Did you mean "ohms-yellow-black"?'],
    ],
    [
      'unknown check, nothing near',
      file(answer('weather', { open: true })),
      'events[0] › check',
      ['no check "weather"'],
    ],
    [
      'a name of the language',
      file(answer('constructor', { open: true })),
      'events[0] › check',
      ['no check "constructor"'],
    ],
    [
      'unknown motor',
      file({ kind: 'installation', set: { motor: '3-wire-1-hp-231' } }),
      'events[0] › set › motor',
      ['Did you mean "3-wire-1-hp-230"?'],
    ],
    ['unknown box', file({ kind: 'installation', set: { box: 'x' } }), 'events[0] › set › box', ['no box']],
    [
      'unknown conductor',
      file({ kind: 'installation', set: { drop: { conductor: 'copper-13' } } }),
      'events[0] › set › drop › conductor',
      ['Did you mean'],
    ],
    [
      'unknown instrument',
      file({ kind: 'kit', instruments: ['voltmeter', 'volt-meter'], meter: 'bench' }),
      'events[0] › instruments[1]',
      ['Did you mean "voltmeter"?'],
    ],
    [
      'unknown circumstance',
      file({ kind: 'circumstances', happened: ['flood'] }),
      'events[0] › happened[0]',
      ['no circumstance'],
    ],
    [
      'a length in volts',
      file({ kind: 'installation', set: { drop: { length: [250, 'V'] } } }),
      'events[0] › set › drop › length[1]',
      ['"V"', 'm, ft, in'],
    ],
    [
      'a negative length',
      file({ kind: 'installation', set: { drop: { length: [-250, 'ft'] } } }),
      'events[0] › set › drop › length',
      ['0 or more'],
    ],
    [
      'no volts',
      file({ kind: 'installation', set: { supply: { volts: [0, 'V'] } } }),
      'events[0] › set › supply › volts',
      ['above 0'],
    ],
    [
      'a range backwards',
      file({ kind: 'installation', set: { startCapacitor: [130, 105, 'uF'] } }),
      'events[0] › set › startCapacitor',
      ['backwards'],
    ],
    ['a time that is none', file({ ...OPENED, at: 'yesterday' }), 'events[0] › at', ['2026-03-01T09:30:00Z']],
    [
      'an id of another case',
      file({ ...OPENED, id: 'other-case:000001:us' }),
      'events[0] › id',
      ['another case'],
    ],
    [
      'an id that counts too far',
      file({ ...OPENED, id: 'larch-hollow-1:999999:us' }),
      'events[0] › id',
      ['too far'],
    ],
    [
      'an id twice',
      file({ ...OPENED, id: 'larch-hollow-1:000001:us' }, { kind: 'opened', id: 'larch-hollow-1:000001:us' }),
      'events[1] › id',
      ['twice'],
    ],
    [
      'a prototype',
      '{"format":"ohmwell-case","version":1,"case":"a","events":[{"kind":"opened","__proto__":{"site":"x"}}]}',
      'events[0] › __proto__',
      ['no field'],
    ],
  ])('%s', (_, value, at, parts) => {
    const told = problems(value);
    expect(told).toHaveLength(1);
    expect(told[0]).toContain(`${at}: `);
    for (const part of parts) expect(told[0]).toContain(part);
  });

  test('several mistakes are told together, each with its own path', () => {
    const told = problems(
      file(
        { ...OPENED, extra: 1 },
        answer('weather', { open: true }),
        answer('ohms-yellow-red', { value: [-1, 'ohm'] }),
      ),
    );
    expect(told.map((line) => line.split(': ')[0])).toEqual([
      'events[0] › extra',
      'events[1] › check',
      'events[2] › reading › value[0]',
    ]);
  });
  test('what is printed of a hostile value is short and holds no control characters', () => {
    const [line = ''] = problems(file({ kind: `\u001b[31m${'x'.repeat(5000)}\u202e` }));
    expect(line.length).toBeLessThan(400);
    expect(line).not.toMatch(/\p{Cc}|\p{Cf}/u);
  });
  test('a text beyond the cap is refused before it is parsed', () => {
    expect(problems('['.repeat(CASE_BYTES_MOST + 1))).toEqual([expect.stringContaining('larger than 2 MB')]);
  });
  test('nesting as deep as the cap allows is an ordinary mistake', () => {
    expect(problems('['.repeat(CASE_BYTES_MOST))[0]).toContain('not JSON');
  });
});

describe('a good file', () => {
  test('events without an id are numbered in their order by "file"', () => {
    expect(good(file(OPENED, OPENED)).events.map(({ id }) => id)).toEqual([
      'larch-hollow-1:000001:file',
      'larch-hollow-1:000002:file',
    ]);
  });
  test('events without an id among others come after the highest', () => {
    const ids = good(file(OPENED, { ...OPENED, id: 'larch-hollow-1:000007:us' })).events.map(({ id }) => id);
    expect(ids).toEqual(['larch-hollow-1:000007:us', 'larch-hollow-1:000008:file']);
  });
  test('a byte order mark and an event standing twice are no mistakes', () => {
    const twice = { ...OPENED, id: 'larch-hollow-1:000001:us' };
    expect(good(`\uFEFF${JSON.stringify(file(twice, twice))}`).events).toHaveLength(1);
  });
  test('is written the same whatever order it came in, and reads back the same', () => {
    const one = good(
      file(
        { ...OPENED, id: 'larch-hollow-1:000001:us' },
        answer('ohms-yellow-black', { value: [4.2, 'ohm'] }, { id: 'larch-hollow-1:000002:us' }),
      ),
    );
    const other = good(
      file(
        {
          id: 'larch-hollow-1:000002:us',
          reading: { value: [4.2, 'ohm'] },
          check: 'ohms-yellow-black',
          kind: 'answer',
        },
        { site: 'Larch Hollow', id: 'larch-hollow-1:000001:us', kind: 'opened' },
      ),
    );
    expect(writeCaseText(other)).toBe(writeCaseText(one));
    expect(good(writeCaseText(one))).toEqual(one);
  });
  test('is written for people: a line an event', () => {
    const text = writeCaseText(good(file(answer('ohms-yellow-black', { value: [4.2, 'ohm'] }))));
    expect(text).toBe(
      [
        '{',
        '  "format": "ohmwell-case",',
        '  "version": 1,',
        '  "case": "larch-hollow-1",',
        '  "events": [',
        '    {"id":"larch-hollow-1:000001:file","kind":"answer","check":"ohms-yellow-black","reading":{"value":[4.2,"ohm"]}}',
        '  ]',
        '}',
        '',
      ].join('\n'),
    );
  });
});
