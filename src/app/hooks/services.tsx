import { createContext, type ReactNode, useContext } from 'react';
import type { Catalog } from '../../catalog/catalog.ts';
import type { CaseStore } from '../../records/store.ts';
import type { Engine } from '../worker/protocol.ts';
import type { Presence } from './presence.ts';

/** What every screen stands on: the content, the engine behind its door, the kept cases. */
export interface Services {
  readonly catalog: Catalog;
  readonly engine: Engine;
  readonly store: CaseStore;
  readonly presence: Presence;
}

const Context = createContext<Services | undefined>(undefined);

export function ServicesOf({ services, children }: { services: Services; children: ReactNode }) {
  return <Context value={services}>{children}</Context>;
}

export function useServices(): Services {
  const found = useContext(Context);
  if (found === undefined) throw new Error('app: a screen stands outside ServicesOf; wrap it');
  return found;
}
