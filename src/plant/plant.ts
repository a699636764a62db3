import { conditionsOf, loaded, waterAt } from './conditions.ts';
import { applyEdits } from './electrical/edits.ts';
import { circuitOf } from './electrical/install.ts';
import { layOut } from './layout.ts';
import { plantState, sharedOf } from './state.ts';
import {
  type Injection,
  type Mode,
  type Plant,
  type PlantInput,
  type PlantState,
  type Spreads,
  UNKNOWNS,
  type Unknowns,
} from './types.ts';
import type { Drive, WaterInjection, WaterInput, WaterPlant, WaterState } from './water/types.ts';
import { setUpWater } from './water/water.ts';
import { driveOf, wholeState } from './whole.ts';

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
  const electrical = (injection: Injection, at: { unknowns: Unknowns; forced?: Mode }, load: number) => {
    const conditions = loaded(conditionsOf(input, spreads, at.unknowns), load);
    const circuit = circuitOf(layout, applyEdits(layout, injection), { input, conditions });
    return plantState(circuit, shared, at.forced);
  };
  const drives = new Map<string, Drive>();
  const soundDrive = (forced?: Mode): Drive => {
    const key = `${forced?.starts} ${forced?.releases}`;
    const known = drives.get(key);
    if (known !== undefined) return known;
    const made = driveOf(
      electrical(SOUND, forced === undefined ? { unknowns: {} } : { unknowns: {}, forced }, 1),
    );
    drives.set(key, made);
    return made;
  };
  return {
    state(injection: Injection, unknowns: Unknowns, forced?: Mode): PlantState {
      const at = forced === undefined ? { unknowns } : { unknowns, forced };
      if (input.water === undefined) return electrical(injection, at, 1);
      const faults = waterOf(injection);
      const side = waterSide(input.water, spreads, unknowns);
      return wholeState({
        electrical: (load) => electrical(injection, at, load),
        water: (drive) => side().plant.state(faults, drive),
        soundWater: () => side().sound,
        soundDrive: isMotorSound(injection, unknowns) ? () => soundDrive(forced) : undefined,
        isWaterSound: faults.edits.length + (faults.beside?.edits.length ?? 0) === 0,
        input: () => side().input,
      });
    },
  };
}

/** The water system with its unknowns moved; made when something of the water is asked. */
function waterSide(usual: WaterInput, spreads: Spreads, unknowns: Unknowns) {
  let made: { input: WaterInput; plant: WaterPlant; sound: WaterState } | undefined;
  return () => {
    if (made !== undefined) return made;
    const input = waterAt(usual, spreads, unknowns);
    const plant = setUpWater(input);
    made = { input, plant, sound: plant.state({ edits: [], severity: undefined }) };
    return made;
  };
}

/** The water half of what is wrong. */
function waterOf({ water = [], severity, beside }: Injection): WaterInjection {
  const other = beside === undefined ? undefined : { edits: beside.water ?? [], severity: beside.severity };
  return { edits: water, severity, beside: other };
}

const SOUND: Injection = { edits: [], severity: undefined };

/** Nothing electrical is wrong or moved: speed and starting are those of the sound installation. */
const isMotorSound = ({ edits, beside }: Injection, unknowns: Unknowns): boolean =>
  edits.length === 0 &&
  (beside?.edits.length ?? 0) === 0 &&
  UNKNOWNS.every((name) => (unknowns[name] ?? 0) === 0);
