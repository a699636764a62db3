import { type Layout, partsOf } from '../layout.ts';
import type { Faulted, PartCondition } from './edits.ts';
import { type ElementContext, elementOf, impedanceOf } from './elements/impedance.ts';
import { passiveImpedance } from './elements/passive.ts';
import { machineIn } from './machine.ts';
import type { Machine } from './motor.ts';
import {
  type Complex,
  clear,
  MOST_SIEMENS,
  MOST_SIEMENS_DC,
  type Network,
  NODE_LEAK,
  NODE_LEAK_DC,
  type Phasors,
  push,
  stamp,
} from './network.ts';
import { isMade, type Position } from './positions.ts';

/**
 * From an installation with faults to the network that stands for it in one position of its contacts.
 *
 * Every part becomes one admittance between its two nodes. What a contact does is looked up in the
 * position; what a fault does is already in the part's condition.
 */
export interface Circuit {
  readonly layout: Layout;
  readonly faulted: Faulted;
  readonly context: ElementContext;
  /** Admittance at line frequency when made. */
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** Conductance to an ohmmeter when made. */
  readonly dc: Float64Array;
  /** Conductance when apart. */
  readonly apart: Float64Array;
  /** Volts of each source part. */
  readonly emf: Float64Array;
  /** Conductance of a short. */
  readonly wire: number;
  /** The motor with what its faults do to the windings; undefined without a model. */
  readonly machine: Machine | undefined;
}

export function circuitOf(layout: Layout, faulted: Faulted, context: ElementContext): Circuit {
  const count = layout.parts.length;
  const room = new ArrayBuffer(40 * count);
  const row = (place: number): Float64Array => new Float64Array(room, 8 * place * count, count);
  const circuit: Circuit = {
    layout,
    faulted,
    context,
    re: row(0),
    im: row(1),
    dc: row(2),
    apart: row(3),
    emf: row(4),
    wire: 1 / passiveImpedance(elementOf(context.input, 'wire'), 1).re,
    machine: machineIn(layout, faulted, context),
  };
  for (let index = 0; index < count; index++) fill(circuit, index);
  legs(circuit);
  return circuit;
}

function fill(circuit: Circuit, index: number): void {
  const part = circuit.layout.parts[index]!;
  const condition = circuit.faulted.parts[index]!;
  const { re, im, dc } = impedanceOf(part, condition, circuit.context);
  const series = re + condition.seriesOhms;
  const square = series * series + im * im;
  if (square < 1 / MOST_SIEMENS ** 2) {
    circuit.re[index] = MOST_SIEMENS;
  } else if (Number.isFinite(square)) {
    circuit.re[index] = series / square;
    circuit.im[index] = -im / square;
  }
  circuit.dc[index] = Math.min(MOST_SIEMENS_DC, 1 / (dc + condition.seriesOhms));
  const open = elementOf(circuit.context.input, part.kind).open;
  circuit.apart[index] = open === undefined ? 0 : 1 / open;
}

/**
 * The first source is leg one at the phase of reference, every other one opposes it; together they
 * give the supply volts, so that one alone, against the neutral, gives the whole.
 */
function legs({ layout, faulted, context, emf }: Circuit): void {
  const sources = partsOf(layout, 'source');
  const share = context.conditions.volts / sources.length;
  sources.forEach((part, leg) => {
    emf[part] = (leg === 0 ? share : -share) * (faulted.supply.get(part) ?? 1);
  });
}

/** How a part conducts in a position. */
export type Conduction = 'none' | 'made' | 'apart' | 'bridged';

export function conduction(circuit: Circuit, index: number, position: Position): Conduction {
  const condition: PartCondition = circuit.faulted.parts[index]!;
  if (condition.open || (condition.openUntilCool && !position.cooled)) return 'none';
  if (condition.shorted) return 'bridged';
  if (condition.stuck !== undefined) return condition.stuck;
  return isMade(circuit.layout.parts[index]!.kind, position) ? 'made' : 'apart';
}

/** Fills the node equations at line frequency; windings are left out. */
export function assembleLine(circuit: Circuit, position: Position, net: Network): void {
  clear(net, NODE_LEAK);
  for (let index = 0; index < circuit.re.length; index++) {
    const siemens = admittance(circuit, index, position);
    if (siemens[0] !== 0 || siemens[1] !== 0) stamp(net, endsOf(circuit, index), siemens);
  }
  stampLeaks(circuit, position, { net, most: MOST_SIEMENS });
}

/** Fills the node equations as an ohmmeter sees them; the supply is locked off, so sources are gone. */
export function assembleOhms(circuit: Circuit, position: Position, net: Network): void {
  clear(net, NODE_LEAK_DC);
  for (let index = 0; index < circuit.dc.length; index++) {
    const siemens = conductance(circuit, index, position);
    if (siemens !== 0) stamp(net, endsOf(circuit, index), [siemens, 0]);
  }
  stampLeaks(circuit, position, { net, most: MOST_SIEMENS_DC });
}

/** The leaks that faults add, none of them better than `most` siemens. */
export function stampLeaks(
  { faulted }: Circuit,
  { leads }: Position,
  to: { net: Network; most: number },
): void {
  for (const leak of faulted.leaks) {
    if (leak.untilSplit && leads === 'split') continue;
    stamp(to.net, [leak.from, leak.to], [Math.min(to.most, 1 / leak.ohms), 0]);
  }
}

const NOTHING: Complex = [0, 0];

/** Admittance of a part in a position, real and imaginary. */
export function admittance(circuit: Circuit, index: number, position: Position): Complex {
  switch (conduction(circuit, index, position)) {
    case 'none':
      return NOTHING;
    case 'made':
      return [circuit.re[index]!, circuit.im[index]!];
    case 'apart':
      return [circuit.apart[index]!, 0];
    case 'bridged':
      return [circuit.wire, 0];
  }
}

/** Conductance of a part to an ohmmeter in a position. */
export function conductance(circuit: Circuit, index: number, position: Position): number {
  switch (conduction(circuit, index, position)) {
    case 'none':
      return 0;
    case 'made':
      return circuit.dc[index]!;
    case 'apart':
      return circuit.apart[index]!;
    case 'bridged':
      return circuit.wire;
  }
}

export function endsOf({ faulted }: Circuit, index: number): readonly [number, number] {
  return [faulted.from[index]!, faulted.to[index]!];
}

/** Currents that the sources push into their nodes. */
export function pushSources(circuit: Circuit, position: Position, currents: Phasors): void {
  for (const part of partsOf(circuit.layout, 'source')) {
    if (conduction(circuit, part, position) !== 'made') continue;
    const emf = circuit.emf[part]!;
    push(currents, endsOf(circuit, part), [emf * circuit.re[part]!, emf * circuit.im[part]!]);
  }
}
