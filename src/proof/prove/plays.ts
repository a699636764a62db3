import type { Catalog } from '../../catalog/catalog.ts';
import type { Regime } from '../../plant/types.ts';
import type { MotorModel } from '../../schema/motor.ts';
import { refitAll } from '../refit.ts';
import { type FittedName, UNKNOWN_NAMES } from '../refit-fit.ts';
import type { PlayName } from './jobs.ts';
import { type Random, randomFrom, seedOf } from './random.ts';

/**
 * The three ways a call is played.
 *
 * clean: the plant that belief knows, meters well within their class, people who report what they see, and
 * what no fault is about looks as expected. noisy: meters up to the limits of their class, people as
 * reliable as their instrument record says, sound parts that look odd now and then, one instrument missing. mismatch: meters and people as in clean, but another plant: motor models fitted with
 * other assumptions, modelled amps and watts off by a share, faults as much as twice or half as frequent.
 */
export interface Play {
  /** Share of the printed limit of error that a reading is off by at most. */
  readonly meterShare: number;
  readonly peopleErr: boolean;
  /** What no fault is about may look odd all the same, as often as content says. */
  readonly soundStrays: boolean;
  readonly missesInstrument: boolean;
  readonly isMismatch: boolean;
}

export const PLAYS: Readonly<Record<PlayName, Play>> = {
  clean: {
    meterShare: 1 / 3,
    peopleErr: false,
    soundStrays: false,
    missesInstrument: false,
    isMismatch: false,
  },
  noisy: { meterShare: 1, peopleErr: true, soundStrays: true, missesInstrument: true, isMismatch: false },
  mismatch: {
    meterShare: 1 / 3,
    peopleErr: false,
    soundStrays: false,
    missesInstrument: false,
    isMismatch: true,
  },
};

/** What is off in one world of a mismatch call; one sign for each regime, one factor for each fault. */
export interface Offsets {
  biasOf(regime: Regime): number;
  factorOf(fault: string): number;
}

const BIAS: Readonly<Record<Regime, number>> = { static: 0, running: 0.1, saturated: 0.3 };
const PRIOR_FACTOR = 2;

export function offsetsOf(play: Play, seed: number): Offsets {
  if (!play.isMismatch) return { biasOf: () => 0, factorOf: () => 1 };
  const random = randomFrom(seed);
  const signs: Readonly<Record<Regime, number>> = {
    static: 0,
    running: sign(random),
    saturated: sign(random),
  };
  return {
    biasOf: (regime) => signs[regime] * BIAS[regime],
    factorOf: (fault) => PRIOR_FACTOR ** sign(randomFrom(seedOf(seed, fault))),
  };
}

const sign = (random: Random): 1 | -1 => (random.chance(0.5) ? 1 : -1);

/** Other assumptions that the motor table allows as well: more or less slip, priors opened. */
const ASSUMED = [{ slip: 0.026 }, { slip: 0.046 }, { priors: 2 }] as const;

/** The same catalog with motor models fitted anew; a row that follows another moves as that one did. */
export function refittedCatalogs(catalog: Catalog): Catalog[] {
  return ASSUMED.map((assumed) => {
    const { refits, follow } = refitAll(catalog, assumed);
    const fitted = new Map(refits.map(({ model }) => [model.id, model]));
    const motorModels = Object.fromEntries(
      Object.entries(catalog.motorModels).map(([id, shipped]) => {
        const leader = follow[id] ?? id;
        const now = fitted.get(leader);
        const was = catalog.motorModels[leader];
        return [id, now === undefined || was === undefined ? shipped : movedLike(shipped, was, now)];
      }),
    );
    return { ...catalog, motorModels };
  });
}

function movedLike(model: MotorModel, was: MotorModel, now: MotorModel): MotorModel {
  const times = (name: FittedName) => (model[name] * now[name]) / was[name];
  const slip = (load: 'fullLoad' | 'serviceFactorLoad') => ({
    torque: (model[load].torque * now[load].torque) / was[load].torque,
    slip: (model[load].slip * now[load].slip) / was[load].slip,
  });
  return {
    ...model,
    ...Object.fromEntries(UNKNOWN_NAMES.map((name) => [name, times(name)])),
    ...({ fullLoad: slip('fullLoad'), serviceFactorLoad: slip('serviceFactorLoad') } as Pick<
      MotorModel,
      'fullLoad' | 'serviceFactorLoad'
    >),
  };
}
