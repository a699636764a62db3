import type { CallView } from '../../../machines/call/types.ts';
import type { Catalog, Problem } from '../../catalog/catalog.ts';
import type { CaseState } from '../../schema/case-state.ts';

/**
 * What the screen and the engine say to each other across the worker. Plain data both ways; every
 * question carries a number, so that a late answer is never taken for the answer to a newer one.
 */
export interface ToEngine {
  readonly ask: number;
  readonly state: CaseState;
}

export type FromEngine =
  | { readonly kind: 'ready'; readonly catalog: Catalog }
  /** The content failed its check: there is no engine, and no advice. */
  | { readonly kind: 'bad-content'; readonly problems: readonly Problem[] }
  | { readonly kind: 'view'; readonly ask: number; readonly view: CallView }
  | { readonly kind: 'failed'; readonly ask: number; readonly message: string };

/** The catalog, or why there is none. */
export type Loaded =
  | { readonly kind: 'ready'; readonly catalog: Catalog }
  | { readonly kind: 'bad-content'; readonly problems: readonly Problem[] };

/** The engine as the screens know it. Tests hand in one that runs without a worker. */
export interface Engine {
  readonly loaded: Promise<Loaded>;
  /** @throws Error with the engine's message: the screen then gives no advice */
  view(state: CaseState): Promise<CallView>;
}
