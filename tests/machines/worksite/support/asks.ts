import type { AnyStateMachine } from 'xstate';

/**
 * Which other regions the guards of a region look at, read off the machine itself.
 *
 * Guards are made of `stateIn`, `and`, `or`, `not`, names of such guards, and `at`, which sees the
 * event alone; anything else is refused, so that no guard can look at a region unseen.
 */
export function regionsAskedBy(machine: AnyStateMachine, region: string): string[] {
  const node = machine.states[region];
  if (node === undefined) throw new Error(`tests: no region ${region}`);
  const asked = new Set<string>();
  for (const state of Object.values(node.states)) {
    for (const transitions of state.transitions.values()) {
      for (const { guard } of transitions) for (const one of regionsIn(machine, guard)) asked.add(one);
    }
  }
  return [...asked].sort();
}

function regionsIn(machine: AnyStateMachine, guard: unknown): string[] {
  if (guard === undefined) return [];
  const name = nameOf(guard);
  if (name === 'at') return [];
  const found = name === undefined ? guard : machine.implementations.guards[name];
  if (found === undefined) throw new Error(`tests: no guard ${name}`);
  const state = property(found, 'stateValue');
  if (typeof state === 'object' && state !== null) return Object.keys(state);
  const parts = property(found, 'guards');
  if (Array.isArray(parts)) return parts.flatMap((part) => regionsIn(machine, part));
  if (typeof found === 'function' && found.length === 0) return [];
  throw new Error(`tests: a guard that cannot be read: ${name ?? String(found)}`);
}

function nameOf(guard: unknown): string | undefined {
  if (typeof guard === 'string') return guard;
  const type = property(guard, 'type');
  return typeof guard === 'object' && typeof type === 'string' ? type : undefined;
}

function property(of: unknown, name: string): unknown {
  if ((typeof of !== 'object' && typeof of !== 'function') || of === null) return undefined;
  return Reflect.get(of, name);
}
