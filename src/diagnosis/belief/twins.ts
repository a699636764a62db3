import type { PlantState } from '../../plant/types.ts';
import type { Check } from '../../schema/check.ts';
import { SOUND, signsOf, type Touched, touched } from './hypotheses.ts';
import type { Piece } from './piece.ts';

/**
 * Which pieces predict a check alike, whatever their numbers turn out to be?
 *
 * A worn pump has sound windings, and a burnt contact a sound well. So a prediction is named after
 * what it can depend on: ohms after the electrical edits; amps after those, the mode and the load that
 * the water asks; water readings after the water edits and what the motor does for the pump. Pieces
 * that give it one name share it, and it is worked out once, for all motor rows where the motor has
 * no part in it.
 */
export interface Twins {
  /** Equal names predict the check alike. */
  nameFor(piece: number, check: Check): string;
  /**
   * A sound piece whose slopes hold for this one too: the same windings in the same mode, at a load
   * that the water makes other. Undefined where there is none.
   */
  baseFor(piece: number, check: Check): number | undefined;
}

export function twinsOf(pieces: readonly Piece[]): Twins {
  const kept = new Map<string, string>();
  const once = (key: string, make: () => string): string => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    const made = make();
    kept.set(key, made);
    return made;
  };
  const kinds = pieces.map(kindOf);
  const bases = new Map(
    kinds.flatMap(({ choice, electrical, water, mode }, index) =>
      electrical === SOUND && water === SOUND ? [[`${choice} ${mode}`, index] as const] : [],
    ),
  );
  /** What a state says over the span of the piece; states that differ in nothing asked are one. */
  const over = (index: number, key: string, say: (state: PlantState) => string): string =>
    once(key, () => statesOf(pieces[index]!).map(say).join(' '));
  const load = (index: number): string =>
    over(index, `load ${kinds[index]!.water}`, (state) => state.pumpLoad().toFixed(LOAD_DIGITS));
  const drive = (index: number): string => {
    const { choice, electrical, mode } = kinds[index]!;
    return over(index, `drive ${choice} ${electrical} ${mode}`, driveName);
  };
  const seen = (index: number): string => {
    const { choice, electrical, mode } = kinds[index]!;
    return over(index, `seen ${choice} ${electrical} ${mode} ${load(index)}`, (state) => state.motorSeen());
  };
  return {
    nameFor: (index, check) => {
      const { hypothesis } = pieces[index]!;
      const { choice, electrical, water, mode } = kinds[index]!;
      const { predict } = check;
      if (signsOf(hypothesis, check.id).length > 0) return String(index);
      if ('signs' in predict) return 'no sign';
      if ('water' in predict) return `${water} ${drive(index)}`;
      if ('rule' in predict && predict.rule === 'what-is-seen')
        return `${seen(index)} ${water} ${drive(index)}`;
      if (!isPowered(check)) return `${choice} ${electrical}`;
      const moment = 'moment' in predict && predict.moment !== undefined ? ` ${water}` : '';
      return `${choice} ${electrical} ${mode} ${load(index)}${moment}`;
    },
    baseFor: (index, check) => {
      const own = kinds[index]!;
      const { predict } = check;
      if (own.electrical !== SOUND || own.water === SOUND || 'water' in predict) return undefined;
      return bases.get(`${own.choice} ${own.mode}`);
    },
  };
}

interface Kind extends Touched {
  readonly choice: number;
  readonly mode: string;
}

const LOAD_DIGITS = 3;
/** Steps of speed that make no difference to any water reading. */
const SPEED_STEPS = 200;

function kindOf({ hypothesis, stratum, mode }: Piece): Kind {
  return {
    ...touched(hypothesis, stratum),
    choice: hypothesis.choice,
    mode: `${mode.starts} ${mode.releases}`,
  };
}

const isPowered = ({ site, predict }: Check): boolean => site.supply !== 'locked' || 'rule' in predict;

const STEPS = [0, -1.2, 1.2];

function statesOf(piece: Piece): readonly PlantState[] {
  const centre = piece.stateAt('centre', 0);
  return piece.hasSeverity && !piece.isStratum
    ? STEPS.map((step) => (step === 0 ? centre : piece.stateAt('severity', step)))
    : [centre];
}

function driveName(state: PlantState): string {
  const drive = state.drive();
  if (drive === undefined) return 'no water';
  return `${drive.turns} ${drive.always} ${Math.round(drive.speed * SPEED_STEPS)}`;
}
