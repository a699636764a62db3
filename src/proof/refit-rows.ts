import type { Catalog } from '../catalog/catalog.ts';
import type { Motor, MotorModel } from '../schema/motor.ts';

/**
 * What is published of a motor that its model can be fitted to?
 *
 * Each point is one printed line: at full load, at service-factor load, at service-factor load with an
 * auxiliary run capacitor, or at standstill. A model that follows another row says so in its evidence
 * and is not fitted by itself.
 */
export interface Point {
  readonly name: string;
  /** Watts at the shaft; undefined at standstill. */
  readonly shaft: number | undefined;
  readonly run: number;
  readonly start: number;
  readonly amps: Readonly<Partial<Record<'yellow' | 'black' | 'red', number>>>;
  readonly watts: number | undefined;
}

export interface Published {
  readonly motor: Motor;
  readonly shipped: MotorModel;
  readonly points: readonly Point[];
}

export function publishedRows(catalog: Catalog): Published[] {
  return Object.values(catalog.motorModels)
    .filter((model) => followed(catalog, model) === undefined)
    .flatMap((shipped) => {
      const motor = catalog.motors[shipped.id];
      return motor === undefined ? [] : [{ motor, shipped, points: pointsOf(catalog, motor) }];
    });
}

/** The row whose motor this model is, when its evidence names one. */
export function followed({ motorModels }: Catalog, model: MotorModel): string | undefined {
  const words = model.from.flatMap(({ where }) => where.split(/[\s,;]+/));
  return words.find((word) => word !== model.id && Object.hasOwn(motorModels, word));
}

function pointsOf(catalog: Catalog, motor: Motor): Point[] {
  const run = motor.runCapacitor ?? 0;
  const service = motor.power * (motor.serviceFactor ?? 1);
  const auxiliary = auxiliaryOf(catalog, motor);
  return [
    ...loaded('full load', motor.fullLoad, { shaft: motor.power, run }),
    ...loaded('service factor', motor.serviceFactorLoad, { shaft: service, run }),
    ...loaded('auxiliary', auxiliary?.serviceFactorLoad, {
      shaft: service,
      run: auxiliary?.runCapacitor ?? 0,
    }),
    ...stalled(motor, run),
  ];
}

/** Without a run capacitor black is yellow and red is nothing: one current only. */
function loaded(name: string, load: Motor['fullLoad'], at: { shaft: number; run: number }): Point[] {
  if (load === undefined) return [];
  const { amps, watts } = load;
  const read = 'line' in amps ? { yellow: amps.line } : at.run === 0 ? { yellow: amps.yellow } : amps;
  return [{ name, shaft: at.shaft, run: at.run, start: 0, amps: read, watts }];
}

/** A row that prints no start capacitor says nothing of what it draws at standstill. */
function stalled(motor: Motor, run: number): Point[] {
  const can = motor.startCapacitor;
  if (motor.lockedRotor === undefined || can === undefined) return [];
  const start = (can.low + can.high) / 2;
  return [
    {
      name: 'locked rotor',
      shaft: undefined,
      run,
      start,
      amps: { yellow: motor.lockedRotor },
      watts: undefined,
    },
  ];
}

const SAME_POWER = 1e-3;

/**
 * The auxiliary row of the same power belongs to the motor that has no run capacitor of its own, where
 * there is one: it says most there.
 */
function auxiliaryOf({ motors, motorModels }: Catalog, motor: Motor): Motor | undefined {
  const alike = (other: Motor): boolean =>
    Math.abs(other.power / motor.power - 1) < SAME_POWER && Math.abs(other.volts - motor.volts) < 1;
  const barer = Object.values(motors).some(
    (other) => alike(other) && other.circuit === 'start-only' && Object.hasOwn(motorModels, other.id),
  );
  if (barer && motor.circuit !== 'start-only') return undefined;
  return Object.values(motors).find((other) => other.auxiliary === true && alike(other));
}
