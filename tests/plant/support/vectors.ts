import { conditionsOf } from '../../../src/plant/conditions.ts';
import { type Phasor, partCurrent } from '../../../src/plant/electrical/branch.ts';
import { type Drive, driveOf } from '../../../src/plant/electrical/drive.ts';
import { applyEdits } from '../../../src/plant/electrical/edits.ts';
import { type Circuit, circuitOf } from '../../../src/plant/electrical/install.ts';
import { network } from '../../../src/plant/electrical/network.ts';
import { type Operating, operate } from '../../../src/plant/electrical/operate.ts';
import { atRest, type Position } from '../../../src/plant/electrical/positions.ts';
import { reduce, turn, turning, voltsWhen } from '../../../src/plant/electrical/reduce.ts';
import { heldAt } from '../../../src/plant/electrical/run-up.ts';
import { layOut } from '../../../src/plant/layout.ts';
import type { PlantInput, Unknowns } from '../../../src/plant/types.ts';
import type { Edit } from '../../../src/schema/fault.ts';
import type { Element } from '../../../src/schema/netlist.ts';
import { of } from '../../../src/units/units.ts';
import { elements, input, spreads } from './inputs.ts';
import { motor3Wire, piece } from './pieces.ts';

/** One installation held at a slip, whatever its torque: what the printed vectors were taken at. */
export interface Held {
  readonly circuit: Circuit;
  readonly at: Operating;
  amps(part: string): number;
  volts(one: string, other: string): number;
}

export interface Hold {
  readonly slip: number;
  readonly startIn: boolean;
  readonly edits?: readonly Edit[];
  readonly severity?: number;
  readonly unknowns?: Unknowns;
}

export function held(plant: PlantInput, hold: Hold): Held {
  const layout = layOut(plant.pieces);
  const faulted = applyEdits(layout, { edits: hold.edits ?? [], severity: hold.severity });
  const circuit = circuitOf(layout, faulted, {
    input: plant,
    conditions: conditionsOf(plant, spreads, hold.unknowns ?? {}),
  });
  const position: Position = {
    ...atRest({ calling: true, leads: 'connected' }),
    contactor: true,
    relay: hold.startIn,
    sense: hold.startIn,
  };
  const reduced = reduce(circuit, position, network(layout.size));
  const at = turning();
  turn(reduced, hold.slip, at);
  const end = heldAt(1 - hold.slip, hold.startIn);
  const operating: Operating = {
    mode: { starts: true, releases: !hold.startIn },
    end,
    reduced,
    turning: at,
    volts: voltsWhen(reduced, at),
  };
  return probesOf(circuit, operating);
}

const size = ({ re, im }: Phasor): number => Math.hypot(re, im);
export const node = ({ volts }: Operating, at: number): Phasor =>
  at < 0 ? { re: 0, im: 0 } : { re: volts.re[at]!, im: volts.im[at]! };

const ohms = (kind: Element['id'], value: number): Element => ({
  ...elements[kind]!,
  resistance: of(value, 'ohm'),
});

/** Constants of the printed whole-installation vectors, kind by kind. */
const vectorElements: Record<string, Element> = {
  ...elements,
  'breaker-pole': ohms('breaker-pole', 0.01),
  'switch-pole': ohms('switch-pole', 0.01),
  overload: ohms('overload', 0.02),
  wire: ohms('wire', 0.005),
  'loop-device': ohms('loop-device', 0.02),
  'lead-terminal': ohms('lead-terminal', 1e-6),
  protector: ohms('protector', 1e-6),
  insulation: ohms('insulation', 2e8),
  'relay-contact': { ...ohms('relay-contact', 0.02), open: of(1e8, 'ohm') },
  'relay-coil': {
    ...ohms('relay-coil', 5500),
    reactance: of(12000, 'ohm'),
    pickUp: of(270, 'V'),
    dropOut: of(90, 'V'),
  },
};

const vectorBox = piece('vector-box', 'box', [
  ['box.source-1', 'source', 'box.G', 'box.S1'],
  ['box.source-2', 'source', 'box.G', 'box.S2'],
  ['box.breaker-1', 'breaker-pole', 'box.S1', 'box.D1'],
  ['box.breaker-2', 'breaker-pole', 'box.S2', 'box.D2'],
  ['box.switch-1', 'switch-pole', 'box.D1', 'box.L1'],
  ['box.switch-2', 'switch-pole', 'box.D2', 'box.L2'],
  ['box.main-overload', 'overload', 'box.L1', 'box.B'],
  ['box.wire-yellow', 'wire', 'box.L2', 'box.Y'],
  ['box.tap', 'loop-device', 'box.B', 'box.X'],
  ['box.run-capacitor', 'capacitor-run', 'box.X', 'box.R'],
  ['box.start-capacitor', 'capacitor-start', 'box.X', 'box.one'],
  ['box.bleed', 'bleed', 'box.X', 'box.one'],
  ['box.relay-contact', 'relay-contact', 'box.one', 'box.R'],
  ['box.relay-coil', 'relay-coil', 'box.R', 'box.Y'],
  ['box.lead-yellow', 'lead-terminal', 'box.Y', 'lead.Y', 'yellow'],
  ['box.lead-black', 'lead-terminal', 'box.B', 'lead.B', 'black'],
  ['box.lead-red', 'lead-terminal', 'box.R', 'lead.R', 'red'],
  ['drop.yellow', 'conductor-buried', 'lead.Y', 'motor.Y', 'yellow'],
  ['drop.black', 'conductor-buried', 'lead.B', 'motor.B', 'black'],
  ['drop.red', 'conductor-buried', 'lead.R', 'motor.R', 'red'],
  ['motor.leak-yellow', 'insulation', 'motor.Y', 'box.G'],
  ['motor.leak-black', 'insulation', 'motor.B', 'box.G'],
  ['motor.leak-red', 'insulation', 'motor.R', 'box.G'],
]);

const bareMotor = { ...motor3Wire, parts: motor3Wire.parts.filter((part) => part.kind !== 'insulation') };

/** The installation that the printed vectors describe. */
export function vectorInput(motor: '1.5HP' | '3HP', cableOhms = 0.4): PlantInput {
  return {
    ...input({
      motor,
      pieces: [vectorBox, bareMotor],
      cableOhms: 2 * cableOhms,
      elements: vectorElements,
      load: 1,
      breakaway: 0.08,
    }),
  };
}

/** The same installation left to run up by itself; amps as the model gives them, not anchored. */
export interface RanUp extends Held {
  readonly drive: Drive;
}

export function runUp(plant: PlantInput, edits: readonly Edit[] = [], severity?: number): RanUp {
  const layout = layOut(plant.pieces);
  const circuit = circuitOf(layout, applyEdits(layout, { edits, severity }), {
    input: plant,
    conditions: conditionsOf(plant, spreads, {}),
  });
  const drive = driveOf(circuit, { calling: true, leads: 'connected', net: network(layout.size) });
  if (drive === undefined) throw new Error('a run-up needs a motor model');
  return { drive, ...probesOf(circuit, operate(drive)) };
}

function probesOf(circuit: Circuit, at: Operating): Held {
  const { indexOf, nodes } = circuit.layout;
  return {
    circuit,
    at,
    amps: (part) => size(partCurrent(circuit, at, indexOf.get(part)!)),
    volts: (one, other) => {
      const a = node(at, nodes.get(one)!);
      const b = node(at, nodes.get(other)!);
      return Math.hypot(a.re - b.re, a.im - b.im);
    },
  };
}
