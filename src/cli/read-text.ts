import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';

/**
 * The text of a file or of the standard input, never more than the cap.
 *
 * A file that says it is larger is refused unread. What does not say (a pipe, a device) is read up to
 * the cap and no further.
 */
export type TextRead =
  | { readonly text: string }
  | { readonly refused: 'missing' | 'not-a-file' | 'too-large' | 'not-text' };

export interface Source {
  readonly path: string;
  readonly capBytes: number;
  readonly standardInput: AsyncIterable<Uint8Array | string>;
  /** Folders that a relative path may start from, in order. */
  readonly folders: readonly string[];
}

export async function readText(source: Source): Promise<TextRead> {
  if (source.path === '-') return decode(await upTo(source.standardInput, source.capBytes));
  for (const folder of source.folders) {
    const path = resolve(folder, source.path);
    const found = await stat(path).catch(() => undefined);
    if (found === undefined) continue;
    if (found.isDirectory()) return { refused: 'not-a-file' };
    if (found.size > source.capBytes) return { refused: 'too-large' };
    return decode(await upTo(createReadStream(path), source.capBytes));
  }
  return { refused: 'missing' };
}

/** All bytes of a stream, or nothing once it gives more than the cap. */
async function upTo(
  stream: AsyncIterable<Uint8Array | string>,
  capBytes: number,
): Promise<Uint8Array | undefined> {
  const pieces: Uint8Array[] = [];
  let bytes = 0;
  for await (const piece of stream) {
    const own = typeof piece === 'string' ? new TextEncoder().encode(piece) : piece;
    bytes += own.byteLength;
    if (bytes > capBytes) return undefined;
    pieces.push(own);
  }
  return Buffer.concat(pieces);
}

function decode(bytes: Uint8Array | undefined): TextRead {
  if (bytes === undefined) return { refused: 'too-large' };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { refused: 'not-text' };
  }
}
