import type { Range } from '../../../units/units.ts';
import type { PlantInput } from '../../types.ts';
import type { ElementContext, Impedance, Standing } from './impedance.ts';

type Winding = 'winding-main' | 'winding-start';

/**
 * A winding as one part: to an ohmmeter its cold ohms. At line frequency a modelled motor is a port
 * and has no part of its own; a row without a model is taken as the plain resistance that draws its
 * printed full-load amps, good enough for which nodes are alive.
 */
export function windingImpedance(winding: Standing<Winding>, context: ElementContext): Impedance {
  const dc = windingOhms(winding, context);
  const { model, motor } = context.input;
  const amps = motor.fullLoad?.amps ?? motor.serviceFactorLoad?.amps;
  if (model !== undefined || amps === undefined) return { re: Infinity, im: 0, dc };
  const drawn = 'line' in amps ? amps.line : amps.black;
  const asMain = soundWindingOhms('winding-main', context);
  return { re: asMain > 0 && drawn > 0 ? ((motor.volts / drawn) * dc) / asMain : Infinity, im: 0, dc };
}

/**
 * What a cold winding shows an ohmmeter. `scale` is the share of its turns that still work: the rest
 * is bridged by the touching spot, so the reading falls by nearly their share.
 */
function windingOhms({ kind, element, scale }: Standing<Winding>, context: ElementContext): number {
  const whole = soundWindingOhms(kind, context);
  const shorted = Math.min(1, Math.max(0, 1 - scale));
  if (shorted === 0) return whole;
  const bridged = whole * shorted;
  const spot = element.turnShort ?? 0;
  return whole - bridged + (bridged * spot) / (bridged + spot);
}

/**
 * Cold ohms of a sound winding: the middle of the printed range, else what the model was fitted with.
 *
 * @throws when the motor's row has neither a model nor windings: no reading could be worked out
 */
export function soundWindingOhms(kind: Winding, context: ElementContext): number {
  const { input, conditions } = context;
  return kind === 'winding-main'
    ? nominalMain(input) * conditions.mainOhms
    : nominalStart(input) * conditions.startOhms;
}

function nominalMain({ motor, model }: PlantInput): number {
  const { winding } = motor;
  if (winding !== undefined) return middle('main' in winding ? winding.main : winding.lineToLine);
  return model?.coldMain ?? missing(motor);
}

/** A two-lead motor prints no start winding: without a model it is taken like the main one. */
function nominalStart({ motor, model }: PlantInput): number {
  const { winding } = motor;
  if (winding !== undefined && 'start' in winding) return middle(winding.start);
  if (model !== undefined) return model.coldStart;
  return winding === undefined ? missing(motor) : middle(winding.lineToLine);
}

const middle = ({ low, high }: Range): number => (low + high) / 2;

function missing(motor: PlantInput['motor']): never {
  throw new Error(`plant: motor ${motor.id} has neither a model nor windings; add one to its row`);
}
