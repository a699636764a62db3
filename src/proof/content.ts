import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Built, buildCatalog } from '../catalog/build.ts';
import type { RawFile } from '../catalog/shapes.ts';

/**
 * The catalog, read from the content folder itself: the same files and the same checks as in the
 * built app, without turning hundreds of records into modules first.
 *
 * @param folder  the content folder; a test may hand in one of its own
 */
export function catalogFrom(folder: string): Built {
  const known = kept.get(folder);
  if (known !== undefined) return known;
  const built = buildCatalog(filesIn(folder));
  kept.set(folder, built);
  return built;
}

/** Content does not change while a process runs. */
const kept = new Map<string, Built>();

/** In the order of their paths, as the app reads them: the version of the content depends on it. */
export function filesIn(folder: string): RawFile[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.json'))
    .map((path) => ({
      path: path.replaceAll('\\', '/').slice(0, -'.json'.length),
      data: JSON.parse(readFileSync(join(folder, path), 'utf8')),
    }))
    .sort((one, other) => (one.path < other.path ? -1 : 1));
}
