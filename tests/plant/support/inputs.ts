import type { PlantInput, Spreads } from '../../../src/plant/types.ts';
import { type Motor, type MotorModel, motorModel } from '../../../src/schema/motor.ts';
import { type Element, element, type Netlist } from '../../../src/schema/netlist.ts';
import { of } from '../../../src/units/units.ts';
import { contactor, noBox, startAndRun, startOnly, startOnlyPotential } from './pieces.ts';

/** Plants for the tests: the real elements and motor models, motor rows and cable written here. */
const elementFiles = import.meta.glob('../../../content/elements/*.json', { eager: true, import: 'default' });
const modelFiles = import.meta.glob('../../../content/motor-models/*.json', {
  eager: true,
  import: 'default',
});

export const elements: Record<string, Element> = Object.fromEntries(
  Object.values(elementFiles)
    .map((file) => element.parse(file))
    .map((one) => [one.id, one]),
);
export const models: Record<string, MotorModel> = Object.fromEntries(
  Object.values(modelFiles)
    .map((file) => motorModel.parse(file))
    .map((one) => [one.id, one]),
);

export const spreads: Spreads = {
  dropLength: 0.2,
  volts: 0.025,
  load: 0.12,
  mainOhms: 0.06,
  startOhms: 0.06,
  startCapacitor: 0.08,
  insulation: 1.4,
  breakaway: 0.45,
};

const from: Motor['from'] = [{ source: 'service-judgement', where: 'test', mark: 'memory' }];
const A = (value: number) => of(value, 'A');
type Leads = readonly [yellow: number, black: number, red: number];

/** Published amps and watts of a row, written short. */
interface Row {
  readonly hp: number;
  readonly circuit: Motor['circuit'];
  readonly full: readonly [Leads | number, watts: number];
  readonly service: readonly [Leads | number, watts: number];
  readonly locked: number;
  readonly winding: NonNullable<Motor['winding']>;
  readonly breaker: number;
  readonly protector: Motor['protector'];
}

const leadAmps = (amps: Leads | number) =>
  typeof amps === 'number' ? { line: A(amps) } : { yellow: A(amps[0]), black: A(amps[1]), red: A(amps[2]) };

export function motorRow(id: string, row: Row): Motor {
  const load = ([amps, watts]: readonly [Leads | number, number]) => ({
    amps: leadAmps(amps),
    watts: of(watts, 'W'),
  });
  return {
    id,
    leads: row.circuit === 'start-inside' ? '2-wire' : '3-wire',
    frame: of(4, 'in'),
    power: of(row.hp, 'hp'),
    volts: of(230, 'V'),
    circuit: row.circuit,
    fullLoad: load(row.full),
    serviceFactorLoad: load(row.service),
    lockedRotor: A(row.locked),
    winding: row.winding,
    breaker: { most: A(row.breaker), usual: A(row.breaker) },
    protector: row.protector,
    from,
  };
}

export const motors: Record<string, Motor> = {
  '0.75HP': motorRow('3-wire-0.75hp-230v-start-only', {
    hp: 0.75,
    circuit: 'start-only',
    full: [[6.8, 6.8, 0], 940],
    service: [[8, 8, 0], 1310],
    locked: 34.2,
    winding: {
      main: { low: of(3, 'ohm'), high: of(3.6, 'ohm') },
      start: { low: of(10.7, 'ohm'), high: of(13.1, 'ohm') },
    },
    breaker: 20,
    protector: 'inside',
  }),
  '1.5HP': motorRow('3-wire-1.5hp-230v-start-and-run', {
    hp: 1.5,
    circuit: 'start-and-run',
    full: [[10, 9.9, 1.3], 1620],
    service: [[11.5, 11, 1.3], 2080],
    locked: 51.4,
    winding: {
      main: { low: of(1.7, 'ohm'), high: of(2.1, 'ohm') },
      start: { low: of(7.5, 'ohm'), high: of(9.2, 'ohm') },
    },
    breaker: 25,
    protector: 'unknown',
  }),
  '3HP': motorRow('3-wire-3hp-230v-start-and-run', {
    hp: 3,
    circuit: 'start-and-run',
    full: [[14, 11.2, 6.1], 3000],
    service: [[17, 12.6, 6], 3400],
    locked: 83.4,
    winding: {
      main: { low: of(1.1, 'ohm'), high: of(1.4, 'ohm') },
      start: { low: of(4, 'ohm'), high: of(4.8, 'ohm') },
    },
    breaker: 40,
    protector: 'in-box',
  }),
  '2-wire 0.75HP': motorRow('2-wire-0.75hp-230v', {
    hp: 0.75,
    circuit: 'start-inside',
    full: [6.8, 940],
    service: [8, 1310],
    locked: 40.7,
    winding: { lineToLine: { low: of(3, 'ohm'), high: of(3.6, 'ohm') } },
    breaker: 20,
    protector: 'inside',
  }),
};

/** Ohms of one conductor, spread evenly over the run to the well and the drop. */
export interface Setting {
  readonly motor: keyof typeof motors;
  readonly pieces: readonly Netlist[];
  readonly cableOhms: number;
  readonly volts?: number;
  readonly load?: number;
  readonly breakaway?: number;
  readonly elements?: Readonly<Record<string, Element>>;
  readonly withoutModel?: true;
}

export function input(setting: Setting): PlantInput {
  const motor = motors[setting.motor]!;
  const model = setting.withoutModel ? undefined : models[motor.id];
  const conductor = {
    id: 'test',
    metal: 'copper' as const,
    gauge: 12,
    perLength: of(setting.cableOhms / 100, 'ohm/m'),
    temperature: of(10, 'degC'),
    spread: { low: 1, high: 1 },
    from,
  };
  const start = model?.startCapacitor ?? of(100, 'uF');
  return {
    pieces: setting.pieces,
    elements: setting.elements ?? elements,
    motor,
    model,
    volts: of(setting.volts ?? 240, 'V'),
    buried: { conductor, length: of(50, 'm') },
    drop: { conductor, length: of(50, 'm') },
    startCapacitor: { low: start, high: start },
    runCapacitor: model?.runCapacitor,
    plugApart: false,
    nominalLoad: setting.load ?? 0.92,
    nominalBreakaway: setting.breakaway ?? 0.15,
  };
}

export const small: Setting = { motor: '1.5HP', pieces: startAndRun, cableOhms: 0.4 };
export const large: Setting = { motor: '3HP', pieces: contactor, cableOhms: 0.3 };
export const plugApart: Setting = { motor: '0.75HP', pieces: startOnly, cableOhms: 0.5 };
export const plugApartPotential: Setting = { motor: '0.75HP', pieces: startOnlyPotential, cableOhms: 0.5 };
export const twoWire: Setting = { motor: '2-wire 0.75HP', pieces: noBox, cableOhms: 0.5 };
