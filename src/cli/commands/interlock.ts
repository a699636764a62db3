import { type Answer, type Around, type Command, type Given, usageError } from '../command.ts';
import { interlockPage } from '../interlock.ts';

/** The safety steps, rules and promises on one page, made from the tables that the program runs on. */
export const interlock: Command = {
  usage: 'interlock',
  about: 'the steps and rules that keep people safe, on one page, to object to',
  run: async (given, around) => run(given, around),
};

function run(given: Given, { catalog }: Around): Answer {
  if (given.operands.length > 0) return usageError('interlock takes nothing after it');
  return { kind: 'text', text: interlockPage(catalog) };
}
