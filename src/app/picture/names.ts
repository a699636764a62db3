import type { Sheet } from '../../schema/netlist.ts';
import { type Casing, type Frame, SCREW, type Screw, TEXT } from './drawing.ts';
import { type Point, wrapped } from './geometry.ts';
import type { Spot, Wish } from './labels.ts';
import type { Placed } from './layout.ts';
import type { SiteLook } from './site-look.ts';

/** Words of the picture; all short. */
export interface PictureWords {
  /** Short name of a sheet: "panel", "pressure switch", "control box", "well head", "motor". */
  sheet(sheet: Sheet): string;
  readonly live: string;
  readonly lifted: string;
  /** Tag at a cut splice; LIFTED where it is absent. */
  readonly split?: string;
  /** "off", "off, locked": under the name of the panel. */
  readonly off?: string;
  readonly locked?: string;
}

/** Lengths as they are known: "50 ft AWG 12". */
export interface Lengths {
  readonly buried?: string;
  readonly drop?: string;
}

export interface Named {
  readonly placed: readonly Placed[];
  readonly frames: readonly Frame[];
  readonly casing: Casing | undefined;
  readonly screws: readonly Screw[];
  readonly look: SiteLook;
  readonly words: PictureWords;
  readonly lengths: Lengths;
  readonly width: number;
}

/** All words of the picture with the places they would like, the most needed first. */
export function wishesOf(named: Named): Wish[] {
  return [...terminalNames(named), ...tags(named), ...sheetNames(named), ...lengthNames(named)];
}

const GAP = SCREW + 3;

function terminalNames({ placed, screws }: Named): Wish[] {
  return placed
    .filter(({ large }) => large)
    .flatMap(({ piece }) => piece.terminals)
    .flatMap(({ id, label }): Wish[] => {
      const screw = screws.find((one) => one.id === id);
      if (label === undefined || screw === undefined || screw.kind === 'end') return [];
      return [
        { id: `terminal ${id}`, kind: 'terminal', lines: [label], must: true, spots: roundScrew(screw.at) },
      ];
    });
}

function roundScrew([x, y]: Point): Spot[] {
  return [
    { at: [x - GAP, y], side: 'left' },
    { at: [x + GAP, y], side: 'right' },
    { at: [x + 5, y - GAP + 2], side: 'above-right' },
    { at: [x - 5, y - GAP + 2], side: 'above-left' },
    { at: [x + 5, y + GAP - 2], side: 'below-right' },
    { at: [x - 5, y + GAP - 2], side: 'below-left' },
    { at: [x, y + GAP], side: 'below' },
    { at: [x, y - GAP], side: 'above' },
  ];
}

function tags({ placed, screws, look, words, frames }: Named): Wish[] {
  const wishes: Wish[] = [];
  const panel = frames.find(({ sheet }) => sheet === 'panel');
  if (panel !== undefined) {
    const { x, y, width } = panel.rect;
    wishes.push({
      id: 'live service',
      kind: 'live',
      lines: [words.live],
      must: true,
      spots: [
        { at: [x + width * 0.75, y - 6], side: 'above-right' },
        { at: [x + width + 4, y - 2], side: 'above-right' },
        { at: [x + width + 6, y + 4], side: 'below-right' },
      ],
    });
  }
  const ends = screws.filter(({ kind }) => kind === 'end');
  const hasLarge = (sheet: Sheet): boolean => placed.some((one) => one.sheet === sheet && one.large);
  const leadEnds = ends.filter(({ id }) => id.startsWith('lead.'));
  if (look.isLifted && leadEnds.length > 0 && !hasLarge('well'))
    wishes.push(tagBeside('lifted', words.lifted, leadEnds));
  const dropEnds = ends.filter(({ id }) => id.startsWith('drop.'));
  if (look.isSplit && dropEnds.length > 0)
    wishes.push(tagBeside('split', words.split ?? words.lifted, dropEnds));
  return wishes;
}

function tagBeside(id: string, text: string, ends: readonly Screw[]): Wish {
  const columns = ends.map(({ at }) => at[0]);
  const y = ends[0]?.at[1] ?? 0;
  const [left, right] = [Math.min(...columns), Math.max(...columns)];
  return {
    id,
    kind: 'tag',
    lines: [text],
    must: true,
    spots: [
      { at: [right + GAP + 4, y], side: 'right' },
      { at: [left - GAP - 4, y], side: 'left' },
      { at: [left - GAP - 4, y + 6], side: 'below-left' },
      { at: [right + GAP + 2, y + 14], side: 'below-right' },
      { at: [left - GAP - 4, y + 24], side: 'below-left' },
    ],
  };
}

/** Most pixels of one line of a name. */
const NAME_WIDTH = 96;

function sheetNames(named: Named): Wish[] {
  const { placed, words, look } = named;
  return placed.flatMap((one): Wish[] => {
    if (one.sheet === 'service') return [];
    const state =
      one.sheet === 'panel' ? (look.isLocked ? words.locked : look.isOff ? words.off : undefined) : undefined;
    const lines = wrapped(
      words.sheet(one.sheet),
      one.sheet === 'box' ? one.rect.width - 24 : NAME_WIDTH,
      TEXT * 1.08,
    );
    const spots = spotsOf(one, named);
    const name: Wish = { id: `name ${one.sheet}`, kind: 'name', lines, must: true, spots };
    return state === undefined
      ? [name]
      : [name, { id: `note ${one.sheet}`, kind: 'note', lines: [state], must: false, spots }];
  });
}

function spotsOf(placed: Placed, { frames, casing }: Named): Spot[] {
  const frame = frames.find(({ sheet }) => sheet === placed.sheet);
  if (frame !== undefined) return frameSpots(frame, placed);
  if (casing === undefined) return [];
  const y = placed.sheet === 'well' ? casing.cap : placed.on([0, 50])[1];
  return [0, 9, 18, -14, 30].flatMap((down): Spot[] => [
    { at: [casing.left - 7, y + down], side: 'left' },
    { at: [casing.right + 7, y + down], side: 'right' },
  ]);
}

/** A box holds its name while it is small; the rest carry it outside, wherever there is room. */
function frameSpots({ rect, large }: Frame, { sheet }: Placed): Spot[] {
  const { x, y, width, height } = rect;
  const right = [8, 14, 26, 40].map((down): Spot => ({ at: [x + width + 6, y + down], side: 'right' }));
  const outside: Spot[] = [
    { at: [x, y - 4], side: 'above-right' },
    { at: [x + width, y - 4], side: 'above-left' },
    ...right,
    { at: [x + width + 6, y + height * 0.5], side: 'right' },
    { at: [x + width + 6, y + height - 6], side: 'above-right' },
    { at: [x, y + height + 3], side: 'below-right' },
    { at: [x + width + 3, y + height + 3], side: 'below-left' },
    { at: [x - 6, y + 14], side: 'left' },
    { at: [x - 6, y + height * 0.5], side: 'left' },
    { at: [x + width / 2, y + height + 20], side: 'below' },
  ];
  if (sheet !== 'box' || large) return outside;
  return [
    { at: [x + width / 2, y + 4], side: 'below' },
    { at: [x + 4, y - 3], side: 'above-right' },
    ...outside,
  ];
}

function lengthNames({ placed, casing, lengths }: Named): Wish[] {
  const well = placed.find(({ sheet }) => sheet === 'well');
  if (well === undefined || casing === undefined) return [];
  const wish = (id: string, text: string | undefined, row: number): Wish[] =>
    text === undefined
      ? []
      : [
          {
            id,
            kind: 'note',
            lines: wrapped(text, NAME_WIDTH, TEXT),
            must: false,
            spots: [0, 10, -10, 20].flatMap((down): Spot[] => [
              { at: [casing.left - 7, well.on([0, row])[1] + down], side: 'left' },
              { at: [casing.right + 7, well.on([0, row])[1] + down], side: 'right' },
            ]),
          },
        ];
  return [...wish('length buried', lengths.buried, 40), ...wish('length drop', lengths.drop, 200)];
}
