import { LINE_RADIANS } from '../plant/electrical/line.ts';
import { fields, type Machine, SYNCHRONOUS, torque, turnAt } from '../plant/electrical/motor.ts';

/**
 * What does a motor draw on a stiff line at a shaft power, or at standstill?
 *
 * The motor alone on the volts of its row, red fed from black through its capacitors: what the tables
 * of motor makers print.
 */
export interface Feed {
  readonly volts: number;
  /** Farads between black and red, and the series resistance of each as a share of its reactance. */
  readonly run: number;
  readonly start: number;
  readonly runShare: number;
  readonly startShare: number;
}

export interface Drawn {
  readonly yellow: number;
  readonly black: number;
  readonly red: number;
  readonly watts: number;
  /** Watts at the shaft. */
  readonly shaft: number;
  readonly slip: number;
}

interface Complex {
  readonly re: number;
  readonly im: number;
}
const inverse = ({ re, im }: Complex): Complex => {
  const square = re * re + im * im;
  return { re: re / square, im: -im / square };
};
/** Ohms of a lead that is connected to nothing. */
const OPEN = 1e12;

function seriesOf(feed: Feed): Complex {
  const admittance = (farads: number, share: number): Complex => {
    if (farads === 0) return { re: 0, im: 0 };
    const reactance = 1 / (LINE_RADIANS * farads);
    return inverse({ re: share * reactance, im: -reactance });
  };
  const run = admittance(feed.run, feed.runShare);
  const start = admittance(feed.start, feed.startShare);
  const both = { re: run.re + start.re, im: run.im + start.im };
  return both.im === 0 ? { re: OPEN, im: 0 } : inverse(both);
}

const turned = fields();
const currents = new Float64Array(6);

export function drawnAt(machine: Machine, slip: number, feed: Feed): Drawn {
  const series = seriesOf(feed);
  turnAt(machine, slip, turned);
  const { z } = turned;
  const own = { re: z[6]! + series.re, im: z[7]! + series.im };
  const y = inverse({
    re: z[0]! * own.re - z[1]! * own.im - (z[2]! * z[4]! - z[3]! * z[5]!),
    im: z[0]! * own.im + z[1]! * own.re - (z[2]! * z[5]! + z[3]! * z[4]!),
  });
  const by = (re: number, im: number): Complex => ({
    re: feed.volts * (re * y.re - im * y.im),
    im: feed.volts * (re * y.im + im * y.re),
  });
  const main = by(own.re - z[2]!, own.im - z[3]!);
  const start = by(z[0]! - z[4]!, z[1]! - z[5]!);
  currents.set([main.re, main.im, start.re, start.im]);
  const speed = 1 - slip;
  return {
    yellow: Math.hypot(main.re + start.re, main.im + start.im),
    black: Math.hypot(main.re, main.im),
    red: Math.hypot(start.re, start.im),
    watts: feed.volts * (main.re + start.re),
    shaft: speed * torque(machine, turned, currents) * SYNCHRONOUS - machine.friction * speed * speed,
    slip,
  };
}

const MOST_SLIP = 0.2;
const TRIES = 44;

/** At the slip below the peak of torque that gives a shaft power; at the most slip looked at when none does. */
export function drawnFor(machine: Machine, shaft: number, feed: Feed): Drawn {
  let low = 0;
  let high = MOST_SLIP;
  for (let n = 0; n < TRIES; n++) {
    const middle = (low + high) / 2;
    if (drawnAt(machine, middle, feed).shaft < shaft) low = middle;
    else high = middle;
  }
  return drawnAt(machine, (low + high) / 2, feed);
}
