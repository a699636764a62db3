import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { partCurrent } from '../../src/plant/electrical/branch.ts';
import { type Circuit, endsOf } from '../../src/plant/electrical/install.ts';
import { type Fields, fields, torque, turnAt } from '../../src/plant/electrical/motor.ts';
import { setUp } from '../../src/plant/plant.ts';
import { type Mode, UNKNOWNS, type Unknowns } from '../../src/plant/types.ts';
import type { Edit } from '../../src/schema/fault.ts';
import type { Netlist } from '../../src/schema/netlist.ts';
import { IDLE, LIFTED, OFF, RUN, SPLIT } from './support/ask.ts';
import {
  input,
  large,
  plugApart,
  plugApartPotential,
  type Setting,
  small,
  spreads,
  twoWire,
} from './support/inputs.ts';
import { contactor, noBox, startAndRun, startOnly, startOnlyPotential } from './support/pieces.ts';
import { held, node } from './support/vectors.ts';

/** What must hold for every installation, fault and unknown. */
const RUNS = { seed: 20251, numRuns: 60 };
const motor = fc.constantFrom('1.5HP' as const, '3HP' as const);
const plantOf = (which: '1.5HP' | '3HP') =>
  input({ ...(which === '3HP' ? large : small), pieces: startAndRun, load: 1 });
const slip = fc.double({ min: 0.01, max: 1.95, noNaN: true });

describe('held at a slip', () => {
  test('power in is what resistances and rotor take, to a microwatt', () => {
    fc.assert(
      fc.property(
        motor,
        slip,
        fc.boolean(),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (which, at, startIn, ohms) => {
          const got = held(plantOf(which), {
            slip: at,
            startIn,
            edits: [{ edit: 'series', part: 'drop.black' }],
            severity: ohms,
          });
          const { circuit } = got;
          let balance = 0;
          circuit.layout.parts.forEach((_part, index) => {
            const [from, to] = endsOf(circuit, index);
            const a = node(got.at, from);
            const b = node(got.at, to);
            const current = partCurrent(circuit, got.at, index);
            balance += (a.re - b.re) * current.re + (a.im - b.im) * current.im;
          });
          const leaked = [...circuit.layout.nodes.values()].reduce((sum, number) => {
            const { re, im } = node(got.at, number);
            return sum + 5e-9 * (re * re + im * im);
          }, 0);
          expect(Math.abs(balance + leaked)).toBeLessThan(1e-6);
        },
      ),
      RUNS,
    );
  });

  test('the windings take what their resistance and the rotating fields take', () => {
    fc.assert(
      fc.property(motor, slip, fc.boolean(), (which, at, startIn) => {
        const { circuit, at: operating } = held(plantOf(which), { slip: at, startIn });
        const model = circuit.context.input.model!;
        const { currents } = operating.turning;
        const field = fieldsOf(circuit, at);
        const volts = (part: string) => {
          const [from, to] = endsOf(circuit, circuit.layout.indexOf.get(part)!);
          const a = node(operating, from);
          const b = node(operating, to);
          return { re: a.re - b.re, im: a.im - b.im };
        };
        const main = volts('motor.main');
        const start = volts('motor.start');
        const taken =
          main.re * currents[0]! + main.im * currents[1]! + start.re * currents[2]! + start.im * currents[3]!;
        const a = model.turnsRatio;
        const square = (re: number, im: number) => re * re + im * im;
        const forward = square(currents[0]! + a * currents[3]!, currents[1]! - a * currents[2]!) / 4;
        const backward = square(currents[0]! - a * currents[3]!, currents[1]! + a * currents[2]!) / 4;
        const copper =
          model.coldMain * model.hotFactor * square(currents[0]!, currents[1]!) +
          model.coldStart * model.hotFactor * square(currents[2]!, currents[3]!);
        const expected = copper + 2 * forward * field.forwardRe + 2 * backward * field.backwardRe;
        expect(Math.abs(taken - expected)).toBeLessThan(1e-6);
      }),
      RUNS,
    );
  });

  test('with the start winding open nothing turns it at standstill', () => {
    for (const which of ['1.5HP', '3HP'] as const) {
      const got = held(plantOf(which), {
        slip: 1,
        startIn: true,
        edits: [{ edit: 'open', part: 'motor.start' }],
      });
      expect(Math.abs(got.at.turning.torque)).toBeLessThan(1e-5);
    }
  });

  test('reversing one winding reverses the starting torque exactly', () => {
    for (const which of ['1.5HP', '3HP'] as const) {
      const forward = held(plantOf(which), { slip: 1, startIn: true }).at.turning;
      const currents = Float64Array.from(forward.currents, (value, place) =>
        place === 2 || place === 3 ? -value : value,
      );
      expect(forward.torque).not.toBe(0);
      expect(torqueOf(which, currents)).toBeCloseTo(-forward.torque, 12);
    }
  });

  test('start contact open and no run capacitor: red carries the relay coil, yellow equals black', () => {
    for (const which of ['1.5HP', '3HP'] as const) {
      const edits: Edit[] = [{ edit: 'open', part: 'box.run-capacitor' }];
      const got = held(plantOf(which), { slip: 0.03, startIn: false, edits });
      expect(got.amps('box.lead-red')).toBeGreaterThan(0.0165);
      expect(got.amps('box.lead-red')).toBeLessThan(0.0185);
      expect(Math.abs(got.amps('box.lead-yellow') - got.amps('box.lead-black'))).toBeLessThan(0.006);
      const coilOpen = held(plantOf(which), {
        slip: 0.03,
        startIn: false,
        edits: [...edits, { edit: 'open', part: 'box.relay-coil' }],
      });
      expect(coilOpen.amps('box.lead-red')).toBeLessThan(1e-5);
      expect(Math.abs(coilOpen.amps('box.lead-yellow') - coilOpen.amps('box.lead-black'))).toBeLessThan(3e-5);
    }
  });

  test('a bad splice in black or yellow never raises the volts of the motor', () => {
    fc.assert(
      fc.property(
        motor,
        slip,
        fc.boolean(),
        fc.constantFrom('drop.black', 'drop.yellow'),
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        (which, at, startIn, part, ohms) => {
          const sound = held(plantOf(which), { slip: at, startIn });
          const bad = held(plantOf(which), {
            slip: at,
            startIn,
            edits: [{ edit: 'series', part }],
            severity: ohms,
          });
          expect(bad.volts('motor.B', 'motor.Y')).toBeLessThanOrEqual(
            sound.volts('motor.B', 'motor.Y') + 1e-9,
          );
        },
      ),
      RUNS,
    );
  });

  test('volts times x: currents times x, torque times x squared', () => {
    fc.assert(
      fc.property(
        motor,
        slip,
        fc.boolean(),
        fc.double({ min: 0.5, max: 1.2, noNaN: true }),
        (which, at, startIn, x) => {
          const one = held(plantOf(which), { slip: at, startIn });
          const other = held(plantOf(which), {
            slip: at,
            startIn,
            edits: [{ edit: 'supply', leg: 'both' }],
            severity: x,
          });
          for (const lead of ['yellow', 'black', 'red']) {
            expect(other.amps(`box.lead-${lead}`) / one.amps(`box.lead-${lead}`)).toBeCloseTo(x, 9);
          }
          expect(other.at.turning.torque).toBeCloseTo(one.at.turning.torque * x * x, 9);
        },
      ),
      RUNS,
    );
  });

  test('leads lifted, the sum rule of three ohm readings is exact', () => {
    fc.assert(
      fc.property(motor, fc.double({ min: 0.05, max: 3, noNaN: true }), (which, cable) => {
        const setting: Setting = { ...(which === '3HP' ? large : small), cableOhms: cable };
        const state = setUp(input(setting), spreads).state({ edits: [], severity: undefined }, {});
        const ohms = (one: string, other: string): number => {
          const got = state.read({
            at: { between: [`lead.${one}`, `lead.${other}`] },
            predict: { reads: 'ohms' },
            site: LIFTED,
          });
          return got.kind === 'value' ? got.value : Number.NaN;
        };
        const legs = cable + 0.005 + 0.02;
        expect(ohms('B', 'R')).toBeCloseTo(ohms('Y', 'B') + ohms('Y', 'R') - 2 * legs, 6);
      }),
      RUNS,
    );
  });
});

/** Torque of given winding currents at standstill. */
function torqueOf(which: '1.5HP' | '3HP', currents: Float64Array): number {
  const { circuit } = held(plantOf(which), { slip: 1, startIn: true });
  const { machine } = circuit;
  if (machine === undefined) throw new Error('no motor model');
  return torque(machine, fieldsOf(circuit, 1), currents);
}

/** The rotating fields of a circuit's motor at a slip. */
function fieldsOf({ machine }: Circuit, slip: number): Fields {
  if (machine === undefined) throw new Error('no motor model');
  const at = fields();
  turnAt(machine, slip, at);
  return at;
}

/** Every family, with edits that exist in it and a severity that fits any of them. */
const families: readonly (readonly [Setting, readonly Netlist[]])[] = [
  [small, startAndRun],
  [large, contactor],
  [plugApart, startOnly],
  [plugApartPotential, startOnlyPotential],
  [twoWire, noBox],
];

function editsOf(pieces: readonly Netlist[]): fc.Arbitrary<Edit> {
  const parts = pieces.flatMap((piece) => piece.parts);
  const nodes = [...new Set(parts.flatMap((part) => part.between))];
  const leads = parts.filter((part) => part.kind === 'lead-terminal').map((part) => part.id);
  const part = fc.constantFrom(...parts.map((one) => one.id));
  const anyNode = fc.constantFrom(...nodes);
  const lead = fc.constantFrom(...leads);
  return fc.oneof(
    part.map((id): Edit => ({ edit: 'open', part: id })),
    part.map((id): Edit => ({ edit: 'short', part: id })),
    fc
      .tuple(part, fc.constantFrom('made' as const, 'apart' as const))
      .map(([id, state]): Edit => ({ edit: 'stick', part: id, state })),
    part.map((id): Edit => ({ edit: 'series', part: id })),
    part.map((id): Edit => ({ edit: 'scale', part: id })),
    fc.tuple(anyNode, anyNode).map((pair): Edit => ({ edit: 'leak', nodes: pair })),
    fc.tuple(lead, lead).map((pair): Edit => ({ edit: 'exchange', parts: pair })),
    fc
      .constantFrom('both' as const, 'L1' as const, 'L2' as const)
      .map((leg): Edit => ({ edit: 'supply', leg })),
    fc
      .constantFrom('locked' as const, 'drag' as const, 'free' as const)
      .map((state): Edit => ({ edit: 'shaft', state })),
    fc.boolean().map((calling): Edit => ({ edit: 'command', calling })),
  );
}

const unknowns: fc.Arbitrary<Unknowns> = fc.record(
  Object.fromEntries(UNKNOWNS.map((name) => [name, fc.double({ min: -3, max: 3, noNaN: true })])),
  { requiredKeys: [] },
);
const forced: fc.Arbitrary<Mode | undefined> = fc.option(
  fc.record({ starts: fc.boolean(), releases: fc.boolean() }),
  { nil: undefined },
);

describe.each(families)('$motor', (setting, pieces) => {
  const plant = setUp(input(setting), spreads);
  const parts = pieces.flatMap((piece) => piece.parts);
  const nodes = [...new Set(parts.flatMap((part) => part.between))];

  test('every reading is a finite number, an answer or a reason; the same asked twice', () => {
    fc.assert(
      fc.property(
        fc.array(editsOf(pieces), { maxLength: 3 }),
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        unknowns,
        forced,
        (edits, severity, scores, mode) => {
          const state = plant.state({ edits, severity }, scores, mode);
          const again = plant.state({ edits, severity }, scores, mode);
          expect(Number.isFinite(state.margins.start)).toBe(true);
          expect(Number.isFinite(state.margins.release)).toBe(true);
          for (const request of requests(
            nodes,
            parts.map((part) => part.id),
          )) {
            const got = state.read(request);
            if (got.kind === 'value') {
              expect(Number.isFinite(got.value)).toBe(true);
              if (request.predict !== WATTS) expect(got.value).toBeGreaterThanOrEqual(0);
            }
            expect(again.read(request)).toEqual(got);
          }
        },
      ),
      { ...RUNS, numRuns: 40 },
    );
  });
});

const WATTS = { reads: 'watts' } as const;

function requests(
  nodes: readonly string[],
  parts: readonly string[],
): Parameters<ReturnType<ReturnType<typeof setUp>['state']>['read']>[0][] {
  const pairs = nodes.slice(1).map((one, place): [string, string] => [one, nodes[place]!]);
  return [
    ...pairs.flatMap((between) => [
      { at: { between }, predict: { reads: 'volts' as const }, site: RUN },
      { at: { between }, predict: { reads: 'volts-at-start' as const }, site: RUN },
      { at: { between }, predict: { reads: 'volts' as const }, site: IDLE },
      { at: { between }, predict: { reads: 'ohms' as const }, site: OFF },
      { at: { between }, predict: { reads: 'ohms' as const }, site: SPLIT },
    ]),
    ...parts.flatMap((part) => [
      { at: { clamp: [part] }, predict: { reads: 'amps' as const }, site: RUN },
      { at: { clamp: [part] }, predict: { reads: 'amps-at-start' as const }, site: RUN },
      { at: { across: part }, predict: { reads: 'ohms' as const }, site: OFF },
      { at: { across: part }, predict: { reads: 'capacitance' as const }, site: OFF },
    ]),
    { at: { clamp: [parts[0]!] }, predict: WATTS, site: RUN },
    ...(
      ['what-is-seen', 'sound', 'breaker-lever', 'contactor-position', 'contacts-made', 'trip-class'] as const
    ).map((rule) => ({
      at: { look: 'site' as const },
      predict: { rule },
      site: RUN,
    })),
  ];
}
