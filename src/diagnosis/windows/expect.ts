import type { Check } from '../../schema/check.ts';
import type { System, SystemChoice } from '../system.ts';
import type { ExpectedWindow, WindowPart } from '../types.ts';
import { ampsWindow } from './amps.ts';
import { bandWindow } from './band.ts';
import { capacitanceWindow } from './capacitance.ts';
import type { Asked, Draft } from './draft.ts';
import { meterLimits } from './meter.ts';
import { ohmsWindow } from './ohms.ts';
import { sound } from './sound.ts';
import { sumWindow } from './sum-test.ts';
import { voltsWindow } from './volts.ts';
import { waterWindow } from './water.ts';

/**
 * What should this check read on this very installation, sound?
 *
 * Never a bare table: every window is a sum of parts (table, cable, temperature, supply, load,
 * meter), each with its sources. Where a discrete fact is unknown the window spans the choices that
 * are left.
 */
export function expectedWindow(asked: Asked, check: Check): ExpectedWindow {
  const base = { check: check.id, parts: [], quality: 'practice', fromMemory: false } as const;
  if ('answers' in check.reads) {
    const answer = check.expected ?? soundAnswer(asked.system, check);
    return answer === undefined
      ? { ...base, kind: 'unknown', missing: [] }
      : { ...base, kind: 'answer', answer };
  }
  const { choices } = asked.system;
  const drafts = ('water' in check.predict ? choices.slice(0, 1) : choices).map((choice) =>
    draft(asked, check, choice),
  );
  return combine(asked, check, drafts);
}

/** Windows of every check that exists on this installation, in the order of their ids. */
export function expectedWindows(asked: Asked, checks: readonly Check[]): Record<string, ExpectedWindow> {
  return Object.fromEntries(checks.map((check) => [check.id, expectedWindow(asked, check)]));
}

function draft(asked: Asked, check: Check, choice: SystemChoice): Draft {
  if (check.band !== undefined) return bandWindow(check);
  if ('sumTest' in check.predict) return sumWindow(asked, choice);
  if ('water' in check.predict) return waterWindow(asked, check, choice);
  if (!('reads' in check.predict)) return { kind: 'unknown', parts: [], quality: 'practice', missing: [] };
  switch (check.predict.reads) {
    case 'ohms':
    case 'insulation':
      return ohmsWindow(asked, check, choice);
    case 'volts':
    case 'volts-at-start':
      return voltsWindow(asked, check, choice);
    case 'amps':
    case 'amps-at-start':
    case 'watts':
    case 'residual':
      return ampsWindow(asked, check, choice);
    case 'capacitance':
    case 'capacitance-in-service':
      return capacitanceWindow(asked, check, choice);
    default: {
      const never: never = check.predict.reads;
      return never;
    }
  }
}

/** One window over all choices: the lowest low and the highest high, each with its own parts. */
function combine(asked: Asked, check: Check, drafts: readonly Draft[]): ExpectedWindow {
  const unit = 'unit' in check.reads ? check.reads.unit : '';
  const first = drafts[0];
  const base = {
    check: check.id,
    unit,
    parts: [],
    fromMemory: false,
    quality: first?.quality ?? 'practice',
  } as const;
  const ranges = drafts.filter((one) => one.kind === 'range');
  if (first === undefined || ranges.length === 0) {
    return first?.kind === 'open'
      ? { ...base, kind: 'open' }
      : { ...base, kind: 'unknown', missing: first?.missing ?? ['motor'] };
  }
  const lowest = ranges.reduce((best, one) => (sumOf(one, 'low') < sumOf(best, 'low') ? one : best));
  const highest = ranges.reduce((best, one) => (sumOf(one, 'high') > sumOf(best, 'high') ? one : best));
  const parts = withMeter(asked, check, joined(lowest, highest));
  const low = lowest.unbounded === 'low' ? {} : { low: Math.max(0, total(parts, 'low')) };
  const high = highest.unbounded === 'high' ? {} : { high: total(parts, 'high') };
  return { ...base, kind: 'range', ...low, ...high, parts, fromMemory: restsOnMemory(parts) };
}

function joined(lowest: Draft, highest: Draft): WindowPart[] {
  const names = [...new Set([...lowest.parts, ...highest.parts].map((part) => part.name))];
  return names.map((name) => {
    const low = lowest.parts.find((part) => part.name === name);
    const high = highest.parts.find((part) => part.name === name);
    return { name, low: low?.low ?? 0, high: high?.high ?? 0, from: (low ?? high)?.from ?? [] };
  });
}

function withMeter(asked: Asked, check: Check, parts: readonly WindowPart[]): WindowPart[] {
  const { relative, absolute } = meterLimits(asked.knowledge, check, asked.meter);
  const error = (end: 'low' | 'high'): number => relative * Math.abs(total(parts, end)) + absolute;
  const from = asked.knowledge.instruments[check.instrument]?.from ?? [];
  const meter: WindowPart = { name: 'meter', low: -error('low'), high: error('high'), from };
  return [...parts.filter((part) => part.low !== 0 || part.high !== 0), meter];
}

const total = (parts: readonly WindowPart[], end: 'low' | 'high'): number =>
  parts.reduce((sum, part) => sum + part[end], 0);
const sumOf = (one: Draft, end: 'low' | 'high'): number => total(one.parts, end);

function restsOnMemory(parts: readonly WindowPart[]): boolean {
  return parts.some(
    ({ name, from }) =>
      (name === 'table' || name === 'practice') && from.some((one) => one.mark === 'memory'),
  );
}

function soundAnswer(system: System, check: Check): string | undefined {
  const [choice] = system.choices;
  if (choice === undefined) return undefined;
  const reading = sound(choice.input, choice.spreads, check);
  return reading.kind === 'answer' ? reading.answer : undefined;
}
