import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Check } from '../../../../src/schema/check.ts';
import type { Fault } from '../../../../src/schema/fault.ts';

/** The checks and faults of the content, as far as the trees must know them: as written, not parsed. */
export type Reads = Check['reads'];

type Written = { id: string; reads?: Reads; verdict?: Fault['verdict'] };

function records(name: string): Written[] {
  const folder = fileURLToPath(new URL(`../../../../content/${name}/`, import.meta.url));
  return readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .map((file): Written => JSON.parse(readFileSync(folder + file, 'utf8')));
}

export const CHECKS: ReadonlyMap<string, Reads> = new Map(
  records('checks').flatMap(({ id, reads }): [string, Reads][] => (reads === undefined ? [] : [[id, reads]])),
);

const faults = records('faults');

export const FAULTS: readonly string[] = faults.map(({ id }) => id);

/** Faults whose repair takes the pump out of the well. */
export const PULLS: ReadonlySet<string> = new Set(
  faults.filter(({ verdict }) => verdict === 'pull').map(({ id }) => id),
);
