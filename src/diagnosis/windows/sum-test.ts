import type { PlantInput } from '../../plant/types.ts';
import type { SystemChoice } from '../system.ts';
import { cableEvidence, type Draft } from './draft.ts';

/**
 * The sum test: (yellow–black + yellow–red − black–red) ÷ 2 is the yellow conductor alone, whatever
 * the motor. It needs no motor table.
 *
 * @source law: Ohm's law on three windings with a common conductor
 */
export function sumWindow(choice: SystemChoice): Draft {
  const { input } = choice;
  const part = {
    name: 'cable',
    low: conductorOhms(input, 'low'),
    high: conductorOhms(input, 'high'),
    from: cableEvidence(input.buried.conductor, input.drop.conductor),
  } as const;
  return { kind: 'range', parts: [part], quality: 'table' };
}

/** The sum test of three readings, in the unit they share. */
export function sumTest(pairs: { yellowBlack: number; yellowRed: number; blackRed: number }): number {
  return (pairs.yellowBlack + pairs.yellowRed - pairs.blackRed) / 2;
}

/** One conductor from box to motor, in ohms, at an end of the printed spread. */
function conductorOhms(input: PlantInput, end: 'low' | 'high'): number {
  return [input.buried, input.drop].reduce(
    (sum, run) => sum + run.conductor.perLength * run.conductor.spread[end] * run.length,
    0,
  );
}
