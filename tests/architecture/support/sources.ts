import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Files of the project as text, by path from its root. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

export const root = fileURLToPath(new URL('../../..', import.meta.url));

export function filesBelow(folder: string, endings: readonly string[]): SourceFile[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((file) => ({ path: relative(root, file), text: readFileSync(file, 'utf8') }));
}

/** All that is compiled into the product: src and machines. */
export const productFiles = (): SourceFile[] => [
  ...filesBelow('src', ['.ts', '.tsx', '.mjs']),
  ...filesBelow('machines', ['.ts', '.tsx']),
];
