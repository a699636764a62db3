import type { Given } from './command.ts';

/**
 * Words of a command line, sorted into operands and flags. Every flag takes a value, `--fault ID` or
 * `--fault=ID`; a flag that the command does not know is a mistake, never ignored.
 */
export function sortArguments(
  words: readonly string[],
  allowed: readonly string[],
): { readonly given: Given } | { readonly mistake: string } {
  const operands: string[] = [];
  const flags = new Map<string, string>();
  for (let index = 0; index < words.length; index++) {
    const word = words[index]!;
    if (!word.startsWith('--')) {
      operands.push(word);
      continue;
    }
    const [name = '', ...rest] = word.slice(2).split('=');
    if (!allowed.includes(name)) return { mistake: `there is no option --${name}` };
    if (flags.has(name)) return { mistake: `--${name} stands twice` };
    const value = rest.length > 0 ? rest.join('=') : words[++index];
    if (value === undefined || value === '' || value.startsWith('--'))
      return { mistake: `--${name} needs a value` };
    flags.set(name, value);
  }
  return { given: { operands, flags } };
}
