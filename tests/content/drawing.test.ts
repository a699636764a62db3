import { describe, expect, test } from 'vitest';
import { loadCatalog } from '../../src/catalog/load.ts';
import type { Netlist, Part } from '../../src/schema/netlist.ts';
import { catalogOf } from './support/broken.ts';
import { drawingProblems } from './support/drawing.ts';

const { netlists } = catalogOf(loadCatalog());

test.each(Object.values(netlists).map((sheet) => [sheet.id, sheet] as const))(
  '%s is drawn cleanly',
  (_, sheet) => {
    expect(drawingProblems(sheet)).toEqual([]);
  },
);

test('leads stand in the order yellow, black, red, so that nothing crosses', () => {
  for (const { terminals } of Object.values(netlists)) {
    const places = terminals
      .filter(({ id }) => /^lead\.[YBR]$/.test(id))
      .map(({ at, id }) => [id, at[0]] as const);
    const sorted = [...places].sort(([, one], [, other]) => one - other).map(([id]) => id);
    expect(sorted).toEqual(sorted.length > 0 ? ['lead.Y', 'lead.B', 'lead.R'] : []);
  }
});

describe('a bad drawing is caught', () => {
  const box = netlists['box-start-and-run-main-overload-in-line'];
  const spoilt = (id: string, change: Partial<Part>): string[] => {
    if (box === undefined) throw new Error('no such sheet');
    const parts = box.parts.map((part) => (part.id === id ? { ...part, ...change } : part));
    return drawingProblems({ ...box, parts });
  };
  const moved = (id: string, at: [number, number]): string[] => {
    if (box === undefined) throw new Error('no such sheet');
    const terminals: Netlist['terminals'] = box.terminals.map((one) =>
      one.id === id ? { ...one, at } : one,
    );
    return drawingProblems({ ...box, terminals });
  };

  test.each([
    ['a slanted line', 'box.relay-contact', { via: [] }, 'box.relay-contact runs slanted or nowhere'],
    ['a symbol off its line', 'box.bleed', { at: [304, 50] }, 'the symbol of box.bleed is off its line'],
    [
      'a symbol turned wrong',
      'box.bleed',
      { turn: 'down' },
      'the symbol of box.bleed is turned down, its line runs across',
    ],
    ['no symbol', 'box.bleed', { at: undefined }, 'box.bleed has no symbol'],
    [
      'symbols too close',
      'box.start-capacitor',
      {
        at: [304, 45],
        via: [
          [280, 45],
          [328, 45],
        ],
      },
      'box.start-capacitor and box.bleed are too close',
    ],
    [
      'a line through a terminal',
      'box.main-overload',
      {
        via: [
          [60, 155],
          [280, 155],
        ],
        at: [90, 155],
      },
      'box.main-overload runs through box.L2',
    ],
    [
      'a line through a label',
      'box.main-overload',
      {
        via: [
          [60, 152],
          [280, 152],
        ],
        at: [150, 152],
      },
      'box.main-overload runs through the label of box.L2',
    ],
    [
      'a line on another',
      'box.run-capacitor',
      {
        via: [
          [280, 18],
          [376, 18],
        ],
        at: [340, 18],
      },
      'box.relay-coil lies on box.run-capacitor',
    ],
    [
      'a corner off the sheet',
      'box.relay-coil',
      {
        via: [
          [376, -4],
          [216, -4],
        ],
        at: [296, -4],
      },
      'box.relay-coil lies outside the sheet',
    ],
  ] as [string, string, Partial<Part>, string][])('%s', (_, id, change, problem) => {
    expect(spoilt(id, change)).toContain(problem);
  });

  test('probe points too close', () => {
    expect(moved('box.L2', [80, 155])).toContain('box.L1 and box.L2 are too close');
  });

  test('an end that is on no sheet', () => {
    expect(spoilt('box.bleed', { between: ['box.tap', 'box.nowhere'] })).toEqual([
      'box.bleed has an end that is not on the sheet',
    ]);
  });
});
