import type { Installation, InstallationInput } from '../../schema/installation.ts';
import { inUnit, type Quantity, type QuantityName, type UnitName, type UnitOf } from '../../units/units.ts';

/**
 * The numbers of the water side that a person may know: what is set, how deep, how large. Each is one
 * field on the screen, in the unit that the trade says it in.
 */
export interface WaterField {
  readonly id: WaterFieldId;
  readonly unit: UnitName;
  /** In that unit, rounded; undefined while it is not known. */
  readonly amount: number | undefined;
}

interface Kind {
  readonly unit: UnitName;
  read(known: Installation): Quantity | undefined;
  write(amount: number): InstallationInput;
}

const FIELDS = {
  cutIn: { unit: 'psi', read: (known) => known.cutIn, write: (psi) => ({ cutIn: [psi, 'psi'] }) },
  cutOut: { unit: 'psi', read: (known) => known.cutOut, write: (psi) => ({ cutOut: [psi, 'psi'] }) },
  tank: {
    unit: 'gal',
    read: (known) => known.tank?.volume,
    write: (gal) => ({ tank: { volume: [gal, 'gal'] } }),
  },
  level: {
    unit: 'ft',
    read: (known) => known.well?.staticLevel,
    write: (ft) => ({ well: { staticLevel: [ft, 'ft'] } }),
  },
  intake: {
    unit: 'ft',
    read: (known) => known.well?.intake,
    write: (ft) => ({ well: { intake: [ft, 'ft'] } }),
  },
  flow: {
    unit: 'gpm',
    read: (known) => known.pump?.classFlow,
    write: (gpm) => ({ pump: { classFlow: [gpm, 'gpm'] } }),
  },
  head: {
    unit: 'ft',
    read: (known) => known.pump?.shutOffHead,
    write: (ft) => ({ pump: { shutOffHead: [ft, 'ft'] } }),
  },
} as const satisfies Record<string, Kind>;
export type WaterFieldId = keyof typeof FIELDS;

export function waterFields(known: Installation): WaterField[] {
  return (Object.entries(FIELDS) as [WaterFieldId, Kind][]).map(([id, { unit, read }]) => {
    const value = read(known);
    const amount = value === undefined ? undefined : Math.round(inUnit(value, unit as UnitOf<QuantityName>));
    return { id, unit, amount };
  });
}

/** What typing an amount into a field says. */
export const waterFact = (id: WaterFieldId, amount: number): InstallationInput => FIELDS[id].write(amount);
