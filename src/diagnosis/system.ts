import type { PlantInput, Spreads } from '../plant/types.ts';
import type { CableRun, Installation } from '../schema/installation.ts';
import type { Motor } from '../schema/motor.ts';
import type { Box } from '../schema/netlist.ts';
import { of, type Quantity } from '../units/units.ts';
import { figure, figureOf, figures } from './judgements.ts';
import type { Knowledge } from './knowledge.ts';
import { type Fittings, fittingsOf, swapsOf, waterInput, waterSpreads } from './water-system.ts';

/**
 * From what is known of an installation to plants that can be asked.
 *
 * A field that is unknown and continuous (a length, the volts) takes its usual value and a wide
 * spread. One that is unknown and discrete (the motor row, the box) becomes a choice: belief holds
 * one plant for each. The few likeliest choices are kept; their weights sum to one.
 */
export interface SystemChoice {
  readonly weight: number;
  readonly box: Box;
  readonly input: PlantInput;
  readonly spreads: Spreads;
  /** Runs whose length nobody knows: their windows span what is met. */
  readonly unknownRuns: readonly ('buried' | 'drop')[];
  readonly fittings: Fittings;
}

export interface AssumedField {
  readonly field: string;
  readonly value: string;
}

export interface System {
  readonly choices: readonly SystemChoice[];
  readonly assumed: readonly AssumedField[];
}

/** Every choice that fits what is known; empty when nothing does, which is an exit, not an error. */
export function resolveSystem(knowledge: Knowledge, known: Installation): System {
  const pairs = boxesFor(knowledge, known).flatMap(({ box, weight }) => {
    const motors = motorsFor(knowledge, known, box);
    return motors.map((motor) => ({ box, motor, weight: weight / motors.length }));
  });
  const kept = keepLikeliest(pairs, figure(knowledge.judgements, 'choices-kept'));
  return {
    choices: kept.map(({ box, motor, weight }) => ({
      weight,
      box,
      input: plantInput(knowledge, known, { box, motor }),
      spreads: spreadsFor(knowledge, known),
      fittings: fittingsOf(knowledge, known, motor),
      unknownRuns: (['buried', 'drop'] as const).filter((run) => known[run]?.length === undefined),
    })),
    assumed: assumedFields(knowledge, known, kept),
  };
}

function boxesFor(knowledge: Knowledge, known: Installation): { box: Box; weight: number }[] {
  const usual = figures(knowledge.judgements, 'usual-boxes');
  const motor = known.motor === undefined ? undefined : knowledge.motors[known.motor];
  const power = motor?.power ?? known.power;
  const leads = motor?.leads ?? known.leads;
  const fits = (box: Box): boolean =>
    (known.box === undefined || box.id === known.box) &&
    (known.family === undefined || box.family === known.family) &&
    (leads === undefined || box.leads === leads) &&
    (power === undefined || known.box !== undefined || within(power, box.power)) &&
    (motor === undefined || box.serves.includes(motor.circuit));
  return Object.values(knowledge.boxes)
    .filter(fits)
    .map((box) => ({ box, weight: known.box === undefined ? (usual[box.id] ?? 0) : 1 }))
    .filter(({ weight }) => weight > 0);
}

function motorsFor(knowledge: Knowledge, known: Installation, box: Box): Motor[] {
  return Object.values(knowledge.motors).filter(
    (motor) =>
      motor.auxiliary === undefined &&
      (known.motor === undefined || motor.id === known.motor) &&
      motor.leads === box.leads &&
      box.serves.includes(motor.circuit) &&
      motor.winding !== undefined &&
      (known.motor !== undefined || known.power === undefined || near(motor.power, known.power)) &&
      (known.motor !== undefined || motorVoltsFit(knowledge, motor, known)) &&
      (known.motor !== undefined || within(motor.power, box.power)),
  );
}

/** A row of another voltage class is no candidate: 115 V rows only where the supply says so. */
function motorVoltsFit(knowledge: Knowledge, motor: Motor, known: Installation): boolean {
  const supply = known.supply?.volts ?? figure(knowledge.judgements, 'usual-supply-volts');
  return (
    Math.abs(supply - motor.volts) <= figure(knowledge.judgements, 'volts-class-tolerance') * motor.volts
  );
}

const within = (value: number, range: { low: number; high: number }): boolean =>
  value >= range.low * 0.99 && value <= range.high * 1.01;
const near = (one: number, other: number): boolean => Math.abs(one - other) <= 0.02 * other;

/** The heaviest few, rescaled to sum to one; ties keep the order of their ids. */
function keepLikeliest<T extends { weight: number }>(candidates: readonly T[], most: number): T[] {
  const kept = [...candidates].sort((a, b) => b.weight - a.weight).slice(0, most);
  const sum = kept.reduce((total, one) => total + one.weight, 0);
  return kept.map((one) => ({ ...one, weight: one.weight / sum }));
}

function plantInput(knowledge: Knowledge, known: Installation, pick: { box: Box; motor: Motor }): PlantInput {
  const { box, motor } = pick;
  const swapped = swapsOf(knowledge, fittingsOf(knowledge, known, motor));
  const run = (cable: CableRun | undefined, length: string) => ({
    conductor: conductorOf(knowledge, cable),
    length:
      cable?.length ?? (figureOf(knowledge.judgements, 'assumed-lengths', length) as Quantity<'length'>),
  });
  return {
    pieces: box.pieces.map((standing) => {
      const piece = swapped[standing] ?? standing;
      const found = knowledge.netlists[piece];
      if (found === undefined)
        throw new Error(`diagnosis: box ${box.id} names no netlist ${piece}; mend content/boxes`);
      return found;
    }),
    elements: knowledge.elements,
    motor,
    model: knowledge.motorModels[motor.id],
    volts: known.supply?.volts ?? serviceVolts(knowledge, motor),
    buried: run(known.buried, 'buried'),
    drop: run(known.drop, 'drop'),
    startCapacitor: known.startCapacitor ?? motor.startCapacitor,
    runCapacitor: known.runCapacitor ?? motor.runCapacitor,
    plugApart: box.plugApart,
    nominalLoad: figure(knowledge.judgements, 'nominal-load'),
    nominalBreakaway: figure(knowledge.judgements, 'nominal-breakaway'),
    water: waterInput(knowledge, known),
  };
}

/** The service that goes with a motor's rating: 240 V for a 230 V motor. */
function serviceVolts(knowledge: Knowledge, motor: Motor): Quantity<'voltage'> {
  return of(motor.volts * figure(knowledge.judgements, 'service-over-motor-volts'), 'V');
}

function conductorOf(knowledge: Knowledge, cable: CableRun | undefined) {
  const wanted = cable?.conductor ?? usualConductor(knowledge);
  const found = knowledge.conductors[wanted];
  if (found === undefined)
    throw new Error(`diagnosis: no conductor ${wanted}; add content/conductors/${wanted}.json`);
  return found;
}

const usualConductor = (knowledge: Knowledge): string =>
  Object.keys(figures(knowledge.judgements, 'usual-conductor'))[0] ?? '';

function spreadsFor(knowledge: Knowledge, known: Installation): Spreads {
  const usual = figures(knowledge.judgements, 'spreads') as Spreads;
  const spreads = { ...usual, ...waterSpreads(knowledge, known) };
  return known.drop?.length === undefined || known.buried?.length === undefined
    ? { ...spreads, dropLength: figureOf(knowledge.judgements, 'spreads-unknown', 'dropLength') }
    : spreads;
}

function assumedFields(
  knowledge: Knowledge,
  known: Installation,
  kept: readonly { box: Box; motor: Motor }[],
): AssumedField[] {
  const lengths = figures(knowledge.judgements, 'assumed-lengths');
  const names = (ids: string[]): string => [...new Set(ids)].join(' or ');
  const assumed: AssumedField[] = [];
  if (known.box === undefined) assumed.push({ field: 'box', value: names(kept.map(({ box }) => box.id)) });
  if (known.motor === undefined)
    assumed.push({ field: 'motor', value: names(kept.map(({ motor }) => motor.id)) });
  for (const run of ['buried', 'drop'] as const) {
    if (known[run]?.length === undefined)
      assumed.push({ field: `${run}.length`, value: `${lengths[run]} m` });
    if (known[run]?.conductor === undefined)
      assumed.push({ field: `${run}.conductor`, value: usualConductor(knowledge) });
  }
  return assumed;
}
