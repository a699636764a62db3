import { Simulation } from 'eecircuit-engine';
import { beforeAll, describe, expect, test } from 'vitest';
import { partCurrent } from '../../src/plant/electrical/branch.ts';
import type { Edit } from '../../src/schema/fault.ts';
import {
  input,
  large,
  plugApart,
  plugApartPotential,
  type Setting,
  small,
  twoWire,
} from '../plant/support/inputs.ts';
import { held, node, runUp } from '../plant/support/vectors.ts';
import { deck } from './spice.ts';

/**
 * Two routes to one network: the plant's reduced network and small motor matrix against a circuit
 * simulator's full deck, every node and every part, one part in a million of the value (or of a volt
 * and a tenth of a milliampere where there is next to none).
 */
const simulation = new Simulation();
beforeAll(async () => {
  await simulation.start();
}, 60_000);

interface Case {
  readonly name: string;
  readonly setting: Setting;
  readonly edits: Edit[];
  readonly severity?: number;
  /** Held at a slip; without it the installation runs up by itself. */
  readonly slip?: number;
}

const CASES: readonly Case[] = [
  { name: 'small, running', setting: small, edits: [] },
  { name: 'small, at standstill', setting: small, edits: [], slip: 1 },
  { name: 'small, half way, in reverse', setting: small, edits: [], slip: 1.6 },
  {
    name: 'small, contact welded',
    setting: small,
    edits: [{ edit: 'stick', part: 'box.relay-contact', state: 'made' }],
  },
  {
    name: 'small, run capacitor shorted',
    setting: small,
    edits: [{ edit: 'short', part: 'box.run-capacitor' }],
  },
  { name: 'small, main winding open', setting: small, edits: [{ edit: 'open', part: 'motor.main' }] },
  { name: 'small, yellow open', setting: small, edits: [{ edit: 'open', part: 'run.yellow' }] },
  { name: 'small, one leg lost', setting: small, edits: [{ edit: 'open', part: 'panel.breaker-1' }] },
  {
    name: 'small, a fifth of the main turns shorted',
    setting: small,
    edits: [{ edit: 'scale', part: 'motor.main' }],
    severity: 0.8,
  },
  {
    name: 'small, a fifth of the start turns shorted',
    setting: small,
    edits: [{ edit: 'scale', part: 'motor.start' }],
    severity: 0.8,
  },
  {
    name: 'small, 20 ohm to ground',
    setting: small,
    edits: [{ edit: 'leak', nodes: ['motor.B', 'motor.G'] }],
    severity: 20,
  },
  { name: 'large with contactor, running', setting: large, edits: [] },
  {
    name: 'large, 3 ohm in a splice',
    setting: large,
    edits: [{ edit: 'series', part: 'well.splice-black' }],
    severity: 3,
  },
  {
    name: 'large, yellow and red exchanged',
    setting: large,
    edits: [{ edit: 'exchange', parts: ['box.lead-yellow', 'box.lead-red'] }],
  },
  {
    name: 'large, black and red exchanged',
    setting: large,
    edits: [{ edit: 'exchange', parts: ['box.lead-black', 'box.lead-red'] }],
  },
  {
    name: 'large, rotor locked, supply low',
    setting: large,
    edits: [
      { edit: 'shaft', state: 'locked' },
      { edit: 'supply', leg: 'both' },
    ],
    severity: 0.9,
  },
  { name: 'plug-apart, running', setting: plugApart, edits: [] },
  { name: 'plug-apart, at standstill', setting: plugApart, edits: [], slip: 1 },
  {
    name: 'plug-apart, start switch shorted',
    setting: plugApart,
    edits: [{ edit: 'short', part: 'box.sense-switch' }],
  },
  {
    name: 'plug-apart with a potential relay, start capacitor weak',
    setting: plugApartPotential,
    edits: [{ edit: 'scale', part: 'box.start-capacitor' }],
    severity: 0.4,
  },
  { name: 'two-wire, running', setting: twoWire, edits: [] },
  { name: 'two-wire, at standstill', setting: twoWire, edits: [], slip: 1 },
];

/** What the simulator says, by vector name; throws with its own words when it could not read the deck. */
async function simulate(text: string): Promise<ReadonlyMap<string, { re: number; im: number }>> {
  simulation.setNetList(text);
  const result = await simulation.runSim();
  const vectors = new Map<string, { re: number; im: number }>();
  if (result.dataType === 'complex') {
    for (const { name, values } of result.data) {
      const first = values[0];
      if (first !== undefined) vectors.set(name.toLowerCase(), { re: first.real, im: first.img });
    }
  }
  if (!vectors.has('v(n0)')) throw new Error(`no such deck: ${simulation.getError().join(' ')}`);
  return vectors;
}

const distance = (a: { re: number; im: number }, b: { re: number; im: number }): number =>
  Math.hypot(a.re - b.re, a.im - b.im);
const size = ({ re, im }: { re: number; im: number }): number => Math.hypot(re, im);

describe('the plant and a circuit simulator agree', () => {
  test.each(CASES)('$name', async (one) => {
    const plant = input(one.setting);
    const { circuit, at } =
      one.slip === undefined
        ? runUp(plant, one.edits, one.severity)
        : held(plant, {
            slip: one.slip,
            startIn: true,
            edits: one.edits,
            ...(one.severity === undefined ? {} : { severity: one.severity }),
          });
    const spice = await simulate(deck(circuit, at));
    let compared = 0;
    for (const number of circuit.layout.nodes.values()) {
      const theirs = spice.get(`v(n${number})`);
      if (theirs === undefined) continue;
      const ours = node(at, number);
      expect(distance(ours, theirs)).toBeLessThanOrEqual(1e-6 * Math.max(1, size(theirs)));
      compared++;
    }
    expect(compared).toBe(circuit.layout.size);
    let clamped = 0;
    circuit.layout.parts.forEach((part, index) => {
      const theirs = spice.get(`i(vip${index})`);
      if (theirs === undefined || part.kind === 'winding-main' || part.kind === 'winding-start') return;
      expect(distance(partCurrent(circuit, at, index), theirs)).toBeLessThanOrEqual(
        1e-6 * Math.max(0.1, size(theirs)),
      );
      clamped++;
    });
    expect(clamped).toBeGreaterThan(10);
  });

  test('a plant that is wrong by a hundredth is caught', async () => {
    const { circuit, at } = runUp(input(small));
    const spice = await simulate(
      deck(circuit, at).replace(
        /^(Rwmain .* )(\S+)$/m,
        (_line, head: string, ohms: string) => `${head}${Number(ohms) * 1.01}`,
      ),
    );
    const worst = Math.max(
      ...[...circuit.layout.nodes.values()].map((number) => {
        const theirs = spice.get(`v(n${number})`);
        return theirs === undefined ? 0 : distance(node(at, number), theirs);
      }),
    );
    expect(worst).toBeGreaterThan(1e-3);
  });

  test('a deck that cannot be read is an error, never a silent agreement', async () => {
    await expect(simulate('installation\nR1 n0 0 oops\n.end')).rejects.toThrow(/no such deck/);
  });
});
