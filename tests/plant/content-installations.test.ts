import { describe, expect, test } from 'vitest';
import { setUp } from '../../src/plant/plant.ts';
import type { PlantInput } from '../../src/plant/types.ts';
import { fault } from '../../src/schema/fault.ts';
import { conductor, type Motor, motor } from '../../src/schema/motor.ts';
import { type Box, box, netlist } from '../../src/schema/netlist.ts';
import { of } from '../../src/units/units.ts';
import { number, RUN, said } from './support/ask.ts';
import { elements, models, spreads } from './support/inputs.ts';

/**
 * The plant on the project's own installations: every box with every motor row that it serves must
 * start, let its start branch go, carry water and trip nothing; every fault that fits must be
 * expressible.
 */
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
const boxes = read(
  import.meta.glob('../../content/boxes/*.json', { eager: true, import: 'default' }),
  (file) => box.parse(file),
);
const netlists = read(
  import.meta.glob('../../content/netlists/*.json', { eager: true, import: 'default' }),
  (file) => netlist.parse(file),
);
const motors = read(
  import.meta.glob('../../content/motors/*.json', { eager: true, import: 'default' }),
  (file) => motor.parse(file),
);
const faults = read(
  import.meta.glob('../../content/faults/*.json', { eager: true, import: 'default' }),
  (file) => fault.parse(file),
);
const conductors = read(
  import.meta.glob('../../content/conductors/*.json', { eager: true, import: 'default' }),
  (file) => conductor.parse(file),
);

const serves = (kind: Box, row: Motor): boolean =>
  row.auxiliary === undefined &&
  row.volts > 200 &&
  models[row.id] !== undefined &&
  row.leads === kind.leads &&
  kind.serves.includes(row.circuit) &&
  row.power >= 0.99 * kind.power.low &&
  row.power <= 1.01 * kind.power.high;

const pairs = Object.values(boxes).flatMap((kind) =>
  Object.values(motors)
    .filter((row) => serves(kind, row))
    .map((row) => ({ box: kind, motor: row })),
);

function inputOf(pair: { box: Box; motor: Motor }, metres: { buried: number; drop: number }): PlantInput {
  const cable = conductors[pair.motor.power > 2500 ? 'copper-6' : 'copper-12']!;
  return {
    pieces: pair.box.pieces.map((piece) => netlists[piece]!),
    elements,
    motor: pair.motor,
    model: models[pair.motor.id],
    volts: of(240, 'V'),
    buried: { conductor: cable, length: of(metres.buried, 'm') },
    drop: { conductor: cable, length: of(metres.drop, 'm') },
    startCapacitor: pair.motor.startCapacitor,
    runCapacitor: pair.motor.runCapacitor,
    plugApart: pair.box.plugApart,
    nominalLoad: 0.92,
    nominalBreakaway: 0.15,
  };
}

const lead = (pair: { box: Box }): string => (pair.box.leads === '2-wire' ? 'run.one' : 'run.yellow');

test('there are installations to try', () => expect(pairs.length).toBeGreaterThan(40));

describe.each(pairs)('$box.id with $motor.id', (pair) => {
  const sound = setUp(inputOf(pair, { buried: 15, drop: 60 }), spreads).state(
    { edits: [], severity: undefined },
    {},
  );

  test('starts, lets go, pumps and holds', () => {
    expect(sound.mode).toEqual({ starts: true, releases: true });
    expect(sound.margins.start).toBeGreaterThan(1);
    expect(sound.margins.release).toBeGreaterThan(2);
    expect(said(sound, 'what-is-seen')).toBe('works-now');
    expect(said(sound, 'sound')).toBe('runs');
    expect(said(sound, 'breaker-lever')).toBe('on');
    expect(said(sound, 'trip-class')).toBe('holds');
  });

  test('draws near its printed full-load amps', () => {
    const printed = pair.motor.fullLoad?.amps;
    if (printed === undefined) throw new Error(`${pair.motor.id} prints no full load`);
    const amps = number(sound, 'amps', { clamp: [lead(pair)] }, RUN);
    const ratio = amps / ('line' in printed ? printed.line : printed.yellow);
    expect(ratio).toBeGreaterThan(0.88);
    expect(ratio).toBeLessThan(1.05);
  });

  test('a run of no length is a joint, not a break', () => {
    const near = setUp(inputOf(pair, { buried: 0, drop: 60 }), spreads).state(
      { edits: [], severity: undefined },
      {},
    );
    expect(near.mode).toEqual({ starts: true, releases: true });
  });

  test('every fault whose parts exist can be put in and read', () => {
    const input = inputOf(pair, { buried: 15, drop: 60 });
    const plant = setUp(input, spreads);
    const names = new Set(
      input.pieces.flatMap((piece) => piece.parts.flatMap((part) => [part.id, ...part.between])),
    );
    for (const one of Object.values(faults)) {
      const span = one.severity?.span;
      const severity =
        span === undefined
          ? undefined
          : span.low > 0
            ? Math.sqrt(span.low * span.high)
            : (span.low + span.high) / 2;
      for (const variant of one.variants.filter(({ edits }) =>
        namesIn(edits).every((name) => names.has(name)),
      )) {
        const state = plant.state({ edits: variant.edits, severity }, {});
        expect(number(state, 'amps', { clamp: [lead(pair)] }, RUN)).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(state.margins.start)).toBe(true);
      }
    }
  });
});

/** Parts and nodes that edits name: every string with a dot in it. */
function namesIn(value: unknown): string[] {
  if (typeof value === 'string') return value.includes('.') ? [value] : [];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(namesIn);
}
