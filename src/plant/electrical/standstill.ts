import type { Circuit } from './install.ts';
import { fields, type Machine, turnAt } from './motor.ts';
import type { Complex } from './network.ts';

/**
 * What does a winding of a resting motor oppose to the small current of a meter?
 *
 * At standstill both fields see the same cage, so windings in quadrature do not feel each other and
 * each is a plain impedance. Cold copper, iron and leakage unsaturated, every reactance in proportion
 * to frequency. Touching turns are a shorted secondary of their own winding. Leaves out that the
 * current in a cage bar crowds the more the higher the frequency.
 *
 * @source method: Electric Machinery Fundamentals, 5th ed., ch. 9, at unit slip
 */
export function standstillOhms(
  { machine, context }: Circuit,
  winding: 'main' | 'start',
  frequencyRatio: number,
): Complex | undefined {
  if (machine === undefined) return undefined;
  turnAt(resting(machine, context.input.model?.hotFactor ?? 1, frequencyRatio), 1, still);
  const { z } = still;
  if (machine.shorted === undefined) return winding === 'main' ? [z[0]!, z[1]!] : [z[6]!, z[7]!];
  const own: Complex = winding === 'main' ? [z[0]!, z[1]!] : [z[8]!, z[9]!];
  return machine.shorted.winding === winding ? withSecondary(own, winding === 'main' ? 4 : 10) : own;
}

/** Scratch: the fields at standstill. */
const still = fields();

function resting(machine: Machine, hotFactor: number, frequencyRatio: number): Machine {
  return {
    ...machine,
    mainOhms: machine.mainOhms / hotFactor,
    startOhms: machine.startOhms / hotFactor,
    leakage: machine.leakage * frequencyRatio,
    startLeakage: machine.startLeakage * frequencyRatio,
    rotorLeakage: machine.rotorLeakage * frequencyRatio,
    magnetising: machine.magnetising * frequencyRatio,
    saturation: 1,
  };
}

/** z − m²/zₛ with the bridged turns zₛ as a closed loop; `mutual` is the place of m in the matrix. */
function withSecondary([re, im]: Complex, mutual: number): Complex {
  const { z } = still;
  const [mr, mi, sr, si] = [z[mutual]!, z[mutual + 1]!, z[16]!, z[17]!];
  const [qr, qi] = [mr * mr - mi * mi, 2 * mr * mi];
  const square = sr * sr + si * si;
  return [re - (qr * sr + qi * si) / square, im - (qi * sr - qr * si) / square];
}
