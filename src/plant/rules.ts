import type { Prediction } from '../schema/check.ts';
import { elementOf } from './electrical/elements/impedance.ts';
import { type Circuit, conduction } from './electrical/install.ts';
import type { Operating } from './electrical/operate.ts';
import { atRest } from './electrical/positions.ts';
import { coilVolts, constant } from './electrical/start-control.ts';
import { type Trip, tripClass, tripsOf } from './electrical/trips.ts';
import { partsOf } from './layout.ts';
import { isQuiet } from './meters/regime.ts';
import type { Bench } from './state.ts';
import type { MotorSeen, PlantReading, ReadingSite } from './types.ts';

/**
 * What would eyes and ears say? Categories that follow from the electrical state.
 *
 * They are asked of the installation called and under power, whatever the site is now: they are what
 * was noticed before anything was switched off. Each is one look-up; nothing here knows a fault.
 */
type Rule = Extract<Prediction, { rule: string }>['rule'];

const answer = (text: string): PlantReading => ({ kind: 'answer', answer: text });

/** Share of full-load torque and of synchronous speed that a pump needs to move water. */
const LEAST_PUMPING_LOAD = 0.1;
const LEAST_PUMPING_SPEED = 0.85;

interface Seen {
  readonly circuit: Circuit;
  readonly at: Operating;
  readonly trips: readonly Trip[];
  readonly quiet: boolean;
}

export function answerOf(bench: Bench, rule: Rule, site: ReadingSite): PlantReading {
  const { circuit } = bench;
  if (rule === 'contacts-made') return answer(contactsMade(circuit, site) ? 'made' : 'apart');
  const at = bench.operating({ powered: true, calling: true, leads: 'connected' });
  if (rule === 'contactor-position') return contactorAnswer(circuit, at);
  if (bench.circuit.machine === undefined) return { kind: 'none', reason: 'no-model' };
  const seen = { circuit, at, trips: tripsOf(circuit, at), quiet: isQuiet(circuit, at) };
  switch (rule) {
    case 'what-is-seen':
      return answer(whatIsSeen(seen));
    case 'sound':
      return answer(sound(seen));
    case 'breaker-lever':
      return answer(breakerLever(seen));
    case 'trip-class':
      return answer(tripClass(seen.trips));
  }
}

/** The motor's own state as a customer tells it; pressure is not electrical, so silence means no water. */
function whatIsSeen(seen: Seen): string {
  const { circuit, at } = seen;
  const trip = tripClass(seen.trips);
  if (trip === 'at-once' || trip === 'seconds') return 'hums-or-trips';
  if (seen.quiet) return 'silent-without-pressure';
  if (at.end.speed === 0) return 'hums-or-trips';
  const pushes = !circuit.faulted.shaft.free && circuit.context.conditions.load >= LEAST_PUMPING_LOAD;
  if (!pushes || at.end.speed < 0) return 'runs-without-water';
  return trip === 'minutes' || at.end.speed < LEAST_PUMPING_SPEED ? 'runs-badly' : 'works-now';
}

function sound(seen: Seen): string {
  if (tripClass(seen.trips) === 'at-once') return 'hum-then-quiet';
  if (seen.quiet) return clicks(seen) ? 'click-only' : 'silence';
  if (seen.at.end.speed !== 0) return 'runs';
  return tripClass(seen.trips) === 'seconds' ? 'hum-then-quiet' : 'steady-hum';
}

/** A contactor that pulls in is heard even when nothing follows. */
const clicks = ({ circuit, at }: Seen): boolean =>
  partsOf(circuit.layout, 'contactor-pole').length > 0 && contactorPosition(circuit, at) === 'in';

/** No answer where there is no contactor to look at. */
function contactorAnswer(circuit: Circuit, at: Operating): PlantReading {
  if (partsOf(circuit.layout, 'contactor-pole').length === 0) return { kind: 'none', reason: 'no-such-node' };
  return answer(contactorPosition(circuit, at));
}

/** A lever falls to the middle when its breaker opens first, or will not conduct on both poles. */
function breakerLever({ circuit, at, trips }: Seen): string {
  const poles = [...partsOf(circuit.layout, 'breaker-pole'), ...partsOf(circuit.layout, 'ground-fault-pole')];
  const apart = (pole: number): boolean => conduction(circuit, pole, at.reduced.position) === 'apart';
  const none = (pole: number): boolean => conduction(circuit, pole, at.reduced.position) === 'none';
  if (poles.some(apart) || (poles.length > 0 && poles.every(none))) return 'middle';
  const first = trips[0]?.kind;
  return first === 'breaker-pole' || first === 'ground-fault-pole' ? 'middle' : 'on';
}

/**
 * Armature of the contactor: in when its poles follow the coil, buzzing when the coil is alive and
 * they do not, or when the motor drags its volts below what holds it.
 */
function contactorPosition(circuit: Circuit, at: Operating): string {
  const poles = partsOf(circuit.layout, 'contactor-pole');
  const coil = partsOf(circuit.layout, 'contactor-coil')[0];
  if (coil === undefined || poles.length === 0) return 'in';
  const stuck = (state: 'made' | 'apart'): boolean =>
    poles.every((pole) => circuit.faulted.parts[pole]!.stuck === state);
  if (stuck('made')) return 'in';
  const { input } = circuit.context;
  const element = elementOf(input, 'contactor-coil');
  const holds = constant(element.dropOutShare, 'contactor-coil', 'dropOutShare') * input.motor.volts;
  const volts = coilVolts(at.reduced, at.turning, coil);
  if (volts < holds) return at.reduced.position.contactor ? 'buzzing' : 'out';
  return at.reduced.position.contactor && !stuck('apart') ? 'in' : 'buzzing';
}

/** Every pole of the pressure switch that exists is made. */
function contactsMade(circuit: Circuit, site: ReadingSite): boolean {
  const position = atRest({ ...site, calling: circuit.faulted.command ?? site.calling });
  return partsOf(circuit.layout, 'switch-pole').every((pole) => {
    const how = conduction(circuit, pole, position);
    return how === 'made' || how === 'bridged';
  });
}

/** The motor's own part in what is seen; a motor without a model is taken to run. */
export function motorSeen(bench: Bench): MotorSeen {
  const got = answerOf(bench, 'what-is-seen', { powered: true, calling: true, leads: 'connected' });
  if (got.kind !== 'answer') return 'runs';
  if (got.answer === 'silent-without-pressure') return 'silent';
  return got.answer === 'hums-or-trips' || got.answer === 'runs-badly' ? got.answer : 'runs';
}
