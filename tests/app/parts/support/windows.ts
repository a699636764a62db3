import type { ExpectedWindow } from '../../../../src/diagnosis/types.ts';

/** A window with what a test is about; the rest plain. */
export function windowOf(over: Partial<ExpectedWindow>): ExpectedWindow {
  return {
    check: 'ohms-yellow-black',
    kind: 'range',
    unit: 'ohm',
    parts: [],
    quality: 'table',
    fromMemory: false,
    ...over,
  };
}
