import { impedanceOf } from '../../src/plant/electrical/elements/impedance.ts';
import type { Circuit } from '../../src/plant/electrical/install.ts';
import { conduction, endsOf } from '../../src/plant/electrical/install.ts';
import { LINE_RADIANS } from '../../src/plant/electrical/line.ts';
import type { Machine } from '../../src/plant/electrical/motor.ts';
import { NODE_LEAK } from '../../src/plant/electrical/network.ts';
import type { Operating } from '../../src/plant/electrical/operate.ts';
import { partsOf } from '../../src/plant/layout.ts';

/**
 * A whole installation at one slip as a circuit-simulator deck: the slow, obvious second route.
 *
 * Parts become resistors, inductors and capacitors. The motor is built from its physics, not from
 * the plant's winding matrix: two rotor circuits fed by the forward and backward field currents,
 * whose volts drive the windings back. Multiplying by j is done by an inductor of 1/ω henry. A
 * winding with shorted turns is two coupled sections with a resistor across one.
 */
export function deck(circuit: Circuit, at: Operating): string {
  const lines = ['installation'];
  for (let index = 0; index < circuit.layout.parts.length; index++)
    lines.push(...partLines(circuit, at, index));
  for (const [n, leak] of circuit.faulted.leaks.entries()) {
    lines.push(`Rleak${n} ${name(leak.from)} ${name(leak.to)} ${leak.ohms}`);
  }
  for (let node = 0; node < circuit.layout.size; node++)
    lines.push(`Rnode${node} ${name(node)} 0 ${1 / NODE_LEAK}`);
  const { machine } = circuit;
  if (machine === undefined) throw new Error('the oracle needs a motor model');
  lines.push(...motorLines(circuit, machine, 1 - at.end.speed));
  lines.push('.ac lin 1 60 60', '.end');
  return lines.join('\n');
}

/** Name of a node in the deck; the reference is the simulator's ground. */
export const name = (node: number): string => (node < 0 ? '0' : `n${node}`);

/** R, L and C in a row between two nodes; a negative reactance is a capacitor. */
function series(tag: string, from: string, to: string, z: { re: number; im: number }): string[] {
  if (z.im === 0) return [`R${tag} ${from} ${to} ${z.re}`];
  const reactive =
    z.im > 0
      ? `L${tag} m${tag} ${to} ${z.im / LINE_RADIANS}`
      : `C${tag} m${tag} ${to} ${-1 / (LINE_RADIANS * z.im)}`;
  return [z.re === 0 ? `V${tag}z ${from} m${tag} 0` : `R${tag} ${from} m${tag} ${z.re}`, reactive];
}

/** Every part carries an ammeter, so that its amps can be compared. */
function partLines(circuit: Circuit, at: Operating, index: number): string[] {
  const part = circuit.layout.parts[index]!;
  const condition = circuit.faulted.parts[index]!;
  const [from, to] = endsOf(circuit, index).map(name);
  const tag = `p${index}`;
  const ammeter = `Vi${tag} ${from} a${tag} 0`;
  switch (conduction(circuit, index, at.reduced.position)) {
    case 'none':
      return [];
    case 'bridged':
      return [ammeter, `R${tag} a${tag} ${to} ${1 / circuit.wire}`];
    case 'apart':
      return circuit.apart[index] === 0
        ? []
        : [ammeter, `R${tag} a${tag} ${to} ${1 / circuit.apart[index]!}`];
    case 'made': {
      const { re, im } = impedanceOf(part, condition, circuit.context);
      if (!Number.isFinite(re)) return [];
      const z = { re: re + condition.seriesOhms, im };
      if (part.kind !== 'source') return [ammeter, ...series(tag, `a${tag}`, to!, z)];
      const volts = circuit.emf[index]!;
      return [
        ammeter,
        `Ve${tag} e${tag} a${tag} dc 0 ac ${Math.abs(volts)} ${volts < 0 ? 180 : 0}`,
        ...series(tag, `e${tag}`, to!, z),
      ];
    }
  }
}

interface Section {
  readonly tag: string;
  readonly turns: number;
  readonly isStart: boolean;
  readonly ohms: number;
  readonly henries: number;
  readonly from: string;
  readonly to: string;
}

function motorLines(circuit: Circuit, machine: Machine, slip: number): string[] {
  const saturated = 1 + (machine.saturation - 1) * Math.min(1, Math.abs(slip));
  const sections = [
    ...windingSections(circuit, machine, saturated, 'main'),
    ...windingSections(circuit, machine, saturated, 'start'),
  ];
  return [
    ...sections.flatMap(sectionLines),
    ...coupling(circuit, machine, saturated),
    ...fieldLines('f', machine, { slip, saturated }, sections),
    ...fieldLines('b', machine, { slip: 2 - slip, saturated }, sections),
  ];
}

function windingSections(
  circuit: Circuit,
  machine: Machine,
  saturated: number,
  which: 'main' | 'start',
): Section[] {
  const index = partsOf(circuit.layout, `winding-${which}`)[0]!;
  const [from, to] = endsOf(circuit, index).map(name) as [string, string];
  const isStart = which === 'start';
  const turns = isStart ? machine.turns : 1;
  const ohms = isStart ? machine.startOhms : machine.mainOhms;
  const outside = isStart ? machine.startSeries : machine.mainSeries;
  const leakage = (saturated * (isStart ? machine.startLeakage : machine.leakage)) / LINE_RADIANS;
  const { shorted } = machine;
  if (shorted === undefined || shorted.winding !== which) {
    return [{ tag: which, turns, isStart, ohms: ohms + outside, henries: leakage, from, to }];
  }
  const k = shorted.share;
  const local = 0.5 * leakage * k * (1 - k);
  return [
    {
      tag: which,
      turns: (1 - k) * turns,
      isStart,
      ohms: (1 - k) * ohms + outside,
      henries: (1 - k) ** 2 * leakage + local,
      from,
      to: 'tap',
    },
    {
      tag: 'short',
      turns: k * turns,
      isStart,
      ohms: k * ohms,
      henries: k * k * leakage + local,
      from: 'tap',
      to,
    },
  ];
}

/** Resistance, leakage, then the volts that both fields induce. */
function sectionLines({ tag, turns, isStart, ohms, henries, from, to }: Section): string[] {
  const lines = [
    `Vw${tag} ${from} w1${tag} 0`,
    `Rw${tag} w1${tag} w2${tag} ${ohms}`,
    `Lw${tag} w2${tag} w3${tag} ${henries}`,
  ];
  if (!isStart)
    return [...lines, `Ef${tag} w3${tag} w4${tag} ef 0 ${turns}`, `Eb${tag} w4${tag} ${to} eb 0 ${turns}`];
  return [...lines, `Ef${tag} w3${tag} w4${tag} jef 0 ${turns}`, `Eb${tag} w4${tag} ${to} jeb 0 ${-turns}`];
}

/** The touching spot, and the leakage that both sections link. */
function coupling(circuit: Circuit, machine: Machine, saturated: number): string[] {
  const { shorted } = machine;
  if (shorted === undefined) return [];
  const end = endsOf(circuit, partsOf(circuit.layout, `winding-${shorted.winding}`)[0]!)[1];
  const leakage =
    (saturated * (shorted.winding === 'start' ? machine.startLeakage : machine.leakage)) / LINE_RADIANS;
  const k = shorted.share;
  const local = 0.5 * leakage * k * (1 - k);
  const one = (1 - k) ** 2 * leakage + local;
  const other = k * k * leakage + local;
  return [
    `Rspot tap ${name(end)} ${shorted.spot}`,
    `Kw Lw${shorted.winding} Lwshort ${(k * (1 - k) * leakage) / Math.sqrt(one * other)}`,
  ];
}

/**
 * One rotating field: the sum of half the turns times current, start windings turned by -j or +j,
 * driven through the magnetising branch, the iron and the rotor. `e` is its volts, `je` j times them.
 */
function fieldLines(
  tag: 'f' | 'b',
  machine: Machine,
  at: { slip: number; saturated: number },
  sections: readonly Section[],
): string[] {
  const r = (machine.rotor * (1 + (machine.skin - 1) * Math.sqrt(Math.abs(at.slip)))) / at.slip;
  const x = at.saturated * machine.rotorLeakage;
  const turn = tag === 'f' ? -1 : 1;
  const main = sections.filter((section) => !section.isStart);
  const start = sections.filter((section) => section.isStart);
  return [
    ...main.map((section) => `Fm${tag}${section.tag} 0 e${tag} Vw${section.tag} ${section.turns / 2}`),
    ...start.map((section) => `Fs${tag}${section.tag} 0 q${tag} Vw${section.tag} ${section.turns / 2}`),
    `Lq${tag} q${tag} 0 ${1 / LINE_RADIANS}`,
    `Gq${tag} 0 e${tag} q${tag} 0 ${turn}`,
    `Lm${tag} e${tag} 0 ${machine.magnetising / LINE_RADIANS}`,
    `Rc${tag} e${tag} 0 ${machine.ironLoss}`,
    `Rr${tag} e${tag} r${tag} ${r}`,
    `Lr${tag} r${tag} 0 ${x / LINE_RADIANS}`,
    `Gj${tag} 0 je${tag} e${tag} 0 1`,
    `Lj${tag} je${tag} 0 ${1 / LINE_RADIANS}`,
  ];
}
