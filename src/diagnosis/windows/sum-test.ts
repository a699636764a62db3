import type { SystemChoice } from '../system.ts';
import { type Asked, cableEvidence, type Draft } from './draft.ts';
import { reachOf } from './ohms.ts';

/**
 * The sum test: (yellow–black + yellow–red − black–red) ÷ 2 is the yellow conductor alone, whatever
 * the motor. It needs no motor table.
 *
 * @source law: Ohm's law on three windings with a common conductor
 */
export function sumWindow(asked: Asked, choice: SystemChoice): Draft {
  const { input } = choice;
  const part = {
    name: 'cable',
    low: conductorOhms(asked, choice, 'low'),
    high: conductorOhms(asked, choice, 'high'),
    from: cableEvidence(input.buried.conductor, input.drop.conductor),
  } as const;
  return { kind: 'range', parts: [part], quality: 'table' };
}

/** The sum test of three readings, in the unit they share. */
export function sumTest(pairs: { yellowBlack: number; yellowRed: number; blackRed: number }): number {
  return (pairs.yellowBlack + pairs.yellowRed - pairs.blackRed) / 2;
}

/** One conductor from box to motor, in ohms, at an end of the printed spread. */
function conductorOhms(asked: Asked, choice: SystemChoice, end: 'low' | 'high'): number {
  return (['buried', 'drop'] as const).reduce((sum, run) => {
    const { conductor, length } = choice.input[run];
    return sum + conductor.perLength * conductor.spread[end] * length * reachOf(asked, choice, { run, end });
  }, 0);
}
