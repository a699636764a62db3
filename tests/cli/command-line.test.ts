import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inProcess } from './support/in-process.ts';
import { ohmwell } from './support/spawn.ts';

const CASES = fileURLToPath(new URL('../cases/', import.meta.url));
const JUNK_BYTES = 50_000_000;

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ohmwell-'));
});
afterAll(() => rm(folder, { recursive: true }));

const head = { format: 'ohmwell-case', version: 1, case: 'larch-hollow-9' };
const withEvent = (event: object): string => JSON.stringify({ ...head, events: [{ kind: 'opened' }, event] });
const ohms = (reading: unknown): string => withEvent({ kind: 'answer', check: 'ohms-yellow-black', reading });

describe('a bad case ends with 1 and one line that names the place', () => {
  test.each([
    ['an unknown field', ohms({ value: [4.2, 'ohm'], by: 'hand' }), 'events[1] › reading › by'],
    ['a wrong unit', ohms({ value: [4.2, 'V'] }), 'events[1] › reading › value[1]'],
    ['a negative ohm', ohms({ value: [-4.2, 'ohm'] }), 'events[1] › reading › value[0]'],
    ['letters for a number', ohms({ value: ['four', 'ohm'] }), 'events[1] › reading › value[0]'],
    [
      'an unknown check',
      withEvent({ kind: 'answer', check: 'ohms-yellow-blak', reading: { open: true } }),
      'events[1] › check',
    ],
    ['a missing version', JSON.stringify({ ...head, version: undefined, events: [] }), 'version'],
    ['another version', JSON.stringify({ ...head, version: 7, events: [] }), 'version'],
    ['no JSON', '{"format": "ohmwell-case",\n "version": 1,,}', 'line 2, column 15'],
  ])('%s', async (name, text, place) => {
    const file = `${name.replaceAll(' ', '-')}.json`;
    await writeFile(join(folder, file), text);
    const { code, out, err } = await ohmwell(['next', file], { cwd: folder });
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err.trim().split('\n')).toEqual([expect.stringContaining(`${file} › ${place}: `)]);
  });

  test('fifty megabytes of junk are refused by size', async () => {
    await writeFile(join(folder, 'junk.json'), Buffer.alloc(JUNK_BYTES, '['));
    const { code, out, err } = await ohmwell(['next', 'junk.json'], { cwd: folder });
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toBe(
      'junk.json: is larger than 2 MB, so it was not read. A case is far smaller: choose the case file itself.\n',
    );
  });
  test('and so are fifty megabytes on the standard input', async () => {
    const { code, err } = await ohmwell(['next', '-'], { cwd: folder, input: '['.repeat(JUNK_BYTES) });
    expect(code).toBe(1);
    expect(err).toContain('standard input: is larger than 2 MB');
  });
  test('a file that is not there', async () => {
    const { code, err } = await ohmwell(['expect', 'gone.json'], { cwd: folder });
    expect({ code, err }).toEqual({ code: 1, err: 'gone.json: is not there. Mend the path.\n' });
  });
  test('nothing was written beside the files of this test', async () => {
    expect((await readdir(folder)).filter((name) => !name.endsWith('.json'))).toEqual([]);
  });
});

describe('the real command, from a folder of its own', () => {
  test('without a command: 2 and the usage on the error output', async () => {
    const { code, out, err } = await ohmwell([], { cwd: folder });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('usage: ');
  });
  test('lists what is known', async () => {
    const { code, out, err } = await ohmwell(['list', 'boxes'], { cwd: folder });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(JSON.parse(out).map(({ id }: { id: string }) => id)).toContain('none-2-wire');
  });
});

describe('a command called wrongly ends with 2 and the usage', () => {
  test.each([
    [[], 'name a command'],
    [['nexd', 'case.json'], 'Did you mean "next"?'],
    [['constructor'], 'no command "constructor"'],
    [['next'], 'name one case file'],
    [['next', 'a.json', 'b.json'], 'one case file only'],
    [['next', 'a.json', '--fault', 'x'], 'no option --fault'],
    [['simulate', 'a.json'], 'name the fault'],
    [['list'], 'name one kind'],
    [['list', 'fualts'], 'Did you mean "faults"?'],
  ])('%j', async (words, message) => {
    const { code, out, err } = await inProcess(words, { cwd: folder });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
    expect(err).toContain('usage: ');
  });
});

describe('a good command ends with 0 and JSON', () => {
  const parsed = async (words: readonly string[], input?: string) => {
    const { code, out, err } = await inProcess(words, { cwd: CASES, input });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    return JSON.parse(out);
  };

  test('help goes to the standard output', async () => {
    const { code, out } = await inProcess(['help'], { cwd: folder });
    expect(code).toBe(0);
    expect(out).toContain('simulate CASE.json --fault ID');
  });
  test.each(['faults', 'checks', 'motors', 'boxes', 'conductors', 'instruments', 'circumstances', 'actions'])(
    'list %s: known ids, each once',
    async (kind) => {
      const ids = (await parsed(['list', kind])).map(({ id }: { id: string }) => id);
      expect(ids.length).toBeGreaterThan(3);
      expect(new Set(ids).size).toBe(ids.length);
    },
  );

  test('the pole of a two-wire switch that stays open is named, with the reading that shows it', async () => {
    const { next, suspects } = await parsed(['next', 'two-wire-switch-pole-open.json']);
    expect(next).toMatchObject({
      kind: 'verdict',
      verdict: { kind: 'named', action: 'replace-pressure-switch' },
    });
    expect(next.verdict.faults[0]).toMatchObject({ fault: 'switch-pole-open', variant: 'pole-2' });
    expect(next.verdict.evidence[0]).toMatchObject({ check: 'volts-pole-2', outcome: 'high' });
    expect(suspects[0].probability).toBeGreaterThan(0.95);
  });
  test('a start-only box whose start capacitor is open gets a matched lid', async () => {
    const { next } = await parsed(['next', 'start-only-hum.json']);
    expect(next).toMatchObject({ kind: 'verdict', verdict: { kind: 'named', action: 'fit-matched-lid' } });
    expect(next.verdict.faults[0].fault).toBe('start-capacitor-open');
  });
  test('a case in the middle: one next check with why, its window, and the site steps it needs', async () => {
    const { next, site, suspects } = await parsed(['next', 'start-and-run-1.5-hp.json']);
    // The file claims a lock-out; read from a file that is history, and the supply counts as live.
    expect(site).toBe('live');
    expect(['check', 'site-steps']).toContain(next.kind);
    expect(next.checks[0]).toMatchObject({
      check: expect.any(String),
      ask: expect.any(String),
      window: { kind: expect.any(String) },
    });
    expect(next.why).toMatchObject({ minutes: expect.any(Number), outcomes: expect.any(Array) });
    expect(next.missingSiteSteps).toBeInstanceOf(Array);
    expect(suspects.length).toBeGreaterThan(3);
  });
  test('the windows of an installation, cable by cable, each part with its source', async () => {
    const { windows } = await parsed(['expect', 'start-and-run-1.5-hp.json']);
    const window = windows.find(({ check }: { check: string }) => check === 'ohms-yellow-black').window;
    expect(window).toMatchObject({
      kind: 'range',
      low: [expect.any(Number), 'ohm'],
      high: [expect.any(Number), 'ohm'],
    });
    const cable = window.parts.find(({ name }: { name: string }) => name === 'cable');
    // 250 ft of copper 12 there and back: 250 × 2 × 1.6 to 1.7 ohm per 1000 ft, about 0.8 to 0.85 ohm.
    expect(cable.low[0]).toBeGreaterThan(0.7);
    expect(cable.high[0]).toBeLessThan(0.95);
    for (const { from } of window.parts)
      expect(from[0]).toMatchObject({ source: expect.any(String), mark: expect.any(String) });
  });
  test('a simulated fault reads what it must: an open pole shows the supply across itself', async () => {
    const { readings, variant } = await parsed([
      'simulate',
      'two-wire-switch-pole-open.json',
      '--fault',
      'switch-pole-open',
      '--variant=pole-2',
    ]);
    const of = (check: string) => readings.find((one: { check: string }) => one.check === check);
    expect(variant).toBe('pole-2');
    expect(of('volts-pole-2').outcome).toBe('high');
    expect(of('volts-pole-1').outcome).toBe('as-expected');
    expect(of('ohms-switch-pole-2')).toMatchObject({ reading: { open: true }, outcome: 'open' });
    expect(of('motor-sound').reading).toEqual({ answer: 'silence' });
  });
  test('a case on the standard input is the same case', async () => {
    const text = await readFile(join(CASES, 'two-wire-switch-pole-open.json'), 'utf8');
    const [piped, read] = [
      await parsed(['expect', '-'], text),
      await parsed(['expect', 'two-wire-switch-pole-open.json']),
    ];
    expect(piped).toEqual(read);
  });
  test('what simulate reads can be put into a case and is a case', async () => {
    const { readings } = await parsed([
      'simulate',
      'start-and-run-1.5-hp.json',
      '--fault',
      'wellhead-splice-resistive',
      '--severity',
      '2',
    ]);
    const answers = readings.flatMap(({ check, reading }: { check: string; reading?: unknown }) =>
      reading === undefined ? [] : [{ kind: 'answer', check, reading }],
    );
    const { code, err } = await inProcess(['expect', '-'], {
      cwd: folder,
      input: JSON.stringify({ ...head, events: answers }),
    });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(answers.length).toBeGreaterThan(30);
  });
});

describe('a simulation that cannot be', () => {
  test.each([
    [['--fault', 'switch-pole-opn'], 'Did you mean "switch-pole-open"?'],
    [['--fault', 'winding-main-open', '--variant', 'purple'], 'no variant "purple"'],
    [['--fault', 'contactor-jammed'], 'cannot occur on none-2-wire'],
    [['--fault', 'rotor-locked', '--severity', '2'], 'has no severity'],
    [['--fault', 'wellhead-splice-resistive', '--severity', 'much'], '"much" is not a number'],
    [['--fault', 'wellhead-splice-resistive', '--severity', '500'], 'is outside what'],
  ])('%j', async (words, message) => {
    const { code, out, err } = await inProcess(['simulate', 'two-wire-switch-pole-open.json', ...words], {
      cwd: CASES,
    });
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(message);
  });
});
