import { figureOf, type Judgements } from '../diagnosis/judgements.ts';
import { type Machine, machineOf, SYNCHRONOUS, soundWindings } from '../plant/electrical/motor.ts';
import type { MotorModel } from '../schema/motor.ts';
import type { Element } from '../schema/netlist.ts';
import { of } from '../units/units.ts';
import { type Fit, leastSquares } from './levenberg.ts';
import { type Drawn, drawnAt, drawnFor, type Feed } from './refit-motor.ts';
import type { Point, Published } from './refit-rows.ts';

/**
 * Which parameters make the model of one motor agree best with its printed lines?
 *
 * Ten unknowns as logarithms, each with a prior; residuals are misses over what the print can be
 * trusted to. Rotor resistance and iron loss are weakly known, which hardly moves the readings.
 */
export const UNKNOWN_NAMES = [
  'turnsRatio',
  'leakage',
  'magnetising',
  'rotor',
  'ironLoss',
  'friction',
  'skinFactor',
  'saturationFactor',
  'hotFactor',
  'startLeakageFactor',
] as const;
export type FittedName = (typeof UNKNOWN_NAMES)[number];
export type Parameters = Readonly<Record<FittedName, number>>;

/** What may be assumed otherwise: slip at full load, and how far the priors are opened. */
export interface Assumed {
  readonly slip?: number | undefined;
  readonly priors?: number | undefined;
}

export interface Refit {
  readonly published: Published;
  readonly parameters: Parameters;
  readonly model: MotorModel;
  readonly fit: Fit;
  /** Half the sum of squares of the shipped parameters, on the same footing. */
  readonly shippedCost: number;
  readonly misses: readonly Miss[];
  readonly shippedMisses: readonly Miss[];
}

/** One printed value against the model, as a share of the printed one. */
export interface Miss {
  readonly point: string;
  readonly what: 'yellow' | 'black' | 'red' | 'watts';
  readonly printed: number;
  readonly modelled: number;
  readonly share: number;
}

export interface Around {
  readonly judgements: Judgements;
  readonly elements: Readonly<Record<string, Element>>;
}

export function refit(around: Around, published: Published, assumed: Assumed = {}): Refit {
  const priors = priorsFor(around, published, assumed);
  const residuals = (at: readonly number[]): number[] => [
    ...dataResiduals(around, published, { at, assumed }),
    ...at.map((value, n) => (value - priors[n]!.centre) / priors[n]!.spread),
  ];
  const fit = leastSquares(
    residuals,
    priors.map(({ centre }) => centre),
  );
  const parameters = parametersAt(fit.at);
  const shipped = UNKNOWN_NAMES.map((name) => Math.log(published.shipped[name]));
  return {
    published,
    parameters,
    model: modelWith(around, published, parameters),
    fit,
    shippedCost: residuals(shipped).reduce((sum, value) => sum + value * value, 0) / 2,
    misses: missesOf(around, published, parameters),
    shippedMisses: missesOf(around, published, published.shipped),
  };
}

function parametersAt(at: readonly number[]): Parameters {
  const value = (name: FittedName): number => Math.exp(at[UNKNOWN_NAMES.indexOf(name)]!);
  return {
    turnsRatio: value('turnsRatio'),
    leakage: value('leakage'),
    magnetising: value('magnetising'),
    rotor: value('rotor'),
    ironLoss: value('ironLoss'),
    friction: value('friction'),
    skinFactor: value('skinFactor'),
    saturationFactor: value('saturationFactor'),
    hotFactor: value('hotFactor'),
    startLeakageFactor: value('startLeakageFactor'),
  };
}

interface Prior {
  readonly centre: number;
  readonly spread: number;
}

function priorsFor({ judgements }: Around, { motor }: Published, assumed: Assumed): Prior[] {
  const figure = (key: string): number => figureOf(judgements, 'refit-priors', key);
  const stall = motor.volts / (motor.lockedRotor ?? 0);
  if (!Number.isFinite(stall))
    throw new Error(`proof: ${motor.id} prints no locked-rotor amps; it cannot be fitted`);
  const base = (motor.volts ** 2 * figure('powerFactor')) / (motor.power * (motor.serviceFactor ?? 1));
  const open = assumed.priors ?? 1;
  const prior = (centre: number, spread: string): Prior => ({
    centre: Math.log(centre),
    spread: open * Math.log(1 + figure(spread)),
  });
  return [
    prior(figure('turnsRatio'), 'turnsRatioSpread'),
    prior(figure('leakageOverStall') * stall, 'leakageSpread'),
    prior(figure('magnetisingOverBase') * base, 'magnetisingSpread'),
    prior(figure('rotorOverStall') * stall, 'rotorSpread'),
    prior(figure('ironLossOverBase') * base, 'ironLossSpread'),
    prior(figure('frictionShare') * motor.power, 'frictionSpread'),
    prior(figure('skinFactor'), 'skinSpread'),
    prior(figure('saturationFactor'), 'saturationSpread'),
    prior(figure('hotFactor'), 'hotSpread'),
    prior(figure('startLeakageFactor'), 'startLeakageSpread'),
  ];
}

/** The model of a row with other parameters; torque and slip at its loads are worked out. */
function modelWith(around: Around, published: Published, parameters: Parameters): MotorModel {
  const { shipped } = published;
  const at = (name: string, otherwise: MotorModel['fullLoad']): MotorModel['fullLoad'] => {
    const point = published.points.find((one) => one.name === name);
    if (point?.shaft === undefined) return otherwise;
    const { slip } = drawn(around, published, { parameters, point });
    return { slip, torque: of(point.shaft / (SYNCHRONOUS * (1 - slip)), 'N.m') };
  };
  return {
    ...withParameters(shipped, parameters),
    fullLoad: at('full load', shipped.fullLoad),
    serviceFactorLoad: at('service factor', shipped.serviceFactorLoad),
  };
}

const withParameters = (model: MotorModel, to: Parameters): MotorModel => ({
  ...model,
  turnsRatio: to.turnsRatio,
  leakage: of(to.leakage, 'ohm'),
  magnetising: of(to.magnetising, 'ohm'),
  rotor: of(to.rotor, 'ohm'),
  ironLoss: of(to.ironLoss, 'ohm'),
  friction: of(to.friction, 'W'),
  skinFactor: to.skinFactor,
  saturationFactor: to.saturationFactor,
  hotFactor: to.hotFactor,
  startLeakageFactor: to.startLeakageFactor,
});

function machineWith({ shipped }: Published, parameters: Parameters): Machine {
  const model = withParameters(shipped, parameters);
  return machineOf(model, soundWindings(model));
}

function drawn(
  { elements }: Around,
  published: Published,
  at: { parameters: Parameters; point: Point },
): Drawn {
  const { point } = at;
  const machine = machineWith(published, at.parameters);
  const feed: Feed = {
    volts: published.motor.volts,
    run: point.run,
    start: point.start,
    runShare: elements['capacitor-run']?.seriesShare ?? 0,
    startShare: elements['capacitor-start']?.seriesShare ?? 0,
  };
  return point.shaft === undefined ? drawnAt(machine, 1, feed) : drawnFor(machine, point.shaft, feed);
}

const WHAT = ['yellow', 'black', 'red', 'watts'] as const;

/** Misses over what the print can be trusted to, and the slip at full load against what is assumed. */
function dataResiduals(
  around: Around,
  published: Published,
  of_: { readonly at: readonly number[]; readonly assumed: Assumed },
): number[] {
  const figure = (key: string): number => figureOf(around.judgements, 'refit-priors', key);
  const parameters = parametersAt(of_.at);
  const weight = ({ point, what, printed }: Miss): number => {
    if (point === 'locked rotor') return figure('stallShare');
    return Math.hypot(
      figure('ampsShare'),
      figure(what === 'watts' ? 'wattsRounding' : 'ampsRounding') / printed,
    );
  };
  const data = missesOf(around, published, parameters).map((miss) => miss.share / weight(miss));
  const full = published.points.find(({ name }) => name === 'full load');
  if (full === undefined) return data;
  const { slip } = drawn(around, published, { parameters, point: full });
  return [...data, (slip - (of_.assumed.slip ?? figure('slip'))) / figure('slipSpread')];
}

function missesOf(around: Around, published: Published, parameters: Parameters): Miss[] {
  return published.points.flatMap((point) => {
    const got = drawn(around, published, { parameters, point });
    const printed = { ...point.amps, watts: point.watts };
    return WHAT.flatMap((what): Miss[] => {
      const value = printed[what];
      if (value === undefined || value <= 0) return [];
      return [{ point: point.name, what, printed: value, modelled: got[what], share: got[what] / value - 1 }];
    });
  });
}
