import { conditionsOf, loaded } from './conditions.ts';
import { applyEdits } from './electrical/edits.ts';
import { circuitOf } from './electrical/install.ts';
import { layOut } from './layout.ts';
import { plantState, sharedOf } from './state.ts';
import type { Injection, Mode, Plant, PlantInput, PlantState, Spreads, Unknowns } from './types.ts';

/**
 * What would this installation read, sound or with these faults?
 *
 * The public door of the plant: pure and deterministic, in SI, knowing parts and physics and nothing
 * of faults, windows or people. A state is cheap to make and answers lazily; readings of one state
 * share one run-up.
 *
 * @throws when an edit names what the installation lacks, or content lacks an element kind in use
 */
export function setUp(input: PlantInput, spreads: Spreads): Plant {
  const layout = layOut(input.pieces);
  const shared = sharedOf(input, layout);
  return {
    state(injection: Injection, unknowns: Unknowns, forced?: Mode): PlantState {
      const nominal = conditionsOf(input, spreads, unknowns);
      const conditions = loaded(nominal, injection.pumpLoad);
      const circuit = circuitOf(layout, applyEdits(layout, injection), { input, conditions });
      return plantState(circuit, shared, forced);
    },
  };
}
