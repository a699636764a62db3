import type { Hypothesis } from '../diagnosis/belief/hypotheses.ts';
import { type Shown, shownAt, toldApart } from './separate-shown.ts';
import type { Act, Site } from './separate-sites.ts';

/**
 * Which faults can some check tell apart on one installation, which checks can some fault move?
 *
 * Every check is taken in turn and held against every two variants; what is kept of it is the best
 * check of each two and the best of those that are taken at another time. A fault is told from another
 * when it has a variant that is told from all of the other's variants, both ways round: a fault that
 * can always hide behind another is not told from it, however many leads either of them has. A check
 * of a fitting that some houses lack tells only the faults of that fitting from others.
 */
export interface SiteTable {
  readonly site: Site;
  /** Of the catalogue, in the order of their ids, those that can occur here. */
  readonly faults: readonly FaultHere[];
  /** Checks that tell some fault from another or from nothing done. */
  readonly moved: ReadonlySet<string>;
  /** How far two variants can be told apart, by any act or by any but one. */
  told(one: number, other: number, without?: string): number;
  /** The act that tells two variants apart best. */
  bestAct(one: number, other: number): Act | undefined;
}

export interface FaultHere {
  readonly fault: Hypothesis['fault'];
  readonly action: string;
  /** Indices of its variants among the hypotheses of the site. */
  readonly variants: readonly number[];
}

/** Two calls in five settled by one check: less is no telling apart. */
export const TELLS = 0.4;

export function tableOf(site: Site, progress: (check: string) => void = () => {}): SiteTable {
  const { hypotheses } = site.model;
  const best = bests(hypotheses.length);
  const shown = shownAt(site);
  const moved = new Set<string>();
  const fitting = hypotheses.map(({ fault }) => fault.fitting);
  for (const { check, act, only } of site.checks) {
    progress(check.id);
    const column = shown(check);
    const apart = apartByRow(column);
    if (apart.some((told) => told >= TELLS)) moved.add(check.id);
    const count = column.rows.length;
    best.take(act, (one, other) => {
      const isThere = only === undefined || fitting[one] === only || fitting[other] === only;
      return isThere ? apart[column.rowOf[one]! * count + column.rowOf[other]!]! : 0;
    });
  }
  return { site, faults: faultsOf(hypotheses), moved, ...best };
}

function faultsOf(hypotheses: readonly Hypothesis[]): FaultHere[] {
  const found = new Map<string, { fault: Hypothesis['fault']; action: string; variants: number[] }>();
  hypotheses.forEach(({ fault, action }, index) => {
    const known = found.get(fault.id);
    if (known === undefined) found.set(fault.id, { fault, action, variants: [index] });
    else known.variants.push(index);
  });
  return [...found.values()];
}

/** Worked out once for all variants that show the same. */
function apartByRow(column: Shown): Float32Array {
  const count = column.rows.length;
  const apart = new Float32Array(count * count);
  for (let one = 0; one < count; one++)
    for (let other = one + 1; other < count; other++) {
      const told = toldApart(column, one, other);
      apart[one * count + other] = told;
      apart[other * count + one] = told;
    }
  return apart;
}

/** The best act of each two variants, and how far the best of all other acts comes. */
function bests(count: number) {
  const first = new Float32Array(count * count);
  const second = new Float32Array(count * count);
  const firstAct = new Int32Array(count * count).fill(-1);
  const acts: Act[] = [];
  const at = (one: number, other: number): number => Math.min(one, other) * count + Math.max(one, other);
  return {
    take: (act: Act, told: (one: number, other: number) => number): void => {
      let number = acts.findIndex(({ id }) => id === act.id);
      if (number < 0) number = acts.push(act) - 1;
      for (let one = 0; one < count; one++)
        for (let other = one + 1; other < count; other++) {
          const place = one * count + other;
          const now = told(one, other);
          if (firstAct[place] === number) first[place] = Math.max(first[place]!, now);
          else if (now > first[place]!) {
            second[place] = first[place]!;
            first[place] = now;
            firstAct[place] = number;
          } else second[place] = Math.max(second[place]!, now);
        }
    },
    told: (one: number, other: number, without?: string): number => {
      const place = at(one, other);
      return acts[firstAct[place]!]?.id === without && without !== undefined ? second[place]! : first[place]!;
    },
    bestAct: (one: number, other: number): Act | undefined => acts[firstAct[at(one, other)]!],
  };
}

/** How well two faults are told apart, 0 to 1; without one of the acts if it is named. */
export function faultsApart(table: SiteTable, one: FaultHere, other: FaultHere, without?: string): number {
  return Math.min(hardest(table, one, other, without).told, hardest(table, other, one, without).told);
}

interface Hardest {
  readonly told: number;
  readonly act: Act | undefined;
}

/** The variant of one fault that is best told from all variants of the other, and by what. */
function hardest(table: SiteTable, from: FaultHere, other: FaultHere, without?: string): Hardest {
  let best: Hardest = { told: -1, act: undefined };
  for (const one of from.variants) {
    let least: Hardest = { told: Infinity, act: undefined };
    for (const variant of other.variants) {
      const told = table.told(one, variant, without);
      if (told < least.told) least = { told, act: table.bestAct(one, variant) };
    }
    if (least.told > best.told) best = least;
  }
  return best;
}

/** The act that tells two faults apart best. */
export function tellingAct(table: SiteTable, one: FaultHere, other: FaultHere): Act | undefined {
  const [there, back] = [hardest(table, one, other), hardest(table, other, one)];
  return there.told < back.told ? there.act : back.act;
}

/** The only act that tells two faults apart; nothing where there are more, or none. */
export function onlyAct(table: SiteTable, one: FaultHere, other: FaultHere): Act | undefined {
  const acts = new Map<string, Act>();
  for (const variant of one.variants)
    for (const against of other.variants) {
      const act = table.bestAct(variant, against);
      if (act !== undefined) acts.set(act.id, act);
    }
  return [...acts.values()].find(({ id }) => faultsApart(table, one, other, id) < TELLS);
}
