import type { Catalog } from '../catalog/catalog.ts';
import type { Fault } from '../schema/fault.ts';

/**
 * Which faults does the plant know nothing of? Those that only carry signs, and those that have
 * neither edits nor signs and so can be suspected but never shown; their record says why.
 */
export interface KnownBy {
  /** With the note of the record, if it has one. */
  readonly nothing: readonly { readonly fault: string; readonly note: string | undefined }[];
  readonly signsOnly: readonly string[];
}

export function knownBy({ faults }: Pick<Catalog, 'faults'>): KnownBy {
  const outside = Object.values(faults).filter((fault) => !isInjected(fault));
  return {
    nothing: outside.filter((fault) => !isSigned(fault)).map(({ id, note }) => ({ fault: id, note })),
    signsOnly: outside.filter(isSigned).map(({ id }) => id),
  };
}

const isInjected = ({ variants }: Fault): boolean =>
  variants.some(({ edits, water = [] }) => edits.length > 0 || water.length > 0);
const isSigned = ({ signs = [] }: Fault): boolean => signs.length > 0;

export function knownByText({ nothing, signsOnly }: KnownBy): string {
  const reasons = nothing.map(({ fault, note }) => `  ${fault}: ${note ?? 'no reason given'}\n`);
  const signs = signsOnly.map((fault) => `  ${fault}\n`);
  return [
    `neither put into the plant nor signed: ${nothing.length}\n${reasons.join('')}`,
    `known by their signs only: ${signsOnly.length}\n${signs.join('')}`,
  ].join('\n');
}
