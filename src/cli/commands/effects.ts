import { foldCase } from '../../records/fold.ts';
import { didYouMean } from '../../records/nearest.ts';
import type { Installation } from '../../schema/installation.ts';
import { type Answer, type Around, badInput, type Command, type Given, usageError } from '../command.ts';
import { type EffectReading, type EffectRow, effectRows, startShare } from '../effects.ts';
import { knownBy, knownByText } from '../effects-known-by.ts';
import { installationData, NOTHING_FITS, type Ready, readyInstallation } from '../installation.ts';
import { figures, quantity, share } from '../print.ts';

/** What every fault of the content does to the main readings of four usual installations, and which the plant does not know. */
export const effects: Command = {
  usage: 'effects [--installation NAME] [--as rows|text]',
  about: `what every fault does to the main readings; installations: two-wire, start-only, start-and-run, contactor`,
  run: async (given, around) => run(given, around),
};

export const EFFECTS_FLAGS = ['installation', 'as'];

/** Four installations that are met most, from the smallest to one with a contactor. */
export const INSTALLATIONS: Readonly<Record<string, Installation>> = {
  'two-wire': { box: 'none-2-wire', motor: '2-wire-0.75hp-230v' },
  'start-only': { box: 'start-only-current-relay', motor: '3-wire-1hp-230v-start-only' },
  'start-and-run': {
    box: 'start-and-run-main-overload-in-line',
    motor: '3-wire-1.5hp-230v-start-and-run',
  },
  contactor: { box: 'contactor-loop-fed-from-l2', motor: '3-wire-3hp-230v-start-and-run' },
};

/** What a technician would look at first; a check that the installation lacks is left out. */
export const MAIN_READINGS = [
  'what-is-seen',
  'motor-sound',
  'breaker-lever',
  'contactor-position',
  'volts-switch-load-pair',
  'volts-box-line',
  'volts-coil',
  'amps-line',
  'amps-yellow',
  'amps-black',
  'amps-red',
  'watts-line',
  'ohms-two-wire',
  'ohms-yellow-black',
  'ohms-yellow-red',
  'ohms-black-red',
  'insulation-two-wire',
  'insulation-system',
  'start-capacitance',
  'run-capacitance',
] as const;

/** Shown of the sound system and of every fault of the water side. */
export const WATER_READINGS = [
  'gauge-zone',
  'plateau-pressure',
  'flow-at-low-pressure',
  'fill-time',
  'leak-down-isolated',
  'leak-down-open',
  'static-level',
  'pumping-level',
] as const;

function run({ operands, flags }: Given, around: Around): Answer {
  if (operands.length > 0) return usageError('effects takes no case file');
  const wanted = flags.get('installation');
  const form = flags.get('as') ?? 'rows';
  if (form !== 'rows' && form !== 'text') return usageError('--as is rows or text');
  if (wanted !== undefined && !Object.hasOwn(INSTALLATIONS, wanted))
    return usageError(
      `there is no installation "${wanted}"; ${didYouMean(wanted, Object.keys(INSTALLATIONS))}`.trim(),
    );
  const names = wanted === undefined ? Object.keys(INSTALLATIONS) : [wanted];
  const all = names.map((name) => ({ name, ready: readyFor(around, INSTALLATIONS[name] ?? {}) }));
  const tables: Table[] = [];
  for (const { name, ready } of all) {
    if (ready === undefined) return badInput(`${name}: ${NOTHING_FITS}`);
    tables.push({
      name,
      ready,
      rows: effectRows(around, ready, { main: MAIN_READINGS, water: WATER_READINGS }),
    });
  }
  const outside = knownBy(around.catalog);
  if (form === 'text')
    return { kind: 'text', text: [...tables.map(asText), knownByText(outside)].join('\n') };
  return {
    kind: 'data',
    data: {
      contentVersion: around.catalog.version,
      installations: tables.map(asData),
      knownByNothing: outside.nothing,
      knownBySignsOnly: outside.signsOnly,
    },
  };
}

interface Table {
  readonly name: string;
  readonly ready: Ready;
  readonly rows: readonly EffectRow[];
}

function readyFor(around: Around, installation: Installation): Ready | undefined {
  const nothingSaid = foldCase('effects', [], around.catalog.checks);
  return readyInstallation(around, { ...nothingSaid, installation });
}

function asData({ name, ready, rows }: Table) {
  const same = (row: EffectRow) => rows.filter((one) => one.hypothesis === row.hypothesis);
  return {
    installation: name,
    ...installationData(ready),
    rows: rows.map((row) => ({
      ...named(row),
      starts: share(startShare(same(row))),
      mode: modeWords(row),
      share: share(row.share),
      readings: Object.fromEntries(row.readings.map((reading) => [reading.check.id, readingData(reading)])),
      signs: signsOf(row),
    })),
  };
}

const named = ({ hypothesis, severity }: EffectRow) => ({
  fault: hypothesis.fault.id,
  variant: hypothesis.variant,
  severity: severity === undefined ? undefined : figures(severity),
});

/** What the plant cannot know of a fault stands in its signs. */
const signsOf = ({ hypothesis }: EffectRow) =>
  hypothesis.fault.signs?.map(({ check, answer, how }) => ({ check, answer, how }));

function modeWords({ mode }: EffectRow): string {
  if (!mode.starts) return 'stands';
  return mode.releases ? 'runs' : 'runs with the start branch in';
}

function readingData(reading: EffectReading) {
  if (reading.kind !== 'value') return wordOf(reading);
  const unit = unitOf(reading);
  const printed = (value: number) => quantity(value, unit)[0];
  return {
    value: printed(reading.value),
    low: printed(reading.low),
    high: printed(reading.high),
    unit,
    regime: reading.regime,
  };
}

/** A watch that is never stopped shows no over-range. */
function wordOf(reading: Exclude<EffectReading, { kind: 'value' }>): string {
  if (reading.kind === 'answer') return reading.answer;
  const { reads } = reading.check;
  return 'quantity' in reads && reads.quantity === 'time' ? 'never' : 'open';
}

function unitOf({ check }: EffectReading): string {
  return 'unit' in check.reads ? check.reads.unit : '';
}

/** One line a row: who, how often, and each reading with the span of nine in ten. */
function asText({ name, rows }: Table): string {
  const lines = rows.map((row) => {
    const { fault, variant, severity } = named(row);
    const who = [fault, variant, severity].filter((one) => one !== undefined).join(' ');
    const readings = row.readings.map((reading) => `${reading.check.id} ${readingText(reading)}`);
    return `${who} | ${modeWords(row)} ${Math.round(row.share * 100)} % | ${readings.join(', ')}`;
  });
  return `${name}\n${lines.map((line) => `  ${line}\n`).join('')}`;
}

const TWO_FIGURES = 2;

function readingText(reading: EffectReading): string {
  if (reading.kind !== 'value') return wordOf(reading);
  const unit = unitOf(reading);
  const printed = (value: number) => Number(quantity(value, unit)[0].toPrecision(TWO_FIGURES + 1));
  const ends = (value: number) => Number(quantity(value, unit)[0].toPrecision(TWO_FIGURES));
  return `${printed(reading.value)} (${ends(reading.low)}–${ends(reading.high)}) ${unit}`;
}
