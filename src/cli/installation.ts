import { checksOn } from '../../machines/call/applies.ts';
import { resolveSystem, type System, type SystemChoice } from '../diagnosis/system.ts';
import type { ExpectedWindow } from '../diagnosis/types.ts';
import { expectedWindows } from '../diagnosis/windows/expect.ts';
import type { CaseState } from '../schema/case-state.ts';
import type { Check } from '../schema/check.ts';
import type { Around } from './command.ts';

/** A case's installation, ready to be asked: its likeliest choice, its checks and their windows. */
export interface Ready {
  readonly system: System;
  readonly choice: SystemChoice;
  readonly checks: readonly Check[];
  readonly windows: Readonly<Record<string, ExpectedWindow>>;
}

/** Nothing when no box and motor that are known fit what the case says together. */
export function readyInstallation({ catalog }: Around, state: CaseState): Ready | undefined {
  const system = resolveSystem(catalog, state.installation);
  const [choice] = system.choices;
  if (choice === undefined) return undefined;
  const checks = checksOn(system, Object.values(catalog.checks));
  const windows = expectedWindows({ knowledge: catalog, system, meter: state.meter, justRun: false }, checks);
  return { system, choice, checks, windows };
}

export const NOTHING_FITS =
  'no known box and motor fit what this case says of its installation together. Mend box, motor, leads, power or volts.';

/** Box and motor rows that are still possible, and what was assumed for want of knowledge. */
export function installationData({ system }: Ready) {
  const choices = system.choices.map(({ box, input }) => ({ box: box.id, motor: input.motor.id }));
  return { choices, assumed: system.assumed };
}
