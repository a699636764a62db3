import type { Catalog } from '../catalog/catalog.ts';
import { type Assumed, type Miss, type Refit, refit, UNKNOWN_NAMES } from './refit-fit.ts';
import { followed, publishedRows } from './refit-rows.ts';

/**
 * Do the motor models still agree with the motor table, and what would other assumptions give?
 *
 * Every model that stands for itself is fitted anew from the centres of its priors, never from the
 * shipped numbers. Models that follow another row are named, not fitted.
 */
export interface RefitAll {
  readonly assumed: Assumed;
  readonly refits: readonly Refit[];
  readonly follow: Readonly<Record<string, string>>;
}

export function refitAll(catalog: Catalog, assumed: Assumed = {}): RefitAll {
  const follow = Object.values(catalog.motorModels).flatMap((model) => {
    const row = followed(catalog, model);
    return row === undefined ? [] : [[model.id, row] as const];
  });
  const refits = publishedRows(catalog).map((published) => refit(catalog, published, assumed));
  return { assumed, refits, follow: Object.fromEntries(follow) };
}

/**
 * `slip=0.03,priors=2` as assumptions, or what is wrong with it.
 *
 * @example
 * assumptions('slip=0.03,priors=2') // => { assumed: { slip: 0.03, priors: 2 } }
 */
export function assumptions(text: string): { readonly assumed: Assumed } | { readonly mistake: string } {
  const assumed: { slip?: number; priors?: number } = {};
  for (const one of text.split(',')) {
    const [name = '', value = ''] = one.split('=');
    const number = Number(value);
    if ((name !== 'slip' && name !== 'priors') || !(number > 0))
      return { mistake: `"${one}" is no assumption; write slip=0.03 or priors=2` };
    assumed[name] = number;
  }
  return { assumed };
}

const FIGURES = 5;
const short = (value: number): string => String(Number(value.toPrecision(FIGURES)));
const percent = (share: number): string => `${share < 0 ? '' : '+'}${(100 * share).toFixed(1)} %`;

/** Old and new parameters with one standard deviation, then every printed value with both misses. */
export function refitText({ refits, follow }: RefitAll): string {
  const blocks = refits.map((one) => [headOf(one), ...parameterLines(one), ...missLines(one)].join('\n'));
  const followers = Object.entries(follow).map(([id, row]) => `${id} follows ${row}`);
  return [...blocks, ...followers].join('\n\n');
}

function headOf({ published, fit, shippedCost }: Refit): string {
  return `${published.motor.id}: cost ${short(fit.cost)} in ${fit.rounds} rounds, shipped ${short(shippedCost)}`;
}

function parameterLines({ published, parameters, fit }: Refit): string[] {
  return UNKNOWN_NAMES.map((name, n) => {
    const old = published.shipped[name];
    const change = percent(parameters[name] / old - 1);
    return `  ${name}: ${short(old)} → ${short(parameters[name])} (${change}; ± ${(100 * fit.deviations[n]!).toFixed(0)} %)`;
  });
}

function missLines({ misses, shippedMisses }: Refit): string[] {
  return misses.map((miss, n) => {
    const old = shippedMisses[n]!;
    return `  ${miss.point} ${miss.what}: printed ${short(miss.printed)}, model ${short(miss.modelled)} (${percent(miss.share)}; shipped ${percent(old.share)})`;
  });
}

export const worstMiss = (misses: readonly Miss[]): number =>
  Math.max(...misses.map(({ share }) => Math.abs(share)));

/** Parameter sets by motor, as a content record holds them: what the sweep perturbs the plant with. */
export function parameterSets({ assumed, refits, follow }: RefitAll) {
  return {
    assumed,
    models: Object.fromEntries(
      refits.map(({ model, parameters }) => {
        const { fullLoad, serviceFactorLoad } = model;
        return [model.id, { ...parameters, fullLoad, serviceFactorLoad }];
      }),
    ),
    follow,
  };
}
