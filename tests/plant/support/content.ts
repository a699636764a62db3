import type { PlantInput } from '../../../src/plant/types.ts';
import { conductor, type Motor, motor } from '../../../src/schema/motor.ts';
import { type Box, box, type Netlist, netlist } from '../../../src/schema/netlist.ts';
import { of } from '../../../src/units/units.ts';
import { elements, models } from './inputs.ts';

/** The project's own pieces, boxes and motor rows, for tests of what content puts together. */
type Files = Readonly<Record<string, unknown>>;
function read<T extends { readonly id: string }>(
  files: Files,
  parse: (file: unknown) => T,
): Record<string, T> {
  return Object.fromEntries(
    Object.values(files)
      .map((file) => parse(file))
      .map((record) => [record.id, record]),
  );
}

export const netlists: Record<string, Netlist> = read(
  import.meta.glob('../../../content/netlists/*.json', { eager: true, import: 'default' }),
  (file) => netlist.parse(file),
);
export const boxes: Record<string, Box> = read(
  import.meta.glob('../../../content/boxes/*.json', { eager: true, import: 'default' }),
  (file) => box.parse(file),
);
export const motors: Record<string, Motor> = read(
  import.meta.glob('../../../content/motors/*.json', { eager: true, import: 'default' }),
  (file) => motor.parse(file),
);
const conductors = read(
  import.meta.glob('../../../content/conductors/*.json', { eager: true, import: 'default' }),
  (file) => conductor.parse(file),
);

export type Swaps = Readonly<Record<string, string>>;

/** The pieces of a box, some of them swapped for others. */
export function piecesOf(id: string, swaps: Swaps = {}): Netlist[] {
  return boxes[id]!.pieces.map((piece) => {
    const found = netlists[swaps[piece] ?? piece];
    if (found === undefined) throw new Error(`no netlist ${swaps[piece] ?? piece}`);
    return found;
  });
}

/** A box with a motor row it serves: 15 m buried, 60 m down, at the volts of a good service. */
export function contentInput(boxId: string, motorId: string, swaps: Swaps = {}): PlantInput {
  const row = motors[motorId]!;
  const cable = conductors[row.power > 2500 ? 'copper-6' : 'copper-12']!;
  return {
    pieces: piecesOf(boxId, swaps),
    elements,
    motor: row,
    model: models[motorId],
    volts: of((row.volts * 240) / 230, 'V'),
    buried: { conductor: cable, length: of(15, 'm') },
    drop: { conductor: cable, length: of(60, 'm') },
    startCapacitor: row.startCapacitor,
    runCapacitor: row.runCapacitor,
    plugApart: boxes[boxId]!.plugApart,
    nominalLoad: 0.92,
    nominalBreakaway: 0.15,
  };
}
