import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Catalog } from '../catalog/catalog.ts';
import { type CallSpeed, callSpeed } from './bench-call.ts';
import { type PlantSpeed, plantSpeed, type Simulator } from './bench-plant.ts';
import { type Timing, USUAL } from './clock.ts';

/** How fast is the engine? One run, one line a figure; null for what does not exist. */
export interface Bench extends PlantSpeed, CallSpeed {
  readonly proveCallsPerSecond: number | null;
  readonly scriptGzipKb: number | null;
  readonly coldOfflineMs: number | null;
  readonly tapToStepMs: number | null;
  readonly workerHeapMb: number | null;
}

export interface BenchInput {
  readonly catalog: Catalog;
  readonly simulator?: Simulator | undefined;
  /** Folder of the built app; it may not be there. */
  readonly built: string;
  readonly timing?: Timing;
  readonly sites?: number;
}

const SITES = 5;

export async function bench({
  catalog,
  simulator,
  built,
  timing = USUAL,
  sites = SITES,
}: BenchInput): Promise<Bench> {
  return {
    ...(await plantSpeed(catalog, simulator, timing)),
    ...callSpeed(catalog, sites),
    proveCallsPerSecond: null,
    scriptGzipKb: scriptSize(built),
    coldOfflineMs: null,
    tapToStepMs: null,
    workerHeapMb: null,
  };
}

/** Kilobytes of script, gzipped, as the built app stands; its content is among it. */
function scriptSize(built: string): number | null {
  const folder = join(built, 'assets');
  if (!existsSync(folder)) return null;
  const scripts = readdirSync(folder).filter((name) => name.endsWith('.js'));
  return scripts.reduce((sum, name) => sum + gzipSync(readFileSync(join(folder, name))).length, 0) / 1000;
}

/** One figure a line, in four figures at most. */
export function benchText(found: Bench): string {
  const printed = (value: number | null): string =>
    value === null ? 'not measured' : String(Number(value.toPrecision(4)));
  return Object.entries(found)
    .map(([key, value]) =>
      typeof value === 'object' && value !== null
        ? `${key}: median ${printed(value.median)}, p95 ${printed(value.p95)}`
        : `${key}: ${printed(value)}`,
    )
    .join('\n');
}
