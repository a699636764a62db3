import { isBranchIn } from '../electrical/drive.ts';
import { elementOf } from '../electrical/elements/impedance.ts';
import type { Circuit } from '../electrical/install.ts';
import type { Operating } from '../electrical/operate.ts';
import { fullLoadAmps } from '../electrical/start-control.ts';
import { partsOf } from '../layout.ts';
import type { Regime } from '../types.ts';

/**
 * In which physical regime is a powered reading taken? Readings of one regime share their error.
 *
 * Static: the motor carries nothing to speak of. Running: it turns on its main winding and run
 * capacitor. Saturated: it is stalled, its start branch is in, or a capacitor is bridged; then iron
 * and leakage are far from where the model was fitted.
 */
export function regimeOf(circuit: Circuit, at: Operating): Regime {
  if (isQuiet(circuit, at)) return 'static';
  if (at.end.speed === 0 || isBranchIn(circuit, at.reduced.position)) return 'saturated';
  return (['capacitor-start', 'capacitor-run'] as const).some((kind) =>
    partsOf(circuit.layout, kind).some((part) => circuit.faulted.parts[part]!.shorted),
  )
    ? 'saturated'
    : 'running';
}

/** Too little current in both windings to be heard or felt. */
export function isQuiet(circuit: Circuit, at: Operating): boolean {
  const { input } = circuit.context;
  const { currents } = at.turning;
  const share = elementOf(input, 'winding-main').humShare ?? 0;
  const least = share * fullLoadAmps(input.motor, input.model);
  const main = Math.hypot(currents[0]!, currents[1]!);
  const start = Math.hypot(currents[2]!, currents[3]!);
  return Math.max(main, start) <= least;
}
