import type { Sheet } from '../../schema/netlist.ts';
import { type Casing, type Frame, SCREW, type Screw, TEXT } from './drawing.ts';
import { type Point, type Rect, wrapped } from './geometry.ts';
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
  /** Width of the picture. */
  readonly width: number;
  /** Nodes that a probe stands on. */
  readonly touched: readonly string[];
  /** The name of the large sheet stands over the drawing. */
  readonly titled: boolean;
}

/** All words of the picture with the places they would like, the most needed first. */
export function wishesOf(named: Named): Wish[] {
  return [...terminalNames(named), ...tags(named), ...sheetNames(named), ...lengthNames(named)];
}

const GAP = SCREW + 3;
/** Further out, past the ring of a probe. */
const ASIDE = 6;

function terminalNames({ placed, screws, touched, frames, width }: Named): Wish[] {
  return placed
    .flatMap(({ piece, sheet, large }) => piece.terminals.map((terminal) => ({ ...terminal, sheet, large })))
    .flatMap(({ id, label, sheet, large }): Wish[] => {
      const screw = screws.find((one) => one.id === id);
      const isNamed = large || touched.includes(id);
      if (!isNamed || label === undefined || screw === undefined || screw.kind === 'end') return [];
      const spots = roundScrew(screw.at);
      const frame = frames.find((one) => one.sheet === sheet);
      const within = frame === undefined || !large ? {} : { within: roomRound(frame.rect) };
      return [
        {
          id: `terminal ${id}`,
          kind: 'terminal',
          group: sheet,
          lines: [label],
          must: large && width >= NARROW,
          spots,
          ...within,
        },
      ];
    });
}

/** Inside its frame, or under it beside its wire. */
function roomRound({ x, y, width, height }: Rect): Rect {
  return { x: x + 8, y: y + 4, width: width - 16, height: height + 26 };
}

function roundScrew([x, y]: Point): Spot[] {
  return [
    { at: [x - GAP, y], side: 'left' },
    { at: [x + GAP, y], side: 'right' },
    { at: [x - GAP - ASIDE, y], side: 'left' },
    { at: [x + GAP + ASIDE, y], side: 'right' },
    { at: [x + 5, y - GAP + 2], side: 'above-right' },
    { at: [x - 5, y - GAP + 2], side: 'above-left' },
    { at: [x + 5, y + GAP - 2], side: 'below-right' },
    { at: [x - 5, y + GAP - 2], side: 'below-left' },
    { at: [x, y + GAP], side: 'below' },
    { at: [x, y - GAP], side: 'above' },
    { at: [x + 5, y + GAP + 11], side: 'below-right' },
    { at: [x - 5, y + GAP + 11], side: 'below-left' },
    { at: [x + 10, y - GAP - 3], side: 'above-right' },
    { at: [x - 10, y - GAP - 3], side: 'above-left' },
    { at: [x + 10, y + GAP + 3], side: 'below-right' },
    { at: [x - 10, y + GAP + 3], side: 'below-left' },
  ];
}

function tags({ placed, screws, look, words, frames, casing }: Named): Wish[] {
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
        { at: [x, y - 10], side: 'above-right' },
        { at: [x - 5, y - 10], side: 'above-right' },
        { at: [x + width * 0.74 + 8, y - 6], side: 'above-right' },
        { at: [x + width * 0.74 + 5.5, y - 6], side: 'above-right' },
        { at: [x + width * 0.75, y - 6], side: 'above-right' },
        { at: [x + width + 4, y - 2], side: 'above-right' },
        { at: [x + width + 6, y + 4], side: 'below-right' },
        { at: [x - 8, y - 2], side: 'above-left' },
      ],
    });
  }
  const ends = screws.filter(({ kind }) => kind === 'end');
  const hasLarge = (sheet: Sheet): boolean => placed.some((one) => one.sheet === sheet && one.large);
  const leadEnds = ends.filter(({ id }) => id.startsWith('lead.'));
  if (look.isLifted && leadEnds.length > 0 && !hasLarge('well')) {
    const wall =
      casing === undefined ? [] : [26, 32, 40, 48].map((down) => [casing.left - GAP, down] as const);
    wishes.push(tagBeside('lifted', words.lifted, leadEnds, wall));
  }
  const dropEnds = ends.filter(({ id }) => id.startsWith('drop.'));
  if (look.isSplit && dropEnds.length > 0) {
    const wall =
      casing === undefined ? [] : [-10, 0, 10, 20].map((down) => [casing.left - GAP, down] as const);
    wishes.push(tagBeside('split', words.split ?? words.lifted, dropEnds, wall));
  }
  return wishes;
}

/**
 * Beside the outermost end, under it, or outside the wall of the well.
 *
 * @param wall right ends of the tag outside the wall, with how far below the ends each lies
 */
function tagBeside(id: string, text: string, ends: readonly Screw[], wall: readonly Point[]): Wish {
  const columns = ends.map(({ at }) => at[0]);
  const y = ends[0]?.at[1] ?? 0;
  const [left, right] = [Math.min(...columns) - GAP - 4, Math.max(...columns) + GAP + 4];
  const beside: Spot[] = [
    { at: [right, y], side: 'right' },
    { at: [left, y], side: 'left' },
  ];
  const under = [6, 14, 19, 24].map((down): Spot => ({ at: [left, y + down], side: 'below-left' }));
  const outside = wall.map(([x, down]): Spot => ({ at: [x, y + down], side: 'below-left' }));
  return { id, kind: 'tag', lines: [text], must: true, spots: [...beside, ...under, ...outside] };
}

/** On the narrowest screens a name that finds no room is left out: the legend names what is touched. */
const NARROW = 340;

/** The well and its motor speak for themselves while the work is at the house. */
function isNeeded({ sheet, large }: Placed, { placed, width }: Named): boolean {
  const isLower = sheet === 'well' || sheet === 'motor';
  if (width < NARROW) return large;
  return (
    large || !isLower || !placed.some((one) => one.large && (one.sheet === 'panel' || one.sheet === 'switch'))
  );
}

/** Most pixels of one line of a name. */
const NAME_WIDTH = 96;
const NARROW_NAME = 64;
const NARROW_PICTURE = 480;

function sheetNames(named: Named): Wish[] {
  const { placed, words, look, width } = named;
  const nameWidth = width < NARROW_PICTURE ? NARROW_NAME : NAME_WIDTH;
  return placed.flatMap((one): Wish[] => {
    if (one.sheet === 'service' || (one.large && named.titled)) return [];
    const state =
      one.sheet === 'panel' ? (look.isLocked ? words.locked : look.isOff ? words.off : undefined) : undefined;
    const lines = wrapped(
      words.sheet(one.sheet),
      one.sheet === 'box' ? one.rect.width - 24 : nameWidth,
      TEXT * 1.08,
    );
    const spots = spotsOf(one, named);
    const avoid = named.frames
      .filter(({ sheet, large }) => sheet !== one.sheet || large)
      .map(({ rect }) => rect);
    const name: Wish = {
      avoid,
      id: `name ${one.sheet}`,
      kind: 'name',
      lines,
      must: isNeeded(one, named),
      spots,
    };
    return state === undefined
      ? [name]
      : [name, { avoid, id: `note ${one.sheet}`, kind: 'note', lines: [state], must: false, spots }];
  });
}

function spotsOf(placed: Placed, { frames, casing }: Named): Spot[] {
  const frame = frames.find(({ sheet }) => sheet === placed.sheet);
  if (frame !== undefined) return frameSpots(frame, placed);
  if (casing === undefined) return [];
  const y = placed.sheet === 'well' ? casing.cap : placed.on([0, 50])[1];
  return [0, 9, 16, 24, -14, 34, 44].flatMap((down): Spot[] => [
    { at: [casing.left - 7, y + down], side: 'left' },
    { at: [casing.right + 7, y + down], side: 'right' },
  ]);
}

/** Pixels past the feed that runs beside the switch of a loop. */
const pastFeed = [30, 38, 60, 90] as const;

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
    { at: [x + width * 0.72 + 7, y + height + 3], side: 'below-right' },
    { at: [x + width + 3, y + height + 3], side: 'below-left' },
    { at: [x - 6, y + 14], side: 'left' },
    { at: [x - 6, y + height * 0.5], side: 'left' },
    { at: [x, y + height + 22], side: 'below-right' },
    { at: [x, y + height + 32], side: 'below-right' },
    { at: [x + width / 2, y + height + 20], side: 'below' },
  ];
  if (sheet === 'switch')
    return [...outside, ...pastFeed.map((off): Spot => ({ at: [x + width + off, y + 12], side: 'right' }))];
  if (sheet !== 'box' || large) return outside;
  return [
    { at: [x + width / 2, y + 4], side: 'below' },
    { at: [x + 4, y - 3], side: 'above-right' },
    ...outside,
  ];
}

function lengthNames({ placed, casing, lengths, frames }: Named): Wish[] {
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
            avoid: frames.map(({ rect }) => rect),
            spots: [0, 10, -10, 20].flatMap((down): Spot[] => [
              { at: [casing.left - 7, well.on([0, row])[1] + down], side: 'left' },
              { at: [casing.right + 7, well.on([0, row])[1] + down], side: 'right' },
            ]),
          },
        ];
  return [...wish('length buried', lengths.buried, 40), ...wish('length drop', lengths.drop, 200)];
}
