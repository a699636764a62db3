import type { WaterParts } from './edits.ts';
import { settledPressure } from './found.ts';
import { calls } from './pressure-switch.ts';
import type { Drive, WaterMoment } from './types.ts';

/** One question to the water side: the parts with their fault, what the motor does, and when it is asked. */
export interface Asked {
  readonly parts: WaterParts;
  readonly drive: Drive;
  readonly moment: WaterMoment;
}

export const running = ({ drive, moment }: Asked) => ({
  speed: drive.turns ? drive.speed : 0,
  seconds: moment.seconds ?? Infinity,
});

export const drawOf = ({ parts, moment }: Asked): number => moment.draw ?? parts.input.house.usualDraw;

/** Pressure while it runs with a tap open, as far as the switch lets it come. */
export function runningPressure(asked: Asked): number {
  const { parts, drive } = asked;
  const settled = settledPressure(parts, running(asked), { open: true, draw: drawOf(asked) });
  return drive.always || calls(parts.switch, settled, true) ? settled : parts.switch.cutOut;
}

/** Gauge pressure less what the house line takes, at a tap that draws. */
export function tapPressure(asked: Asked): number {
  const { parts } = asked;
  if (parts.closed.has('house')) return 0;
  return Math.max(0, runningPressure(asked) - houseLoss(asked));
}

export function houseLoss(asked: Asked): number {
  const { parts } = asked;
  if (parts.closed.has('house')) return 0;
  return parts.houseLoss * (drawOf(asked) / parts.pump.classFlow) ** 2;
}
