import { describe, expect, test } from 'vitest';
import { compose } from '../../../src/app/picture/compose.ts';
import { rectAround, sharedArea } from '../../../src/app/picture/geometry.ts';
import type { Focus, Size } from '../../../src/app/picture/layout.ts';
import { hopsOf } from '../../../src/app/picture/nets.ts';
import { type Overlap, overlapsOf } from '../../../src/app/picture/overlaps.ts';
import { probePlaces } from '../../../src/app/picture/probe-places.ts';
import { sizeFor } from '../../../src/app/picture/use-size.ts';
import type { Box, Netlist } from '../../../src/schema/netlist.ts';
import { boxes, boxNamed, checkPoints, LIVE, piecesOf, provedAt, WORDS } from './support/scenes.ts';

const PHONE = sizeFor(366);
const NARROW = sizeFor(296);
const TABLET = sizeFor(620);
const DESK = sizeFor(800);
const LENGTHS = { buried: '50 ft AWG 12', drop: '200 ft AWG 12' };

interface State {
  readonly name: string;
  readonly site: typeof LIVE;
}

const STATES: readonly State[] = [
  { name: 'live', site: LIVE },
  { name: 'proved', site: provedAt('box') },
  { name: 'lifted', site: provedAt('box', { leads: 'lifted' }) },
  { name: 'split', site: provedAt('well', { leads: 'split' }) },
];

function overlaps(one: Box, focus: Focus, { size, site }: { size: Size; site: typeof LIVE }): Overlap[] {
  const { drawing } = compose({
    pieces: piecesOf(one),
    focus,
    site,
    words: WORDS,
    lengths: LENGTHS,
    size,
    titled: true,
  });
  return overlapsOf(drawing);
}

const focuses = (one: Box): Focus[] =>
  one.family === 'no-box' ? ['panel', 'switch', 'well'] : ['panel', 'switch', 'box', 'well'];

describe('nothing lies on anything', () => {
  const scenes = boxes.flatMap((one) =>
    [undefined, ...focuses(one)].flatMap((focus) => STATES.map((state) => ({ one, focus, state }))),
  );
  test.each(
    scenes.map((scene) => [`${scene.one.id}, ${scene.focus ?? 'all'}, ${scene.state.name}`, scene] as const),
  )('%s', (_, { one, focus, state }) => {
    expect(overlaps(one, focus, { size: PHONE, site: state.site })).toEqual([]);
    expect(overlaps(one, focus, { size: NARROW, site: state.site })).toEqual([]);
    expect(overlaps(one, focus, { size: TABLET, site: state.site })).toEqual([]);
    expect(overlaps(one, focus, { size: DESK, site: state.site })).toEqual([]);
  });
});

describe('a bad netlist is caught', () => {
  const good = piecesOf(boxNamed('start-and-run-no-overload'));
  const withBox = (change: (piece: Netlist) => Netlist): Overlap[] => {
    const pieces = good.map((piece) => (piece.sheet === 'box' ? change(piece) : piece));
    return overlapsOf(
      compose({ pieces, focus: 'box', site: LIVE, words: WORDS, size: PHONE, titled: true }).drawing,
    );
  };
  test('the good one passes', () => {
    expect(withBox((piece) => piece)).toEqual([]);
  });
  test('two symbols in one place', () => {
    const found = withBox((piece) => ({
      ...piece,
      parts: piece.parts.map((part) => (part.id === 'box.relay-contact' ? { ...part, at: [304, 75] } : part)),
    }));
    expect(found).toContainEqual({ one: 'box.start-capacitor', other: 'box.relay-contact' });
  });
  test('two terminals in one place', () => {
    const found = withBox((piece) => ({
      ...piece,
      terminals: piece.terminals.map((one) => (one.id === 'box.L2' ? { ...one, at: [62, 155] } : one)),
    }));
    expect(found).toContainEqual({ one: 'box.L1', other: 'box.L2' });
  });
  test('a wire through the symbol of another part', () => {
    const found = withBox((piece) => ({
      ...piece,
      parts: piece.parts.map((part) =>
        part.id === 'box.wire-yellow'
          ? {
              ...part,
              via: [
                [124, 75],
                [216, 75],
                [340, 75],
              ],
            }
          : part,
      ),
    }));
    expect(
      found.some(({ one, other }) => one === 'box.start-capacitor' && other.startsWith('box.wire-yellow')),
    ).toBe(true);
  });
  test('a terminal off the sheet', () => {
    const found = withBox((piece) => ({
      ...piece,
      terminals: piece.terminals.map((one) => (one.id === 'box.R' ? { ...one, at: [440, 155] } : one)),
    }));
    expect(found.some(({ other }) => other === 'the edge')).toBe(true);
  });
  test('a name that has no room', () => {
    const found = withBox((piece) => ({
      ...piece,
      terminals: piece.terminals.map((one) =>
        one.id === 'box.L2' ? { ...one, label: 'A NAME LONGER THAN THE BOX IS WIDE' } : one,
      ),
    }));
    expect(found.some(({ one }) => one === 'terminal box.L2')).toBe(true);
  });
});

describe('crossing wires', () => {
  const wire = (id: string, path: readonly (readonly [number, number])[]) =>
    ({ id, nodes: [id], path, lead: undefined, live: false, weight: 'inner', over: false }) as const;
  test('hop where nets differ, join where they meet', () => {
    const across = wire('a', [
      [0, 10],
      [40, 10],
    ]);
    expect(
      hopsOf([
        across,
        wire('b', [
          [20, 0],
          [20, 30],
        ]),
      ]),
    ).toEqual([[20, 10]]);
    expect(
      hopsOf([
        across,
        wire('b', [
          [20, 10],
          [20, 30],
        ]),
      ]),
    ).toEqual([]);
  });
});

describe('the probes', () => {
  const scenes = checkPoints.flatMap(({ id, at, place, supply, leads }) =>
    boxes.slice(0, 4).map((one) => ({ id, at, place, supply, leads, one })),
  );
  test.each(scenes.map((scene) => [`${scene.id} at ${scene.one.id}`, scene] as const))(
    '%s',
    (_, { at, place, supply, leads, one }) => {
      const focus = place === 'box' && one.family === 'no-box' ? 'switch' : place;
      const site = supply === 'locked' ? provedAt(place, { leads }) : LIVE;
      const composed = compose({
        pieces: piecesOf(one),
        focus,
        site,
        at,
        words: WORDS,
        size: PHONE,
        titled: true,
      });
      const { probes, meter } = probePlaces(composed, at);
      const bounds = { x: 0, y: 0, width: PHONE.width, height: PHONE.height };
      for (const { point, bob } of probes) {
        expect(sharedArea(rectAround(point, 2), bounds)).toBe(4);
        expect(sharedArea(rectAround(bob, 22), bounds)).toBeCloseTo(22 * 22, 6);
      }
      const [first, second] = probes;
      if (first !== undefined && second !== undefined) {
        expect(Math.hypot(first.bob[0] - second.bob[0], first.bob[1] - second.bob[1])).toBeGreaterThan(22);
        if (meter !== undefined) {
          for (const { point } of probes)
            expect(Math.hypot(point[0] - meter[0], point[1] - meter[1])).toBeGreaterThan(26);
        }
      }
    },
  );
});
