import { main } from '../../../src/cli/main.ts';
import type { Ran } from './spawn.ts';

/** The same command without a process of its own: quick, and exact about what goes where. */
export async function inProcess(
  words: readonly string[],
  { cwd, input = '' }: { cwd: string; input?: string },
): Promise<Ran> {
  let [out, err] = ['', ''];
  async function* stdin(): AsyncGenerator<string> {
    yield input;
  }
  const code = await main(words, {
    stdin: stdin(),
    stdout: { write: (text) => (out += text) },
    stderr: { write: (text) => (err += text) },
    env: {},
    cwd: () => cwd,
  });
  return { code, out, err };
}
