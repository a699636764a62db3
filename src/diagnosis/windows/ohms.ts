import type { PlantInput } from '../../plant/types.ts';
import type { Check } from '../../schema/check.ts';
import type { Motor } from '../../schema/motor.ts';
import type { Quantity, Range } from '../../units/units.ts';
import { figureOf } from '../judgements.ts';
import type { SystemChoice } from '../system.ts';
import type { WindowPart } from '../types.ts';
import { type Asked, cableEvidence, type Draft, evidenceFor } from './draft.ts';
import { meterLimits } from './meter.ts';
import { soundValue } from './sound.ts';

/**
 * Expected ohms: the plant measured at both ends of what is printed, one cause moved at a time, so
 * that the parts add up to the window. Copper in a cold well lies under the printed ohms, just after
 * a run above them.
 */
export function ohmsWindow(asked: Asked, check: Check, choice: SystemChoice): Draft {
  const low = endOf(asked, check, { choice, end: 'low' });
  const high = endOf(asked, check, { choice, end: 'high' });
  if (low === undefined || high === undefined)
    return { kind: 'unknown', parts: [], quality: 'table', missing: ['motor'] };
  const top = meterLimits(asked.knowledge, check, asked.meter).top;
  if (top !== undefined && low.table > top) return { kind: 'open', parts: [], quality: 'table' };
  const { motor, buried, drop } = choice.input;
  const parts: WindowPart[] = [
    { name: 'table', low: low.table, high: high.table, from: evidenceFor(motor.from, 'winding') },
    {
      name: 'temperature',
      low: low.temperature,
      high: high.temperature,
      from: asked.knowledge.judgements['winding-temperature']?.from ?? [],
    },
    {
      name: 'cable',
      low: low.cable,
      high: high.cable,
      from: cableEvidence(buried.conductor, drop.conductor),
    },
  ];
  return {
    kind: 'range',
    parts: parts.filter((part) => Math.abs(part.low) + Math.abs(part.high) > 1e-6),
    quality: 'table',
  };
}

/** Joints are counted with the cable. */
interface End {
  readonly table: number;
  readonly temperature: number;
  readonly cable: number;
}

/** Stands for no cable and no winding: the plant takes no conductor of exactly nothing. */
const ALMOST_NONE = 1e-9;

function endOf(
  asked: Asked,
  check: Check,
  at: { choice: SystemChoice; end: 'low' | 'high' },
): End | undefined {
  const { choice, end } = at;
  const warmth = figureOf(asked.knowledge.judgements, 'winding-temperature', warmthName(asked, end));
  const ohms = (temperature: number, cable: number): number | undefined =>
    soundValue(
      moved(choice.input, { end, temperature, cable, reach: (run) => reachOf(asked, choice, { run, end }) }),
      choice.spreads,
      check,
    );
  const joints = ohms(ALMOST_NONE, ALMOST_NONE);
  const table = ohms(1, ALMOST_NONE);
  const warm = ohms(warmth, ALMOST_NONE);
  const all = ohms(warmth, 1);
  if (joints === undefined || table === undefined || warm === undefined || all === undefined)
    return undefined;
  return { table: table - joints, temperature: warm - table, cable: all - warm + joints };
}

const warmthName = (asked: Asked, end: 'low' | 'high'): string =>
  end === 'low' ? 'cold' : asked.justRun ? 'justRun' : 'warm';

interface Moved {
  readonly end: 'low' | 'high';
  readonly temperature: number;
  readonly cable: number;
  reach(run: 'buried' | 'drop'): number;
}

function moved(input: PlantInput, to: Moved): PlantInput {
  const run = (name: 'buried' | 'drop'): PlantInput['buried'] => {
    const { conductor, length } = input[name];
    const share = to.cable === 1 ? conductor.spread[to.end] * to.reach(name) : to.cable;
    return { conductor, length: (length * share) as Quantity<'length'> };
  };
  return { ...input, motor: windingsAt(input.motor, to), buried: run('buried'), drop: run('drop') };
}

/** A run of unknown length may be much shorter or longer than the usual one that is assumed. */
export function reachOf(
  asked: Asked,
  choice: SystemChoice,
  at: { run: 'buried' | 'drop'; end: 'low' | 'high' },
): number {
  return choice.unknownRuns.includes(at.run)
    ? figureOf(asked.knowledge.judgements, 'unknown-length-range', at.end)
    : 1;
}

function windingsAt(motor: Motor, to: { end: 'low' | 'high'; temperature: number }): Motor {
  const { winding } = motor;
  if (winding === undefined) return motor;
  const at = (range: Range<'resistance'>): Range<'resistance'> => {
    const ohms = (range[to.end] * to.temperature) as Quantity<'resistance'>;
    return { low: ohms, high: ohms };
  };
  return 'lineToLine' in winding
    ? { ...motor, winding: { lineToLine: at(winding.lineToLine) } }
    : { ...motor, winding: { main: at(winding.main), start: at(winding.start) } };
}
