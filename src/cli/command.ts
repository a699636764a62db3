import type { Catalog } from '../catalog/catalog.ts';
import type { TextRead } from './read-text.ts';

/**
 * What a command of the command line is: pure but for reading the one file that it is told, writing
 * nothing, and answering with data that is printed in one place.
 */
export interface Command {
  readonly usage: string;
  readonly about: string;
  run(given: Given, around: Around): Promise<Answer>;
}

/** The words after the command: operands in order, flags by name without their dashes. */
export interface Given {
  readonly operands: readonly string[];
  readonly flags: ReadonlyMap<string, string>;
}

/** What a command may use of the world. */
export interface Around {
  readonly catalog: Catalog;
  /** A file, or the standard input for `-`; refused by size before it is read whole. */
  readText(path: string): Promise<TextRead>;
  /** A line about how far a long command has come. */
  tell?(line: string): void;
}

export type Answer =
  | { readonly kind: 'data'; readonly data: unknown }
  | { readonly kind: 'text'; readonly text: string }
  /** The input is wrong: one line for each mistake. */
  | { readonly kind: 'bad-input'; readonly lines: readonly string[] }
  /** The command was called wrongly. */
  | { readonly kind: 'usage'; readonly line: string };

export const badInput = (...lines: readonly string[]): Answer => ({ kind: 'bad-input', lines });
export const usageError = (line: string): Answer => ({ kind: 'usage', line });
