import type { Catalog } from '../../catalog/catalog.ts';
import { requestOf } from '../../diagnosis/belief/channel.ts';
import { signsOf } from '../../diagnosis/belief/hypotheses.ts';
import { meterLimits } from '../../diagnosis/windows/meter.ts';
import type { PlantReading } from '../../plant/types.ts';
import type { Person } from '../../schema/basics.ts';
import type { Reading } from '../../schema/case.ts';
import type { Check } from '../../schema/check.ts';
import { UNITS } from '../../units/units.ts';
import type { Offsets, Play } from './plays.ts';
import { type Random, randomFrom, seedOf } from './random.ts';
import { drawnAnswer, mistaken, type Signs } from './signs.ts';
import type { Truth } from './truth.ts';

/**
 * The simulated site: asked for a check, it shows what a meter or a person would show there.
 *
 * A sign is drawn once, so that looking twice shows the same; the error of the meter, and whether somebody
 * is mistaken, is drawn anew each time. Every draw hangs on the call and the check alone, so that another
 * order of the same checks reads the same.
 */
export interface Site {
  /** @param mended after the right repair; the proof readings come from here */
  read(check: Check, mended?: boolean): Reading;
}

export interface SiteInput {
  /** What is known of meters, people and signs: the engine's own catalog. */
  readonly catalog: Catalog;
  readonly truth: Truth;
  readonly play: Play;
  readonly offsets: Offsets;
  readonly who: Person;
  readonly seed: number;
}

const MODELLED: readonly string[] = ['amps', 'amps-at-start', 'watts'];

export function siteOf(input: SiteInput): Site {
  const times = new Map<string, number>();
  return {
    read: (check, mended = false) => {
      const key = `${check.id} ${mended}`;
      const time = times.get(key) ?? 0;
      times.set(key, time + 1);
      const chance = randomFrom(seedOf(input.seed, key, time));
      const there = plantReading(input, check, mended);
      if (there?.kind === 'value') return displayed(input, check, { there, chance });
      const answer = there?.answer ?? signOf(input, check, mended);
      if (answer === undefined) return { notTaken: 'cannot-reach' };
      return { answer: reported(input, check, { answer, chance }) };
    },
  };
}

/** What the plant says, unless the fault itself says what is seen there. */
function plantReading({ truth }: SiteInput, check: Check, mended: boolean) {
  if ('signs' in check.predict || ownSigns(truth, check, mended).length > 0) return undefined;
  const reading = (mended ? truth.mended : truth.faulty).read(requestOf(check));
  return reading.kind === 'none' ? undefined : reading;
}

const ownSigns = ({ hypothesis }: Truth, check: Check, mended: boolean): Signs =>
  mended ? [] : signsOf(hypothesis, check.id);

function signOf(
  { catalog, truth, play, seed }: SiteInput,
  check: Check,
  mended: boolean,
): string | undefined {
  const random = randomFrom(seedOf(seed, 'sign', check.id, `${mended}`));
  const own = ownSigns(truth, check, mended);
  return drawnAnswer(catalog, check, { own, random, soundStrays: play.soundStrays });
}

function reported(
  { catalog, play, who }: SiteInput,
  check: Check,
  { answer, chance }: { answer: string; chance: Random },
): string {
  const reliability = catalog.instruments[check.instrument]?.reliability?.[who] ?? 1;
  return play.peopleErr && !chance.chance(reliability) ? mistaken(check, answer, chance) : answer;
}

/** Off by at most a share of the printed limits; over-range above the top of the instrument. */
function displayed(
  { catalog, play, offsets }: SiteInput,
  check: Check,
  { there, chance }: { there: Extract<PlantReading, { kind: 'value' }>; chance: Random },
): Reading {
  if (!('unit' in check.reads)) throw new Error(`prove: ${check.id} reads words and the plant gave a number`);
  const reads = 'reads' in check.predict ? check.predict.reads : '';
  const bias = MODELLED.includes(reads) ? offsets.biasOf(there.regime) : 0;
  const really = there.value * (1 + bias);
  const limits = meterLimits(catalog, check, 'ordinary');
  const limit = limits.relative * really + limits.absolute;
  const shown = Math.max(0, really + chance.between(-1, 1) * play.meterShare * limit);
  if (limits.top !== undefined && shown > limits.top) return { open: true };
  return inUnitOf(check.reads.unit, rounded(shown, limits.absolute / FINER));
}

/** A display shows three figures, and nothing finer than a tenth of its fixed error. */
const FINER = 10;

function rounded(value: number, step: number): number {
  const figures = Number(value.toPrecision(3));
  return step > 0 ? Math.round(figures / step) * step : figures;
}

const FACTORS: Readonly<Record<string, { readonly factor: number }>> = UNITS;
type Value = Extract<Reading, { value: unknown }>['value'];

function inUnitOf(unit: string, value: number): Reading {
  const found = FACTORS[unit];
  if (found === undefined) throw new Error(`prove: no unit ${unit}; mend the check`);
  return { value: [Number((value / found.factor).toPrecision(12)), unit as Value[1]] };
}
