import { capacitanceOf } from '../electrical/elements/capacitor.ts';
import { elementOf } from '../electrical/elements/impedance.ts';
import { admittance, type Circuit, conduction, endsOf, stampLeaks } from '../electrical/install.ts';
import { LINE_RADIANS } from '../electrical/line.ts';
import {
  type Complex,
  clear,
  difference,
  emptyProbe,
  inSlot,
  MOST_SIEMENS,
  type Network,
  NODE_LEAK,
  nodeVolts,
  push,
  stamp,
} from '../electrical/network.ts';
import type { Position } from '../electrical/positions.ts';
import { standstillOhms } from '../electrical/standstill.ts';
import { constant } from '../electrical/start-control.ts';
import type { PlantReading, ReadingSite } from '../types.ts';
import { restOf } from './ohms.ts';
import type { VoltBench } from './volts.ts';

/**
 * What does a capacitance meter show?
 *
 * On a capacitor with one lead off: its microfarads as they stand; nothing when it is open. On two
 * points of a dead installation: whatever joins them, at the frequency of the meter, taken for a
 * capacitor. A bridged one never charges: the meter shows over-range, one farad here, more than any
 * instrument can show.
 */
export const OVER_RANGE_FARADS = 1;

export function capacitanceAcross(circuit: Circuit, part: number): PlantReading {
  const { kind } = circuit.layout.parts[part]!;
  if (kind !== 'capacitor-start' && kind !== 'capacitor-run')
    return { kind: 'none', reason: 'not-a-plant-reading' };
  const condition = circuit.faulted.parts[part]!;
  const farads = condition.shorted
    ? OVER_RANGE_FARADS
    : capacitanceOf(kind, condition.scale, circuit.context);
  return { kind: 'value', value: condition.open ? 0 : farads, regime: 'static' };
}

/** In circuit: |Y|/ω of everything between the probes, so that a winding or a bleed beside it spoils it. */
export function capacitanceBetween(
  { circuit, voltSlot }: VoltBench,
  ends: readonly [number, number],
  site: ReadingSite,
): PlantReading {
  const meter = elementOf(circuit.context.input, 'capacitance-meter');
  const radians = 2 * Math.PI * constant(meter.frequency, 'capacitance-meter', 'frequency');
  const position = restOf(circuit, site);
  const net = inSlot(voltSlot, {}, (empty) => assemble(circuit, { position, radians }, empty));
  const probe = emptyProbe(voltSlot);
  push(probe, ends, [-1, 0]);
  nodeVolts(net, probe);
  const farads = 1 / (radians * Math.hypot(...difference(probe, ends)));
  return { kind: 'value', value: Math.min(OVER_RANGE_FARADS, farads), regime: 'static' };
}

interface Measured {
  readonly position: Position;
  readonly radians: number;
}

/** The node equations at the meter's frequency; the supply is locked off, so sources are gone. */
function assemble(circuit: Circuit, at: Measured, net: Network): void {
  clear(net, NODE_LEAK);
  circuit.layout.parts.forEach(({ kind }, index) => {
    if (kind === 'source') return;
    const made = conduction(circuit, index, at.position) === 'made';
    const siemens = made ? whenMade(circuit, index, at) : admittance(circuit, index, at.position);
    if (siemens[0] !== 0 || siemens[1] !== 0) stamp(net, endsOf(circuit, index), siemens);
  });
  stampLeaks(circuit, at.position, { net, most: MOST_SIEMENS });
}

function whenMade(circuit: Circuit, index: number, { position, radians }: Measured): Complex {
  const ratio = radians / LINE_RADIANS;
  const { kind } = circuit.layout.parts[index]!;
  if (kind === 'winding-main' || kind === 'winding-start') {
    const ohms = standstillOhms(circuit, kind === 'winding-main' ? 'main' : 'start', ratio);
    return ohms === undefined ? [circuit.dc[index]!, 0] : inverse(ohms);
  }
  const atLine = admittance(circuit, index, position);
  if (atLine[1] === 0) return atLine;
  const [re, im] = inverse(atLine);
  if (im > 0) return inverse([re, im * ratio]);
  const joint = circuit.faulted.parts[index]!.seriesOhms;
  return inverse([joint + (re - joint) / ratio, im / ratio]);
}

const inverse = ([re, im]: Complex): Complex => {
  const square = re * re + im * im;
  return [re / square, -im / square];
};
