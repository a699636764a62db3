import { type AnyStateMachine, createMachine } from 'xstate';
import { worksiteMachine } from '../../../../machines/worksite/worksite.machine.ts';

/**
 * Worksite machines with one deliberate mistake, so that every invariant can be seen to catch one.
 */
/** The machine's own drawing, loosened so that a mistake can be drawn into it. */
const CONFIG: AnyStateMachine['config'] = worksiteMachine.config;
const GUARDS = worksiteMachine.implementations.guards;

/** One guard answers the same whatever the state. */
export function withGuard(name: keyof typeof GUARDS & string, answer: boolean): AnyStateMachine {
  if (!(name in GUARDS)) throw new Error(`tests: the worksite machine has no guard ${name}`);
  return createMachine(CONFIG, { guards: { ...GUARDS, [name]: () => answer } });
}

/**
 * One state answers an event otherwise: with another target, or, for `undefined`, not at all.
 *
 * @param at region and state, as in `supply.locked`
 */
export function withAnswer(
  at: string,
  answers: Readonly<Record<string, string | undefined>>,
): AnyStateMachine {
  const [region = '', name = ''] = at.split('.');
  const own = CONFIG.states?.[region];
  const state = own?.states?.[name];
  if (own === undefined || state === undefined)
    throw new Error(`tests: the worksite machine has no state ${at}`);
  const states = { ...own.states, [name]: { ...state, on: { ...state.on, ...answers } } };
  return createMachine(
    { ...CONFIG, states: { ...CONFIG.states, [region]: { ...own, states } } },
    { guards: GUARDS },
  );
}
