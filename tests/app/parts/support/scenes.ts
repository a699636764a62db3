import type { SiteView } from '../../../../machines/call/types.ts';
import type { PictureWords } from '../../../../src/app/picture/names.ts';
import { type Check, check } from '../../../../src/schema/check.ts';
import { type Box, box, type Netlist, netlist } from '../../../../src/schema/netlist.ts';

/** Every netlist and box of the content, and the words and sites that pictures are drawn with. */
const netlistFiles = import.meta.glob('../../../../content/netlists/*.json', {
  eager: true,
  import: 'default',
});
const boxFiles = import.meta.glob('../../../../content/boxes/*.json', { eager: true, import: 'default' });

export const boxes: readonly Box[] = Object.values(boxFiles).map((file) => box.parse(file));
const netlists: ReadonlyMap<string, Netlist> = new Map(
  Object.values(netlistFiles).map((file) => {
    const piece = netlist.parse(file);
    return [piece.id, piece];
  }),
);

export function piecesOf(one: Box): Netlist[] {
  return one.pieces.map((id) => {
    const piece = netlists.get(id);
    if (piece === undefined) throw new Error(`scenes: box ${one.id} names no netlist ${id}`);
    return piece;
  });
}

export function boxNamed(id: string): Box {
  const found = boxes.find((one) => one.id === id);
  if (found === undefined) throw new Error(`scenes: no box ${id}`);
  return found;
}

/** Nothing opened, everything live. */
export const LIVE: SiteView = {
  word: 'live',
  supply: 'live',
  places: { panel: 'closed', switch: 'closed', box: 'closed', well: 'closed' },
  leads: 'connected',
  charge: 'possible',
  disinfection: 'none',
  secondSource: 'none-seen',
  stopped: false,
  here: undefined,
  lapsed: false,
};

/** Locked, proved dead at one place, bled. */
export function provedAt(place: keyof SiteView['places'], over: Partial<SiteView> = {}): SiteView {
  return {
    ...LIVE,
    word: 'proved',
    supply: 'locked',
    charge: 'bled',
    here: place,
    places: { ...LIVE.places, [place]: 'proved' },
    ...over,
  };
}

const SHEETS = {
  service: 'service',
  panel: 'panel',
  switch: 'pressure switch',
  box: 'control box',
  well: 'well head',
  motor: 'motor',
} as const;

export const WORDS: PictureWords = {
  sheet: (sheet) => SHEETS[sheet],
  live: 'LIVE',
  lifted: 'LIFTED',
  split: 'SPLIT',
  off: 'off',
  locked: 'off, locked',
};

const checkFiles = import.meta.glob('../../../../content/checks/*.json', { eager: true, import: 'default' });

/** Every check that touches something: where, and in which state of the site. */
export const checkPoints = Object.values(checkFiles)
  .map((file) => check.parse(file))
  .flatMap((one: Check) => {
    const { place, supply, leads } = one.site;
    if (place === undefined || 'look' in one.at) return [];
    return [
      { id: one.id, at: one.at, place, supply, leads: leads === 'any' ? ('connected' as const) : leads },
    ];
  });
