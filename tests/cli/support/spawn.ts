import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const PROGRAM = fileURLToPath(new URL('../../../src/cli/ohmwell.mjs', import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The real command in a process of its own, as a person would start it in a folder. */
export function ohmwell(
  words: readonly string[],
  { cwd, input = '' }: { cwd: string; input?: string },
): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [PROGRAM, ...words], { cwd });
    let [out, err] = ['', ''];
    child.stdout.setEncoding('utf8').on('data', (piece: string) => {
      out += piece;
    });
    child.stderr.setEncoding('utf8').on('data', (piece: string) => {
      err += piece;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
    // A program that refuses early closes its input; what was not taken is no failure.
    child.stdin.on('error', () => {});
    child.stdin.end(input);
  });
}
