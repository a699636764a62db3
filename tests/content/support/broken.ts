import { type Built, buildCatalog } from '../../../src/catalog/build.ts';
import type { Catalog, Problem } from '../../../src/catalog/catalog.ts';
import { readContent } from '../../../src/catalog/read.ts';
import type { RawFile } from '../../../src/catalog/shapes.ts';

/** Content with one thing spoilt: the real files, one of them changed, added or taken away. */
export type Json = { [field: string]: unknown };

export const files: readonly RawFile[] = readContent();

/** Names that may stand nowhere but in sources; tests do not spell them either. */
export const makers: readonly string[] = files
  .filter((file) => file.path.startsWith('sources/'))
  .flatMap((file) => ((file.data as Json).makers ?? []) as string[]);

/** The real content with one record passed through an edit. */
export function withEdit(path: string, edit: (record: Json) => void): RawFile[] {
  if (!files.some((file) => file.path === path)) throw new Error(`content has no ${path}`);
  return files.map((file) => {
    if (file.path !== path) return file;
    const data = structuredClone(file.data) as Json;
    edit(data);
    return { path, data };
  });
}

export const withFile = (path: string, data: unknown): RawFile[] => [...files, { path, data }];

export const without = (path: string): RawFile[] => files.filter((file) => file.path !== path);

/** `path: message` of everything that is wrong. */
export function problemsOf(content: readonly RawFile[]): string[] {
  return read(content).map(({ at, message }) => `${at}: ${message}`);
}

export function read(content: readonly RawFile[]): readonly Problem[] {
  const built = buildCatalog(content);
  return 'problems' in built ? built.problems : [];
}

export function catalogOf(built: Built): Catalog {
  if ('catalog' in built) return built.catalog;
  throw new Error(built.problems.map(({ at, message }) => `${at}: ${message}`).join('\n'));
}
