import type { RawFile } from './shapes.ts';

/** Every JSON file below content/, found by glob: adding a file is enough. */
const files = import.meta.glob<unknown>('../../content/**/*.json', { eager: true, import: 'default' });

export function readContent(): RawFile[] {
  return Object.entries(files)
    .map(([path, data]) => ({ path: path.replace(/^.*\/content\//, '').replace(/\.json$/, ''), data }))
    .sort((one, other) => (one.path < other.path ? -1 : 1));
}
