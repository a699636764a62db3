import type { WaterQuestion } from '../../schema/water.ts';
import { applyWaterEdits, type WaterParts } from './edits.ts';
import { found, plunges, settledPressure } from './found.ts';
import { deadHead, deliver } from './operate.ts';
import { calls, feltBy } from './pressure-switch.ts';
import { drawsAir } from './rest.ts';
import { drawdownSeen, leakDown, secondsEmptying, secondsFilling } from './tank-tests.ts';
import {
  type Drive,
  type WaterInjection,
  type WaterInput,
  type WaterMoment,
  type WaterPlant,
  type WaterReading,
  type WaterState,
  WILLING,
} from './types.ts';
import { recoveryRate } from './well.ts';

/**
 * What would this water system show on its gauge, in a bucket, or on a sounder, sound or faulty?
 *
 * The public door of the water side: pure, in SI, quasi-steady. Every answer is a closed formula or a
 * loop of at most two hundred steps when it is asked for; nothing is stepped through time and nothing
 * is remembered.
 *
 * @throws when an edit needs a severity that the injection lacks
 */
export function setUpWater(input: WaterInput): WaterPlant {
  return {
    state(injection: WaterInjection, drive: Drive = WILLING): WaterState {
      const parts = applyWaterEdits(input, injection);
      return {
        read: (question, moment = {}) => answer({ parts, drive, moment }, question),
        load: (moment = {}) => shaftLoad({ parts, drive, moment }),
      };
    },
  };
}

interface Asked {
  readonly parts: WaterParts;
  readonly drive: Drive;
  readonly moment: WaterMoment;
}

const value = (number: number): WaterReading =>
  Number.isFinite(number) ? { kind: 'value', value: number } : { kind: 'never' };
const said = (text: string): WaterReading => ({ kind: 'answer', answer: text });

/** Through the gauge as it is: stuck, or off by a little. */
function shown({ parts }: Asked, pressure: number): WaterReading {
  const { stuck, offset } = parts.gauge;
  return value(stuck ?? Math.max(0, pressure + offset));
}

const running = ({ drive, moment }: Asked) => ({
  speed: drive.turns ? drive.speed : 0,
  seconds: moment.seconds ?? Infinity,
});

const drawOf = ({ parts, moment }: Asked): number => moment.draw ?? parts.input.house.usualDraw;

/** Pressure while it runs with a tap open, as far as the switch lets it come. */
function runningPressure(asked: Asked): number {
  const { parts, drive } = asked;
  const settled = settledPressure(parts, running(asked), { open: true, draw: drawOf(asked) });
  return drive.always || calls(parts.switch, settled, true) ? settled : parts.switch.cutOut;
}

function shaftLoad(asked: Asked): number {
  const { parts, moment } = asked;
  return deliver(parts, moment.pressure ?? runningPressure(asked), running(asked)).load;
}

function answer(asked: Asked, question: WaterQuestion): WaterReading {
  return (
    pressureAnswer(asked, question) ??
    flowAnswer(asked, question) ??
    levelAnswer(asked, question) ??
    partAnswer(asked, question) ?? { kind: 'none', reason: 'not-a-water-reading' }
  );
}

function pressureAnswer(asked: Asked, question: WaterQuestion): WaterReading | undefined {
  const { parts, drive } = asked;
  switch (question) {
    case 'gauge-at-rest':
      return shown(asked, found(parts, drive).pressure);
    case 'gauge-running':
      return drive.turns ? shown(asked, runningPressure(asked)) : { kind: 'never' };
    case 'plateau': {
      const at = found(parts, drive, { open: true, draw: asked.moment.draw ?? 0 });
      return at.state === 'never-runs' ? { kind: 'never' } : shown(asked, at.pressure);
    }
    case 'cut-in': {
      const comes = drive.turns && found(parts, drive).state === 'cycles';
      return comes ? shown(asked, plunges(parts) ? 0 : parts.switch.cutIn) : { kind: 'never' };
    }
    case 'cut-out':
      return found(parts, drive).state === 'cycles' ? shown(asked, parts.switch.cutOut) : { kind: 'never' };
    case 'dead-head':
      return shown(asked, deadHead(parts, running(asked).speed));
    case 'tap-pressure':
      return value(tapPressure(asked));
    default:
      return undefined;
  }
}

/** Gauge pressure less what the house line takes, at a tap that draws. */
function tapPressure(asked: Asked): number {
  const { parts } = asked;
  if (parts.closed.has('house')) return 0;
  return Math.max(0, runningPressure(asked) - houseLoss(asked));
}

function houseLoss(asked: Asked): number {
  const { parts } = asked;
  if (parts.closed.has('house')) return 0;
  return parts.houseLoss * (drawOf(asked) / parts.pump.classFlow) ** 2;
}

function flowAnswer(asked: Asked, question: WaterQuestion): WaterReading | undefined {
  const { parts, moment } = asked;
  switch (question) {
    case 'flow-at-pressure':
      return value(Math.max(0, deliver(parts, moment.pressure ?? parts.switch.cutIn, running(asked)).gained));
    case 'open-discharge':
      return value(Math.max(0, deliver(parts, 0, running(asked)).gained));
    case 'fill-time':
      return value(secondsFilling(parts, running(asked).speed, moment.draw ?? 0));
    case 'cycle-on':
      return value(secondsFilling(parts, running(asked).speed, drawOf(asked)));
    case 'cycle-off':
      return value(secondsEmptying(parts, drawOf(asked)));
    case 'drawdown':
      return value(drawdownSeen(parts));
    case 'leak-down-isolated':
      return value(leakDown(parts, { ...moment, open: false }));
    case 'leak-down-open':
      return value(leakDown(parts, { ...moment, open: true }));
    case 'filter-drop':
      return value(houseLoss(asked));
    default:
      return undefined;
  }
}

function levelAnswer(asked: Asked, question: WaterQuestion): WaterReading | undefined {
  const { parts } = asked;
  const pumped = (): number => deliver(parts, runningPressure(asked), running(asked)).level;
  switch (question) {
    case 'static-level':
      return value(parts.well.staticLevel);
    case 'pumping-level':
      return value(pumped());
    case 'recovery-rate':
      return value(recoveryRate(parts.well, pumped()));
    case 'total-depth':
      return value(parts.bottom);
    default:
      return undefined;
  }
}

function partAnswer(asked: Asked, question: WaterQuestion): WaterReading | undefined {
  const { parts, drive, moment } = asked;
  const { cutOut } = parts.switch;
  switch (question) {
    case 'precharge':
      return value(parts.waterAtAirValve ? 0 : parts.tank.precharge);
    case 'gauge-error':
      return value((parts.gauge.stuck ?? cutOut + parts.gauge.offset) - cutOut);
    case 'tube-error':
      return value(Math.max(0, feltBy(parts.switch, cutOut)) - cutOut);
    case 'air-valve':
      return said(parts.waterAtAirValve ? 'water' : 'air');
    case 'gauge-zone':
      return said(zone(parts, shown(asked, found(parts, drive).pressure)));
    case 'discharge':
      return said(discharge(asked));
    case 'first-draw':
      return said(
        drawsAir(parts, { seconds: moment.seconds ?? Infinity, off: moment.off ?? !drive.turns })
          ? 'air'
          : 'none',
      );
    case 'switch-tells':
      return said(calls(parts.switch, moment.pressure ?? 0, false) ? 'calls' : 'satisfied');
    default:
      return undefined;
  }
}

/** Where the needle stands between the settings that the switch was bought with. */
function zone({ input }: WaterParts, reading: WaterReading): string {
  if (reading.kind !== 'value' || reading.value <= ZERO_ON_GAUGE * input.switch.cutIn) return 'zero';
  if (reading.value < input.switch.cutIn) return 'below-cut-in';
  return reading.value > input.switch.cutOut ? 'above-cut-out' : 'between';
}
/** A needle this close to its pin, as a share of cut-in, is at zero. */
const ZERO_ON_GAUGE = 0.05;

function discharge(asked: Asked): string {
  const { parts } = asked;
  const out = deliver(parts, 0, running(asked));
  if (out.gained <= 0) return 'none';
  return out.air || parts.gas > 0 ? 'air' : 'clear';
}
