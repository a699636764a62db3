import type { Motor, MotorModel } from '../../schema/motor.ts';
import type { LayoutPart } from '../layout.ts';
import { LINE_RADIANS } from './line.ts';
import { fields, machineOf, soundWindings, turnAt } from './motor.ts';

/**
 * By what factor does the model miss the published row of its own motor?
 *
 * A healthy motor must show what its table prints, so every running current is the model's times
 * published over model, lead by lead, at the load it runs at (between the two printed loads in
 * proportion, outside them at the nearer). A fault then shows published × faulty model ÷ healthy
 * model. Where the healthy model carries next to nothing there is nothing to divide by: factor one.
 */
export interface Anchors {
  /** Factor at a load, as a share of full-load torque. */
  factor(of: AnchorKind, load: number): number;
}

export type AnchorKind = 'yellow' | 'black' | 'red' | 'watts' | 'none';

/** Amps below which a lead is not anchored. */
const LEAST_AMPS = 0.5;

type Row = Readonly<Record<'yellow' | 'black' | 'red' | 'watts', number | undefined>>;
interface Point {
  readonly load: number;
  readonly factors: Row;
}

const ONE: Anchors = { factor: () => 1 };

export function anchorsOf(motor: Motor, model: MotorModel | undefined, seriesShare: number): Anchors {
  if (model === undefined) return ONE;
  const points: Point[] = [];
  const point = (load: Motor['fullLoad'], at: MotorModel['fullLoad']): void => {
    const published = publishedRow(load);
    if (published === undefined) return;
    const modelled = healthyRow(model, { volts: motor.volts, slip: at.slip, seriesShare });
    points.push({ load: at.torque / model.fullLoad.torque, factors: ratios(published, modelled) });
  };
  point(motor.fullLoad, model.fullLoad);
  point(motor.serviceFactorLoad, model.serviceFactorLoad);
  return { factor: (of, load) => (of === 'none' ? 1 : between(points, of, load)) };
}

function publishedRow(load: Motor['fullLoad']): Row | undefined {
  if (load === undefined) return undefined;
  const { amps, watts } = load;
  return 'line' in amps
    ? { yellow: amps.line, black: amps.line, red: undefined, watts }
    : { yellow: amps.yellow, black: amps.black, red: amps.red, watts };
}

/**
 * Currents and watts of a sound motor at rated volts on its own run capacitor and stiff supply.
 * Without one the red lead is open.
 */
export function healthyRow(
  model: MotorModel,
  at: { readonly volts: number; readonly slip: number; readonly seriesShare: number },
): Record<'yellow' | 'black' | 'red' | 'watts', number> {
  const turned = fields();
  turnAt(machineOf(model, soundWindings(model)), at.slip, turned);
  const { z } = turned;
  const farads = model.runCapacitor ?? 0;
  if (farads === 0) return mainOnly(at.volts, z[0]!, z[1]!);
  const reactance = 1 / (LINE_RADIANS * farads);
  const sr = z[6]! + at.seriesShare * reactance;
  const si = z[7]! - reactance;
  const detRe = z[0]! * sr - z[1]! * si - (z[2]! * z[4]! - z[3]! * z[5]!);
  const detIm = z[0]! * si + z[1]! * sr - (z[2]! * z[5]! + z[3]! * z[4]!);
  const scale = at.volts / (detRe * detRe + detIm * detIm);
  const over = (re: number, im: number) => ({
    re: (re * detRe + im * detIm) * scale,
    im: (im * detRe - re * detIm) * scale,
  });
  const main = over(sr - z[2]!, si - z[3]!);
  const start = over(z[0]! - z[4]!, z[1]! - z[5]!);
  return {
    yellow: Math.hypot(main.re + start.re, main.im + start.im),
    black: Math.hypot(main.re, main.im),
    red: Math.hypot(start.re, start.im),
    watts: at.volts * (main.re + start.re),
  };
}

function mainOnly(
  volts: number,
  re: number,
  im: number,
): Record<'yellow' | 'black' | 'red' | 'watts', number> {
  const square = re * re + im * im;
  const amps = volts / Math.sqrt(square);
  return { yellow: amps, black: amps, red: 0, watts: (volts * volts * re) / square };
}

function ratios(published: Row, modelled: Record<'yellow' | 'black' | 'red' | 'watts', number>): Row {
  const amps = (lead: 'yellow' | 'black' | 'red'): number | undefined => {
    const printed = published[lead];
    if (printed === undefined || printed <= 0 || modelled[lead] < LEAST_AMPS) return undefined;
    return printed / modelled[lead];
  };
  const watts = published.watts === undefined ? undefined : published.watts / modelled.watts;
  return { yellow: amps('yellow'), black: amps('black'), red: amps('red'), watts };
}

function between(points: readonly Point[], of: keyof Row, load: number): number {
  const known = points.filter((point) => point.factors[of] !== undefined);
  const low = known[0];
  const high = known[known.length - 1];
  if (low === undefined || high === undefined) return 1;
  if (low === high || load <= low.load) return low.factors[of]!;
  if (load >= high.load) return high.factors[of]!;
  const share = (load - low.load) / (high.load - low.load);
  return low.factors[of]! + share * (high.factors[of]! - low.factors[of]!);
}

/** Which printed current a part carries in a sound installation: its lead's, or the line's. */
export function anchorKind(part: LayoutPart): AnchorKind {
  switch (part.lead) {
    case 'yellow':
    case 'black':
    case 'red':
      return part.lead;
    case 'one':
    case 'two':
      return 'yellow';
    default:
      return isLine(part) ? 'yellow' : 'none';
  }
}

/** Ahead of the box every conductor carries the line current, which is the common lead's. */
const isLine = (part: LayoutPart): boolean =>
  ['service.', 'panel.', 'switch.'].some((place) => part.id.startsWith(place)) && part.kind !== 'earth';
