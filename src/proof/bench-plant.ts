import type { Catalog } from '../catalog/catalog.ts';
import { resolveSystem } from '../diagnosis/system.ts';
import { conditionsOf } from '../plant/conditions.ts';
import { driveOf } from '../plant/electrical/drive.ts';
import { applyEdits } from '../plant/electrical/edits.ts';
import { type Circuit, circuitOf } from '../plant/electrical/install.ts';
import { network } from '../plant/electrical/network.ts';
import { type Operating, operate } from '../plant/electrical/operate.ts';
import { reduce, turn, turning, voltsWhen } from '../plant/electrical/reduce.ts';
import { layOut } from '../plant/layout.ts';
import { setUp } from '../plant/plant.ts';
import type { Plant, ReadingRequest } from '../plant/types.ts';
import type { Installation } from '../schema/installation.ts';
import { perSecond, perSecondLater, type Timing } from './clock.ts';

/**
 * How many networks, equilibria and start sequences a second does the plant work out, and how many of
 * the same networks does a circuit simulator?
 *
 * A *network solve* fills, factors and solves one whole installation at one slip. An *equilibrium* puts
 * a fault into a plant, finds the speed at which it runs, mode forced, and reads one lead. A *start
 * sequence* does the same from standstill with the start control having its way.
 */
export interface Simulator {
  /** The installation as a deck for the simulator. */
  deck(circuit: Circuit, at: Operating): string;
  simulate(text: string): Promise<unknown>;
}

const INSTALLATION: Installation = {
  box: 'start-and-run-main-overload-in-line',
  motor: '3-wire-1.5hp-230v-start-and-run',
};
const AMPS: ReadingRequest = {
  at: { clamp: ['box.lead-yellow'] },
  predict: { reads: 'amps' },
  site: { powered: true, calling: true, leads: 'connected' },
};
const RUNNING = { starts: true, releases: true } as const;
/** Enough different sites that nothing is worked out twice. */
const SITES = 64;

export interface PlantSpeed {
  readonly networkSolvesPerSecond: number;
  readonly equilibriaPerSecond: number;
  readonly startSequencesPerSecond: number;
  readonly ngspiceSolvesPerSecond: number | null;
}

export async function plantSpeed(
  catalog: Catalog,
  simulator: Simulator | undefined,
  timing: Timing,
): Promise<PlantSpeed> {
  const [choice] = resolveSystem(catalog, INSTALLATION).choices;
  if (choice === undefined)
    throw new Error('proof: the content lacks the installation of the bench; mend its ids');
  const plant = setUp(choice.input, choice.spreads);
  const layout = layOut(choice.input.pieces);
  const edits = applyEdits(layout, { edits: [], severity: undefined });
  const conditions = conditionsOf(choice.input, choice.spreads, {});
  const circuit = circuitOf(layout, edits, { input: choice.input, conditions });
  const net = network(layout.size);
  const drive = driveOf(circuit, { calling: true, leads: 'connected', net });
  if (drive === undefined) throw new Error('proof: the motor of the bench has no model');
  const at = operate(drive);
  const out = turning();
  return {
    networkSolvesPerSecond: perSecond(() => {
      const reduced = reduce(circuit, at.reduced.position, net);
      turn(reduced, 1 - at.end.speed, out);
      voltsWhen(reduced, out);
    }, timing),
    equilibriaPerSecond: perSecond(reader(plant, RUNNING), timing),
    startSequencesPerSecond: perSecond(reader(plant, undefined), timing),
    ngspiceSolvesPerSecond:
      simulator === undefined
        ? null
        : await perSecondLater(() => simulator.simulate(simulator.deck(circuit, at)), timing),
  };
}

/** One reading of a plant that is a little different each time. */
function reader(plant: Plant, forced: typeof RUNNING | undefined): () => void {
  let turnNumber = 0;
  return () => {
    turnNumber = (turnNumber + 1) % SITES;
    const unknowns = { load: turnNumber / SITES - 0.5, volts: 0.5 - turnNumber / SITES };
    const got = plant.state({ edits: [], severity: undefined }, unknowns, forced).read(AMPS);
    if (got.kind !== 'value') throw new Error(`proof: the bench read ${JSON.stringify(got)}`);
  };
}
