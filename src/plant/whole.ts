import type { Prediction } from '../schema/check.ts';
import type { PlantReading, PlantState } from './types.ts';
import type { Drive, WaterInput, WaterMoment, WaterReading, WaterState } from './water/types.ts';

/**
 * What does the whole installation do: switch to motor, motor to pump, pump to gauge, gauge to switch?
 *
 * The water decides what share of its load the shaft is asked for; with that load the motor turns at
 * some speed, or not; at that speed the pump does what it can. Speed hardly moves with load, so the
 * round is gone once. The load is told as a share of what the sound water system asks, so that a
 * sound installation shows the published amps.
 */
export interface Halves {
  /** The electrical side with this share of the nominal shaft load. */
  electrical(pumpLoad: number): PlantState;
  /** The faulted water side with a motor that does this; without a motor named, one that is willing. */
  water(drive?: Drive): WaterState;
  /** The same without the fault. */
  soundWater(): WaterState;
  /** A fault that leaves the water alone leaves the load alone. */
  readonly isWaterSound: boolean;
  /** What a sound motor does; given where the electrical side is sound and only the load could differ. */
  readonly soundDrive: (() => Drive) | undefined;
  input(): WaterInput;
}

export function wholeState(halves: Halves): PlantState {
  const atMoment = new Map<string, PlantState>();
  let usual: PlantState | undefined;
  const electrical = (moment?: WaterMoment): PlantState => {
    if (moment === undefined) {
      usual ??= halves.electrical(loadShare(halves, {}));
      return usual;
    }
    const key = JSON.stringify(moment);
    const known = atMoment.get(key);
    if (known !== undefined) return known;
    const made = halves.electrical(loadShare(halves, moment));
    atMoment.set(key, made);
    return made;
  };
  const drive = (): Drive => halves.soundDrive?.() ?? driveOf(electrical());
  let water: WaterState | undefined;
  const wet = (): WaterState => {
    water ??= halves.water(drive());
    return water;
  };
  return {
    get mode() {
      return electrical().mode;
    },
    get margins() {
      return electrical().margins;
    },
    turns: (calling) => electrical().turns(calling),
    pumpLoad: () => loadShare(halves, {}),
    motorSeen: () => electrical().motorSeen(),
    drive,
    read: (request) => {
      const { predict } = request;
      if ('water' in predict) return asReading(predict.water, wet().read(predict.water, momentOf(predict)));
      if ('rule' in predict && predict.rule === 'what-is-seen')
        return { kind: 'answer', answer: seen(electrical(), wet(), halves.input()) };
      return electrical('moment' in predict ? momentOf(predict) : undefined).read(request);
    },
  };
}

/** Share of the sound load; more than the whole where a fault makes the pump work harder. */
function loadShare({ isWaterSound, water, soundWater }: Halves, moment: WaterMoment): number {
  const usual = Object.keys(moment).length === 0;
  if (isWaterSound && usual) return 1;
  return water().load(moment) / Math.max(LEAST_LOAD, soundWater().load());
}
/** A sound pump always asks for something; keeps the share finite in a well that gives nothing. */
const LEAST_LOAD = 0.05;

/** The moment that a prediction names, in the words of the water side. */
function momentOf(predict: Prediction): WaterMoment {
  if (!('moment' in predict) || predict.moment === undefined) return {};
  const { time, ...rest } = predict.moment;
  return time === undefined ? rest : { ...rest, seconds: time };
}

/** A time that never ends is longer than any watch; anything else that never comes is no reading. */
const NEVER_ENDS = 1e9;
const TIMED: ReadonlySet<string> = new Set(['fill-time', 'cycle-on', 'cycle-off']);

function asReading(question: string, got: WaterReading): PlantReading {
  if (got.kind === 'value') return { kind: 'value', value: got.value, regime: 'static' };
  if (got.kind === 'answer') return got;
  if (got.kind === 'never' && TIMED.has(question))
    return { kind: 'value', value: NEVER_ENDS, regime: 'static' };
  return { kind: 'none', reason: 'not-a-plant-reading' };
}

/** What the electrical state does for the pump. A motor without a model is taken at its word. */
export function driveOf(electrical: PlantState): Drive {
  const called = electrical.turns(true);
  const satisfied = electrical.turns(false);
  const speed = called ?? (electrical.motorSeen() === 'silent' ? 0 : 1);
  return { turns: speed !== 0, speed, always: (satisfied ?? 0) !== 0, follows: speed !== 0 };
}

/**
 * Silence and hum are the motor's; everything else follows from what comes out of the tap.
 *
 * A satisfied system is silent with pressure. What is asked here is what the caller complains of, so a
 * sound one "works now".
 */
function seen(electrical: PlantState, water: WaterState, { house, tank }: WaterInput): string {
  const motor = electrical.motorSeen();
  if (motor === 'hums-or-trips') return motor;
  if (motor === 'silent') return 'silent-without-pressure';
  if (said(water, 'stops') === 'never-starts') return 'silent-without-pressure';
  const tap = number(water, 'tap-pressure') ?? 0;
  if (tap === 0)
    return said(water, 'gauge-zone') === 'between' ? 'silent-with-pressure' : 'runs-without-water';
  if (motor === 'runs-badly' || tap < house.weakTap || said(water, 'discharge') === 'air')
    return 'runs-badly';
  if (said(water, 'stops') === 'never-stops') return 'runs-badly';
  const fill = number(water, 'fill-time');
  if (fill === undefined || fill < tank.leastFill) return 'runs-badly';
  return said(water, 'starts-unused') === 'yes' ? 'runs-badly' : 'works-now';
}

type Question = Parameters<WaterState['read']>[0];

function said(water: WaterState, question: Question): string | undefined {
  const got = water.read(question);
  return got.kind === 'answer' ? got.answer : undefined;
}

function number(water: WaterState, question: Question): number | undefined {
  const got = water.read(question);
  return got.kind === 'value' ? got.value : undefined;
}
