import { setUp } from '../../plant/plant.ts';
import { type Plant, WATER_UNKNOWNS, type WaterUnknown } from '../../plant/types.ts';
import type { Check } from '../../schema/check.ts';
import { requestOf } from '../belief/channel.ts';
import { figureOf } from '../judgements.ts';
import type { SystemChoice } from '../system.ts';
import type { WindowPart } from '../types.ts';
import type { Asked, Draft } from './draft.ts';

/**
 * Expected pressures, flows, times and levels: the sound water system, with each of its unknowns moved
 * to both ends of what is met.
 *
 * The unknowns are independent, so their reaches add as squares; each part shows its share of the
 * whole, and the parts add up to the window.
 */
export function waterWindow(asked: Asked, check: Check, choice: SystemChoice): Draft {
  const plant = plantOf(choice);
  const at = (unknowns: Partial<Record<WaterUnknown, number>>): number | undefined => {
    const reading = plant.state({ edits: [], severity: undefined }, unknowns).read(requestOf(check));
    return reading.kind === 'value' ? reading.value : undefined;
  };
  const centre = at({});
  if (centre === undefined) return { kind: 'unknown', parts: [], quality: 'practice', missing: [] };
  const reach = figureOf(asked.knowledge.judgements, 'water-window', 'deviations');
  const from = asked.knowledge.judgements.spreads?.from ?? [];
  const moved = WATER_UNKNOWNS.map((name) => {
    const ends = [at({ [name]: -reach }) ?? centre, at({ [name]: reach }) ?? centre];
    return {
      name,
      low: Math.min(0, ...ends.map((end) => end - centre)),
      high: Math.max(0, ...ends.map((end) => end - centre)),
    };
  });
  const parts: WindowPart[] = [
    {
      name: 'system',
      low: centre,
      high: centre,
      from: Object.values(asked.knowledge.water)[0]?.from ?? [],
    },
  ];
  for (const name of ['well', 'pump', 'tank'] as const) {
    const own = moved.filter((one) => PART_OF[one.name] === name);
    const low = -share(moved, own, 'low');
    const high = share(moved, own, 'high');
    if (low !== 0 || high !== 0) parts.push({ name, low, high, from });
  }
  return { kind: 'range', parts, quality: 'practice' };
}

const PART_OF: Readonly<Record<WaterUnknown, 'well' | 'pump' | 'tank'>> = {
  waterLevel: 'well',
  wellYield: 'well',
  pumpHead: 'pump',
  tankVolume: 'tank',
  precharge: 'tank',
};

/** One plant for all windows of a choice. */
const PLANTS = new WeakMap<SystemChoice, Plant>();
function plantOf(choice: SystemChoice): Plant {
  const known = PLANTS.get(choice);
  if (known !== undefined) return known;
  const made = setUp(choice.input, choice.spreads);
  PLANTS.set(choice, made);
  return made;
}

type Moved = { readonly low: number; readonly high: number };

/** The part of the root of all squares that some of them account for. */
function share(all: readonly Moved[], own: readonly Moved[], end: 'low' | 'high'): number {
  const squares = (some: readonly Moved[]): number => some.reduce((sum, one) => sum + one[end] ** 2, 0);
  const total = squares(all);
  return total > 0 ? squares(own) / Math.sqrt(total) : 0;
}
