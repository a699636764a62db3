import type { Catalog } from '../../src/catalog/catalog.ts';
import { requestOf } from '../../src/diagnosis/belief/channel.ts';
import { resolveSystem, type System } from '../../src/diagnosis/system.ts';
import { setUp } from '../../src/plant/plant.ts';
import type { PlantReading, PlantState } from '../../src/plant/types.ts';
import { type Reading, reading as readingShape } from '../../src/schema/case.ts';
import type { Check } from '../../src/schema/check.ts';
import type { Fault } from '../../src/schema/fault.ts';
import { type Installation, type InstallationInput, installation } from '../../src/schema/installation.ts';
import { UNITS } from '../../src/units/units.ts';

/** The installation that is really there, and what is really wrong with it. */
export interface Truth {
  readonly installation: InstallationInput;
  readonly fault: string;
  readonly variant: string;
  /** Factor or ohms, for faults that have a severity. */
  readonly severity?: number;
  /** Answers that only a person at the site could give, by check. */
  readonly seen?: Readonly<Record<string, string>>;
}

/** A simulated site: asked for a check, it shows what a meter or a look would show there. */
export interface Site {
  readonly installation: Installation;
  read(check: string): Reading;
}

/**
 * Sets the site up from the same model that the engine predicts with, one fault put in. The engine
 * is told nothing of it: it gets the readings through the screen like anybody else.
 */
export function siteOf(catalog: Catalog, truth: Truth): Site {
  const known = installation.parse(truth.installation);
  const system = resolveSystem(catalog, known);
  const fault = catalog.faults[truth.fault];
  if (fault === undefined) throw new Error(`truth: no fault ${truth.fault}`);
  const state = faulted(system, fault, truth);
  return {
    installation: known,
    read: (id) => {
      const check = catalog.checks[id];
      if (check === undefined) throw new Error(`truth: no check ${id}`);
      const seen = truth.seen?.[id];
      return seen === undefined ? shownBy(catalog, check, { fault, state }) : { answer: seen };
    },
  };
}

function faulted(system: System, fault: Fault, truth: Truth): PlantState {
  const [choice] = system.choices;
  const variant = fault.variants.find((one) => one.id === truth.variant);
  if (choice === undefined || variant === undefined)
    throw new Error(`truth: ${truth.fault} ${truth.variant} does not fit this installation`);
  return setUp(choice.input, choice.spreads).state(
    { edits: variant.edits, water: variant.water, severity: truth.severity },
    {},
  );
}

function shownBy(catalog: Catalog, check: Check, at: { fault: Fault; state: PlantState }): Reading {
  const isSigned = (at.fault.signs ?? []).some((sign) => sign.check === check.id);
  if ('signs' in check.predict || isSigned) return signOf(check, at.fault);
  const reading = at.state.read(requestOf(check));
  if (reading.kind === 'answer') return { answer: reading.answer };
  if (reading.kind === 'none') return { notTaken: 'cannot-reach' };
  return displayed(catalog, check, reading);
}

const OFTEN: readonly string[] = ['always', 'usually', 'even'];

/** What a fault usually shows to eyes and ears; what is expected of a sound system where it shows nothing. */
function signOf(check: Check, fault: Fault): Reading {
  const signs = (fault.signs ?? []).filter((one) => one.check === check.id);
  const sign = OFTEN.map((how) => signs.find((one) => one.how === how)).find((one) => one !== undefined);
  const answer = sign?.answer ?? check.expected;
  return answer === undefined ? { notTaken: 'not-now' } : { answer };
}

/** Three figures, none finer than a hundredth, in the unit of the check; over-range above the top of the instrument. */
function displayed(
  catalog: Catalog,
  check: Check,
  reading: Extract<PlantReading, { kind: 'value' }>,
): Reading {
  if (!('unit' in check.reads)) throw new Error(`truth: ${check.id} reads words and the plant gave a number`);
  const { unit } = check.reads;
  const top = catalog.instruments[check.instrument]?.top;
  if (top !== undefined && reading.value > top[0] * factorOf(top[1])) return { open: true };
  const shown = Number((reading.value / factorOf(unit)).toPrecision(3));
  return readingShape.parse({ value: [Math.round(shown * 100) / 100, unit] });
}

const FACTORS: Readonly<Record<string, { readonly factor: number }>> = UNITS;

function factorOf(unit: string): number {
  const found = FACTORS[unit];
  if (found === undefined) throw new Error(`truth: no unit ${unit}`);
  return found.factor;
}
