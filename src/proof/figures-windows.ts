import { checksOn } from '../../machines/call/applies.ts';
import type { Catalog } from '../catalog/catalog.ts';
import { resolveSystem } from '../diagnosis/system.ts';
import type { ExpectedWindow } from '../diagnosis/types.ts';
import { expectedWindows } from '../diagnosis/windows/expect.ts';
import type { Installation } from '../schema/installation.ts';

/**
 * Which expected windows rest on memory? Those whose table or band of practice is remembered condemn no
 * part by themselves. A remembered meter error widens a window and does not; it is named by its part.
 */
export interface SiteWindows {
  readonly site: string;
  /** Windows with two ends or one. */
  readonly ranges: number;
  readonly remembered: readonly RememberedWindow[];
}

export interface RememberedWindow {
  readonly check: string;
  /** It condemns nothing alone. */
  readonly restsOnMemory: boolean;
  /** Parts that are remembered, by name. */
  readonly parts: readonly string[];
  /** Where they are remembered from: source and place. */
  readonly where: readonly string[];
}

export function windowsAt(catalog: Catalog, sites: Readonly<Record<string, Installation>>): SiteWindows[] {
  return Object.entries(sites).map(([site, known]) => {
    const system = resolveSystem(catalog, known);
    const asked = { knowledge: catalog, system, meter: 'ordinary', justRun: false } as const;
    const windows = expectedWindows(asked, checksOn(system, Object.values(catalog.checks)));
    const ranges = Object.values(windows).filter(({ kind }) => kind === 'range');
    return { site, ranges: ranges.length, remembered: ranges.flatMap(rememberedIn) };
  });
}

function rememberedIn({ check, parts, fromMemory }: ExpectedWindow): RememberedWindow[] {
  const own = parts.filter(({ from }) => from.some(({ mark }) => mark === 'memory'));
  if (own.length === 0) return [];
  const entries = own.flatMap(({ from }) => from).filter(({ mark }) => mark === 'memory');
  return [
    {
      check,
      restsOnMemory: fromMemory,
      parts: own.map(({ name }) => name),
      where: [...new Set(entries.map(({ source, where }) => `${source}, ${where}`))],
    },
  ];
}
