/**
 * Where does the water stand in a well that is pumped?
 *
 * The well gives in proportion to how far its level is drawn below rest (specific capacity), and the
 * casing stores what stands in it. Both together make the level fall towards its end with one time
 * constant, and come back with the same. Leaves out the slow fall of the ground water round the well
 * and seams that give nothing once they are dry.
 *
 * @source method: Groundwater and Wells, 3rd ed., specific capacity; storage of the casing is ours
 */
export interface Well {
  /** Depths from the well top, metres. */
  readonly staticLevel: number;
  readonly intake: number;
  /** Cubic metres a second for each metre of drawdown. */
  readonly specificCapacity: number;
  /** Cubic metres of water in each metre of casing. */
  readonly storage: number;
}

/**
 * Cubic metres in each metre of a round casing.
 *
 * @param bore metres inside
 * @source law: area of a circle
 */
export const storageOf = (bore: number): number => (Math.PI * bore * bore) / 4;

/** Seconds in which the level goes all but 37 % of its way. */
export const timeConstant = (well: Well): number => well.storage / well.specificCapacity;

/** Share of the final drawdown that is reached; the whole of it for Infinity. */
const reached = (well: Well, seconds: number): number => 1 - Math.exp(-seconds / timeConstant(well));

/** Depth of the water after pumping at a steady flow, as if the intake were bottomless. */
export function pumpingLevel(well: Well, flow: number, seconds: number): number {
  return well.staticLevel + (flow / well.specificCapacity) * reached(well, seconds);
}

/**
 * The steady flow at which the level just reaches the intake after so long; Infinity at the start,
 * nothing when the water rests below the intake.
 */
export function flowToIntake(well: Well, seconds: number): number {
  const room = well.intake - well.staticLevel;
  if (room <= 0) return 0;
  const share = reached(well, seconds);
  return share > 0 ? (room * well.specificCapacity) / share : Infinity;
}

/** Metres a second that the level rises when pumping stops with it at a depth. */
export function recoveryRate(well: Well, level: number): number {
  return Math.max(0, level - well.staticLevel) / timeConstant(well);
}

/** Seconds until a share of the drawdown has come back. */
export const recoveryTime = (well: Well, share: number): number => -timeConstant(well) * Math.log(1 - share);
