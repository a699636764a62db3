import type { Catalog } from '../catalog/catalog.ts';
import type { Installation } from '../schema/installation.ts';
import { idleChecks, quietFaults } from './separate-moved.ts';
import {
  type FaultHere,
  faultsApart,
  onlyAct,
  type SiteTable,
  TELLS,
  tableOf,
  tellingAct,
} from './separate-pairs.ts';
import { type Act, SITES, siteOf, UNTOUCHED } from './separate-sites.ts';

/**
 * Is the catalogue worth asking? Every fault must change some reading, every two faults with different
 * repairs must be told apart by some check or be kept together on purpose, every check must be moved
 * by some fault.
 *
 * Worked out from what belief itself predicts, on a handful of installations. What no single act can
 * tell, several together still may: this looks at single acts and is the stricter for it.
 */
export interface Separation {
  readonly sites: readonly string[];
  /** Faults that can occur on none of the installations. */
  readonly nowhere: readonly string[];
  /** Faults that change no reading, wherever they occur; with their variants where others do. */
  readonly still: readonly string[];
  /** Checks that tell nothing from anything, and that serve nothing else. */
  readonly unmoved: readonly string[];
  /** Checks that exist somewhere and that the interlock lets nobody take anywhere. */
  readonly forbidden: readonly { readonly check: string; readonly why: string }[];
  /** Every two faults of which there is something to say. */
  readonly pairs: readonly Pair[];
  readonly groups: readonly Group[];
}

/**
 * `alike`: different repairs, and nothing tells them apart. `single`: one act alone does. `weak`: more
 * acts do, none of them well. `grouped`: kept together on purpose although an act tells them apart.
 * `shared`: nothing tells them apart, and they have one repair.
 */
export type PairKind = 'alike' | 'single' | 'weak' | 'grouped' | 'shared';

export interface Pair {
  readonly kind: PairKind;
  readonly faults: readonly [string, string];
  /** Where it is so, in the order of the installations. */
  readonly sites: readonly string[];
  /** How far they are told apart at worst, 0 to 1. */
  readonly told: number;
  /** The act that tells them apart best, as dear as it is at the dearest of the sites. */
  readonly by: Act | undefined;
}

/** Faults that are kept together because nothing at the surface tells them apart. */
export interface Group {
  readonly id: string;
  readonly faults: readonly string[];
  readonly actions: readonly string[];
}

export interface SeparateOptions {
  readonly sites?: Readonly<Record<string, Installation>>;
  readonly coarse?: boolean;
  readonly progress?: ((line: string) => void) | undefined;
}

export function separate(catalog: Catalog, options: SeparateOptions = {}): Separation {
  const { sites = SITES, coarse, progress = () => {} } = options;
  const tables = Object.entries(sites).map(([name, known]) => {
    progress(`${name}: setting up`);
    const site = siteOf(catalog, { name, known, coarse });
    let done = 0;
    return tableOf(site, () => {
      if (++done % EVERY === 0) progress(`${name}: ${done} of ${site.checks.length} checks`);
    });
  });
  return {
    sites: Object.keys(sites),
    ...quietFaults(catalog, tables),
    ...idleChecks(catalog, tables),
    pairs: gathered(tables.flatMap(pairsOf)),
    groups: groupsOf(catalog),
  };
}

/** A line of progress for so many checks. */
const EVERY = 25;

/** Best act that settles fewer calls than this: as two normals two deviations apart. */
const WELL_TOLD = 0.68;

/** Every two faults of an installation of which there is something to say. */
function pairsOf(table: SiteTable): Pair[] {
  const faults = table.faults.filter(({ fault }) => fault.id !== UNTOUCHED.id);
  return faults.flatMap((one, index) =>
    faults.slice(index + 1).flatMap((other) => {
      const told = faultsApart(table, one, other);
      const by = onlyAct(table, one, other);
      const kind = kindOf([one, other], { told, isSingle: by !== undefined });
      if (kind === undefined) return [];
      const faultIds = [one.fault.id, other.fault.id] as const;
      const act = kind === 'single' ? by : tellingAct(table, one, other);
      return [{ kind, faults: faultIds, sites: [table.site.name], told, by: act }];
    }),
  );
}

function kindOf(
  [one, other]: readonly [FaultHere, FaultHere],
  { told, isSingle }: { told: number; isSingle: boolean },
): PairKind | undefined {
  const isTold = told >= TELLS;
  const isGrouped = one.fault.together !== undefined && one.fault.together === other.fault.together;
  if (isGrouped) return isTold ? 'grouped' : undefined;
  if (one.action === other.action) return isTold ? undefined : 'shared';
  if (!isTold) return 'alike';
  if (isSingle) return 'single';
  return told < WELL_TOLD ? 'weak' : undefined;
}

/** The same two faults by the same act on several installations are one. */
function gathered(pairs: readonly Pair[]): Pair[] {
  const all = new Map<string, Pair>();
  for (const pair of pairs) {
    const key = [pair.kind, ...pair.faults, pair.kind === 'single' ? pair.by?.id : ''].join(' ');
    const known = all.get(key);
    if (known === undefined) {
      all.set(key, pair);
      continue;
    }
    const { by } = (pair.by?.minutes ?? 0) > (known.by?.minutes ?? 0) ? pair : known;
    const sites = [...known.sites, ...pair.sites];
    all.set(key, { ...known, by, sites, told: Math.min(known.told, pair.told) });
  }
  return [...all.values()];
}

function groupsOf({ faults }: Catalog): Group[] {
  const ids = [...new Set(Object.values(faults).flatMap(({ together }) => together ?? []))].sort();
  return ids.map((id) => {
    const members = Object.values(faults).filter(({ together }) => together === id);
    const actions = [...new Set(members.map(({ action }) => action))];
    return { id, faults: members.map((fault) => fault.id), actions };
  });
}
