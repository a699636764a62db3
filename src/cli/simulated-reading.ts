import type { Catalog } from '../catalog/catalog.ts';
import { requestOf } from '../diagnosis/belief/channel.ts';
import { figure } from '../diagnosis/judgements.ts';
import type { ExpectedWindow } from '../diagnosis/types.ts';
import { outcomeOfOpen, outcomeOfValue } from '../diagnosis/windows/judge.ts';
import { type MeterClass, meterLimits } from '../diagnosis/windows/meter.ts';
import type { PlantState } from '../plant/types.ts';
import type { Check } from '../schema/check.ts';
import type { Fault } from '../schema/fault.ts';
import { quantity } from './print.ts';

/** A faulted installation and what it is compared with. */
export interface Simulated {
  readonly catalog: Catalog;
  readonly windows: Readonly<Record<string, ExpectedWindow>>;
  readonly plant: PlantState;
  readonly meter: MeterClass;
  readonly fault: Fault;
}

/**
 * What one check shows, as a case file writes a reading, and its outcome. A number beyond the display
 * is open; what people would see or say is how often the fault shows it; where the plant gives no
 * answer, `silent` says why.
 */
export function simulatedReading(asked: Simulated, check: Check) {
  const isSigned = (asked.fault.signs ?? []).some((sign) => sign.check === check.id);
  if ('signs' in check.predict || isSigned) return signsData(asked.fault, check);
  if ('sumTest' in check.predict) return { followsFrom: check.predict.sumTest };
  const read = asked.plant.read(requestOf(check));
  switch (read.kind) {
    case 'none':
      return { silent: read.reason };
    case 'answer':
      return { reading: { answer: read.answer }, outcome: read.answer };
    case 'value':
      return valueData(asked, check, Math.max(0, read.value));
    default: {
      const never: never = read;
      return never;
    }
  }
}

function valueData({ catalog, windows, meter }: Simulated, check: Check, value: number) {
  const window = windows[check.id];
  const { top } = meterLimits(catalog, check, meter);
  if (top !== undefined && value > top) {
    return { reading: { open: true }, outcome: window === undefined ? undefined : outcomeOfOpen(window) };
  }
  const reading = { value: quantity(value, 'unit' in check.reads ? check.reads.unit : '') };
  if (window === undefined || window.kind === 'unknown') return { reading };
  return {
    reading,
    outcome: outcomeOfValue(value, window, figure(catalog.judgements, 'none-share')).outcome,
  };
}

function signsData({ signs = [] }: Fault, check: Check) {
  const own = signs.filter((sign) => sign.check === check.id).map(({ answer, how }) => ({ answer, how }));
  const usual = own.length > 0 ? own : (check.usual ?? []);
  return usual.length > 0 ? { signs: usual } : { reading: { answer: check.expected } };
}
