import type { Check } from '../../schema/check.ts';
import type { Part } from '../../schema/netlist.ts';
import { figure } from '../judgements.ts';
import type { SystemChoice } from '../system.ts';
import { type Asked, type Draft, evidenceFor } from './draft.ts';

/** Expected microfarads: the can's own print where it is known, else the motor table. */
export function capacitanceWindow(asked: Asked, check: Check, choice: SystemChoice): Draft {
  const id = 'across' in check.at ? check.at.across : undefined;
  const part = partOf(choice, id);
  const { startCapacitor, runCapacitor, motor } = choice.input;
  if (part?.kind === 'capacitor-start' && startCapacitor !== undefined) {
    const printed = startCapacitor !== motor.startCapacitor;
    const from = evidenceFor(motor.from, 'startCapacitor');
    return printed
      ? { kind: 'range', parts: [{ name: 'label', ...startCapacitor, from: [] }], quality: 'nameplate' }
      : { kind: 'range', parts: [{ name: 'table', ...startCapacitor, from }], quality: 'table' };
  }
  if (part?.kind === 'capacitor-run' && runCapacitor !== undefined) {
    const tolerance = figure(asked.knowledge.judgements, 'run-capacitor-tolerance');
    const name = runCapacitor === motor.runCapacitor ? 'table' : 'label';
    const from = name === 'table' ? evidenceFor(motor.from, 'runCapacitor') : [];
    const ends = { low: runCapacitor * (1 - tolerance), high: runCapacitor * (1 + tolerance) };
    return {
      kind: 'range',
      parts: [{ name, ...ends, from }],
      quality: name === 'table' ? 'table' : 'nameplate',
    };
  }
  return { kind: 'unknown', parts: [], quality: 'nameplate', missing: ['startCapacitor'] };
}

function partOf(choice: SystemChoice, id: string | undefined): Part | undefined {
  return choice.input.pieces.flatMap((piece) => piece.parts).find((part) => part.id === id);
}
