import type { Netlist, Sheet } from '../../schema/netlist.ts';

/**
 * Where each sheet of an installation lies in the picture: the place of the present step is drawn
 * large, the rest small, never to scale. Text is never scaled.
 */
export interface Placed {
  readonly piece: Netlist;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly focus: boolean;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly sheets: readonly Placed[];
}

interface Slot {
  readonly sheet: Sheet;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

export const PICTURE = { width: 366, height: 300 } as const;

/** Hand-placed: house side left, well right; the focus takes most of the sheet. */
const SLOTS: Readonly<Record<'panel' | 'switch' | 'box' | 'well', readonly Slot[]>> = {
  panel: [
    { sheet: 'service', x: 40, y: 0, scale: 0.8 },
    { sheet: 'panel', x: 20, y: 62, scale: 1.35 },
    { sheet: 'switch', x: 226, y: 40, scale: 0.75 },
    { sheet: 'box', x: 216, y: 150, scale: 0.36 },
    { sheet: 'well', x: 280, y: 238, scale: 0.22 },
  ],
  switch: [
    { sheet: 'panel', x: 6, y: 30, scale: 0.62 },
    { sheet: 'switch', x: 112, y: 24, scale: 1.7 },
    { sheet: 'box', x: 226, y: 220, scale: 0.34 },
    { sheet: 'well', x: 20, y: 205, scale: 0.36 },
  ],
  box: [
    { sheet: 'panel', x: 2, y: 4, scale: 0.34 },
    { sheet: 'switch', x: 60, y: 6, scale: 0.42 },
    { sheet: 'box', x: 8, y: 66, scale: 0.88 },
    { sheet: 'well', x: 254, y: 2, scale: 0.24 },
  ],
  well: [
    { sheet: 'panel', x: 4, y: 8, scale: 0.4 },
    { sheet: 'box', x: 2, y: 96, scale: 0.3 },
    { sheet: 'well', x: 142, y: 2, scale: 0.94 },
    { sheet: 'motor', x: 142, y: 246, scale: 0.42 },
  ],
};

/** The sheets of a picture, the ones of the focus last so that nothing lies over them. */
export function layOut(pieces: readonly Netlist[], focus: keyof typeof SLOTS): Layout {
  const at = pieces.some((piece) => piece.sheet === focus) ? focus : 'switch';
  const sheets = SLOTS[at].flatMap((slot): Placed[] => {
    const piece = pieces.find((one) => one.sheet === slot.sheet);
    return piece === undefined ? [] : [{ piece, x: slot.x, y: slot.y, scale: slot.scale, focus: slot.sheet === at }];
  });
  return { ...PICTURE, sheets: [...sheets].sort((one, other) => Number(one.focus) - Number(other.focus)) };
}

/** A point of a sheet in the picture. */
export function onPicture(placed: Placed, [x, y]: readonly [number, number]): { x: number; y: number } {
  return { x: placed.x + x * placed.scale, y: placed.y + y * placed.scale };
}
