import { describe, expect, test } from 'vitest';
import { resolveSystem } from '../../src/diagnosis/system.ts';
import type { EvidenceLine, ExpectedWindow } from '../../src/diagnosis/types.ts';
import { owedRules, type RuleSubject } from '../../src/diagnosis/verdict/rules.ts';
import { expectedWindow } from '../../src/diagnosis/windows/expect.ts';
import { judge } from '../../src/diagnosis/windows/judge.ts';
import { sumTest } from '../../src/diagnosis/windows/sum-test.ts';
import { catalogFrom } from '../../src/proof/content.ts';
import { type InstallationInput, installation } from '../../src/schema/installation.ts';

const built = catalogFrom('content');
if ('problems' in built) throw new Error(`content has ${built.problems.length} problems`);
const { catalog } = built;

function windowOf(check: string, known: InstallationInput, justRun = false): ExpectedWindow {
  const system = resolveSystem(catalog, installation.parse(known));
  const record = catalog.checks[check];
  if (record === undefined) throw new Error(`no check ${check}`);
  return expectedWindow({ knowledge: catalog, system, meter: 'ordinary', justRun }, record);
}

const part = (window: ExpectedWindow, name: string) => window.parts.find((one) => one.name === name);

describe('expected ohms are table + temperature + cable + meter', () => {
  const twoWire: InstallationInput = {
    box: 'none-2-wire',
    motor: '2-wire-0.75hp-230v',
    buried: { conductor: 'copper-12', length: [0, 'ft'] },
    drop: { conductor: 'copper-12', length: [190, 'ft'] },
  };
  const window = windowOf('ohms-two-wire', twoWire);

  test('3/4 hp two-wire on 190 ft of AWG 12: 3.0 to 3.6 from the table', () => {
    expect(part(window, 'table')?.low).toBeCloseTo(3.0, 2);
    expect(part(window, 'table')?.high).toBeCloseTo(3.6, 2);
    // cold copper: 6 % of 3.0
    expect(part(window, 'temperature')?.low).toBeCloseTo(-0.18, 2);
  });
  test('0.338 ohm per 100 ft of pair, 0.88 to 1.05 of it: 0.57 to 0.67, joints aside', () => {
    expect(part(window, 'cable')?.low).toBeGreaterThan(0.56);
    expect(part(window, 'cable')?.low).toBeLessThan(0.62);
    expect(part(window, 'cable')?.high).toBeGreaterThan(0.67);
    expect(part(window, 'cable')?.high).toBeLessThan(0.73);
  });
  test('the ends are the sums of the parts', () => {
    for (const end of ['low', 'high'] as const) {
      expect(window[end]).toBeCloseTo(
        window.parts.reduce((sum, one) => sum + one[end], 0),
        9,
      );
    }
  });
  test('every part names its source', () => {
    for (const { name, from } of window.parts) expect([name, from.length > 0]).toEqual([name, true]);
  });
  test('a motor that has just run may read 13 % higher', () => {
    expect(part(windowOf('ohms-two-wire', twoWire, true), 'temperature')?.high).toBeCloseTo(0.13 * 3.6, 2);
  });
  test('figures from memory are marked', () => {
    expect(window.fromMemory).toBe(true);
  });
});

describe('the sum test needs no motor table', () => {
  test('3.3, 11.8 and 14.3 leave 0.4 ohm in yellow', () => {
    expect(sumTest({ yellowBlack: 3.3, yellowRed: 11.8, blackRed: 14.3 })).toBeCloseTo(0.4, 9);
  });
});

describe('judge is the only comparison', () => {
  const volts: ExpectedWindow = {
    check: 'volts',
    kind: 'range',
    low: 207,
    high: 253,
    unit: 'V',
    parts: [],
    quality: 'practice',
    fromMemory: false,
  };
  const none = 0.05;
  test.each([
    [{ value: [242, 'V'] as [number, 'V'] }, 'as-expected'],
    [{ value: [190, 'V'] as [number, 'V'] }, 'low'],
    [{ value: [268, 'V'] as [number, 'V'] }, 'high'],
    [{ value: [1, 'V'] as [number, 'V'] }, 'none'],
    [{ value: [900, 'mV'] as [number, 'mV'] }, 'none'],
    [{ unstable: true as const }, 'unstable'],
    [{ notTaken: 'no-tool' as const }, 'not-taken'],
  ])('%j is %s', (reading, outcome) => {
    expect(judge(reading, volts, none).outcome).toBe(outcome);
  });
  test('over-range is the best an insulation test can show, and open for a winding', () => {
    const insulation: ExpectedWindow = {
      check: 'i',
      kind: 'range',
      low: 2e6,
      unit: 'Mohm',
      parts: [],
      quality: 'practice',
      fromMemory: false,
    };
    expect(judge({ open: true }, insulation, none).outcome).toBe('as-expected');
    const winding: ExpectedWindow = { ...insulation, low: 2, high: 3, unit: 'ohm' };
    expect(judge({ open: true }, winding, none).outcome).toBe('open');
  });
  test('says by how much', () => {
    expect(judge({ value: [260, 'V'] }, volts, none).by).toBeCloseTo(7, 9);
  });
});

describe('hard rules of the verdict', () => {
  const pump = catalog.actions['pull-pump'];
  if (pump === undefined) throw new Error('no action pull-pump');
  const rules = Object.values(catalog.rules);
  const line = (check: string, weight: number, more: Partial<EvidenceLine> = {}): EvidenceLine => ({
    check,
    reading: { open: true },
    outcome: 'open',
    window: {
      check,
      kind: 'range',
      low: 1,
      high: 2,
      unit: 'ohm',
      parts: [],
      quality: 'table',
      fromMemory: true,
    },
    weight,
    rulesOut: [],
    ...more,
  });
  const subject = (evidence: EvidenceLine[], more: Partial<RuleSubject> = {}): RuleSubject => ({
    action: pump,
    faults: ['winding-main-open'],
    evidence,
    noBuriedRun: false,
    applies: (check) => !check.includes('two-wire'),
    ...more,
  });
  const box = ['ohms-yellow-black', 'ohms-yellow-red', 'ohms-black-red', 'insulation-system'].map((check) =>
    line(check, 1),
  );
  const owed = (at: RuleSubject) => [...new Set(owedRules(rules, at).map((one) => one.rule))];

  test('pulling owes the three ohms, the insulation and the well head', () => {
    expect(owed(subject([]))).toEqual(['pull-needs-ohms-and-insulation', 'pull-needs-well-head']);
    expect(owed(subject(box))).toEqual(['pull-needs-well-head']);
    expect(owed(subject([...box, line('ohms-well-yellow-black', 2)]))).toEqual([]);
  });
  test('without a buried run the box end is the well-head end', () => {
    expect(owed(subject(box, { noBuriedRun: true }))).toEqual([]);
  });
  test('a reading that was not taken pays nothing', () => {
    const missing = box.map((one) =>
      one.check === 'insulation-system' ? { ...one, outcome: 'not-taken' } : one,
    );
    expect(owed(subject([...missing, line('ohms-well-yellow-black', 2)]))).toEqual([
      'pull-needs-ohms-and-insulation',
    ]);
  });
  test('a table figure from memory condemns nothing alone', () => {
    const high = (check: string) => line(check, 2, { reading: { value: [9, 'ohm'] }, outcome: 'high' });
    const all = [...box.map(({ check }) => high(check)), high('ohms-well-yellow-black')];
    expect(owed(subject(all))).toContain('not-on-memory-alone');
  });
  test('a surface repair owes nothing of this', () => {
    const action = catalog.actions['replace-pressure-switch'];
    if (action === undefined) throw new Error('no action replace-pressure-switch');
    expect(owed(subject([], { action, faults: ['switch-pole-open'] }))).toEqual([]);
  });
});
