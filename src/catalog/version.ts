import type { RawFile } from './shapes.ts';

/**
 * A short fingerprint of the content: the same content gives the same answers.
 *
 * Not a seal: it tells versions apart, it keeps nobody out.
 *
 * @source method: FNV-1a, 32 bit, over paths and values in order, twice with different beginnings
 */
export function contentVersion(files: readonly RawFile[]): string {
  const lines = files.map((file) => `${file.path}=${JSON.stringify(file.data)}`);
  const text = lines.sort().join('\n');
  return hash(text, 0x811c9dc5) + hash(text, 0x01000193);
}

function hash(text: string, beginning: number): string {
  let value = beginning;
  for (let index = 0; index < text.length; index++) {
    value = Math.imul(value ^ text.charCodeAt(index), 0x01000193);
  }
  return (value >>> 0).toString(16).padStart(8, '0');
}
