import type { Given } from './command.ts';

/**
 * Words of a command line, sorted into operands and flags. A flag takes a value, `--fault ID` or
 * `--fault=ID`, a switch takes none; one that the command does not know is a mistake, never ignored.
 */
export function sortArguments(
  words: readonly string[],
  allowed: readonly string[],
  switches: readonly string[] = [],
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
    const isSwitch = switches.includes(name);
    if (!isSwitch && !allowed.includes(name)) return { mistake: `there is no option --${name}` };
    if (flags.has(name)) return { mistake: `--${name} stands twice` };
    if (isSwitch && rest.length > 0) return { mistake: `--${name} takes no value` };
    if (isSwitch) {
      flags.set(name, '');
      continue;
    }
    const value = rest.length > 0 ? rest.join('=') : words[++index];
    if (value === undefined || value === '' || value.startsWith('--'))
      return { mistake: `--${name} needs a value` };
    flags.set(name, value);
  }
  return { given: { operands, flags } };
}
