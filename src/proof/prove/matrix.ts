import type { Catalog } from '../../catalog/catalog.ts';
import { figure, figures } from '../../diagnosis/judgements.ts';
import type { InstallationInput } from '../../schema/installation.ts';
import type { Conductor, Motor } from '../../schema/motor.ts';
import type { Box } from '../../schema/netlist.ts';
import { inUnit, of } from '../../units/units.ts';

/**
 * The installations that are played: every box kind with the motor rows that it serves and that have a
 * model, on a short and on a long cable. The conductor is the thinnest copper one that keeps the loss in
 * the cable under a share of the rated volts, so that no row complains by its cable alone.
 */
export interface Row {
  readonly id: string;
  readonly installation: InstallationInput;
  /** How often it is met, relative to the others: the share of its box, spread over the rows of that box. */
  readonly weight: number;
}

const HORSEPOWER = [0.5, 1, 1.5, 3, 5, 10];
const CABLES = [
  { name: 'short', buried: 20, drop: 100 },
  { name: 'long', buried: 150, drop: 350 },
] as const;
const MOST_LOSS = 0.05;

export function installationRows(catalog: Catalog): Row[] {
  const usual = figures(catalog.judgements, 'usual-boxes');
  return Object.values(catalog.boxes).flatMap((box) => {
    const motors = Object.values(catalog.motors).filter((motor) => serves(catalog, box, motor));
    const weight = (usual[box.id] ?? 0) / (motors.length * CABLES.length);
    return motors.flatMap((motor) =>
      CABLES.map((cable) => ({
        id: `${box.id}, ${motor.id}, ${cable.name} cable`,
        installation: installationOf(catalog, { box, motor, cable }),
        weight,
      })),
    );
  });
}

function serves(catalog: Catalog, box: Box, motor: Motor): boolean {
  const power = inUnit(motor.power, 'hp');
  return (
    motor.auxiliary === undefined &&
    catalog.motorModels[motor.id] !== undefined &&
    motor.winding !== undefined &&
    motor.leads === box.leads &&
    box.serves.includes(motor.circuit) &&
    motor.power >= box.power.low * 0.99 &&
    motor.power <= box.power.high * 1.01 &&
    HORSEPOWER.some((one) => Math.abs(one - power) < 0.01)
  );
}

interface Pick {
  readonly box: Box;
  readonly motor: Motor;
  readonly cable: (typeof CABLES)[number];
}

function installationOf(catalog: Catalog, { box, motor, cable }: Pick): InstallationInput {
  const conductor = conductorFor(catalog, motor, cable.buried + cable.drop).id;
  return {
    supply: { volts: [serviceVolts(catalog, motor), 'V'] },
    family: box.family,
    box: box.id,
    motor: motor.id,
    leads: motor.leads,
    power: [inUnit(motor.power, 'hp'), 'hp'],
    buried: { conductor, length: [cable.buried, 'ft'] },
    drop: { conductor, length: [cable.drop, 'ft'] },
  };
}

/** The service that goes with the plate: 240 V for 230, 120 V for 115. */
const serviceVolts = (catalog: Catalog, motor: Motor): number =>
  Math.round(motor.volts * figure(catalog.judgements, 'service-over-motor-volts'));

/** The thinnest copper that loses little enough there and back, or the thickest there is. */
function conductorFor(catalog: Catalog, motor: Motor, feet: number): Conductor {
  const amps = ampsOf(motor);
  const metres = of(feet, 'ft');
  const copper = Object.values(catalog.conductors)
    .filter((one) => one.metal === 'copper')
    .sort((one, other) => other.perLength - one.perLength);
  const found =
    copper.find((one) => 2 * amps * one.perLength * metres <= MOST_LOSS * motor.volts) ?? copper.at(-1);
  if (found === undefined) throw new Error('prove: no copper conductor; add one to content/conductors');
  return found;
}

function ampsOf(motor: Motor): number {
  const amps = (motor.serviceFactorLoad ?? motor.fullLoad)?.amps;
  if (amps === undefined) throw new Error(`prove: ${motor.id} prints no amps; a cable cannot be chosen`);
  return 'line' in amps ? amps.line : amps.yellow;
}
