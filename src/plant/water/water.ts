import type { WaterQuestion } from '../../schema/water.ts';
import { type Asked, drawOf, houseLoss, running, runningPressure, tapPressure } from './asked.ts';
import { applyWaterEdits, type WaterParts } from './edits.ts';
import { found, plunges } from './found.ts';
import { deadHead, deliver } from './operate.ts';
import { calls, feltBy } from './pressure-switch.ts';
import { drawsAir } from './rest.ts';
import { seenAnswer } from './seen.ts';
import { drawdownSeen, leakDown, secondsEmptying, secondsFilling } from './tank-tests.ts';
import {
  type Drive,
  type WaterInjection,
  type WaterInput,
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
      let usual: number | undefined;
      return {
        read: (question, moment = {}) => answer({ parts, drive, moment }, question),
        load: (moment) => {
          if (moment !== undefined && Object.keys(moment).length > 0)
            return shaftLoad({ parts, drive, moment });
          usual ??= shaftLoad({ parts, drive, moment: {} });
          return usual;
        },
      };
    },
  };
}

const value = (number: number): WaterReading =>
  Number.isFinite(number) ? { kind: 'value', value: number } : { kind: 'never' };
const said = (text: string): WaterReading => ({ kind: 'answer', answer: text });

/** Through the gauge as it is: stuck, or off by a little. */
function shown({ parts }: Asked, pressure: number): WaterReading {
  const { stuck, offset } = parts.gauge;
  return value(stuck ?? Math.max(0, pressure + offset));
}

/** At the usual time of a reading unless another is named: a weak well starves its pump later. */
function shaftLoad(of: Asked): number {
  const moment = { ...of.moment, seconds: of.moment.seconds ?? of.parts.input.readAfter };
  const asked = { ...of, moment };
  const { parts } = asked;
  if (moment.shut === true)
    return deliver({ ...parts, closed: new Set([...parts.closed, 'line']) }, 0, running(asked)).load;
  return deliver(parts, moment.pressure ?? runningPressure(asked), running(asked)).load;
}

function answer(asked: Asked, question: WaterQuestion): WaterReading {
  return (
    pressureAnswer(asked, question) ??
    flowAnswer(asked, question) ??
    levelAnswer(asked, question) ??
    partAnswer(asked, question) ??
    seenReading(asked, question) ?? { kind: 'none', reason: 'not-a-water-reading' }
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
    case 'bottom-tells':
      return said(parts.input.well.depth - parts.bottom > FALLEN_IN ? 'shallower' : 'as-logged');
    default:
      return undefined;
  }
}

/** Metres of sediment that a weighted tape tells from a slack tape. */
const FALLEN_IN = 0.6;

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
      return said(
        zone(parts, shown(asked, found(parts, drive, { open: true, draw: drawOf(asked) }).pressure)),
      );
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
  if (reading.value < input.switch.cutIn - input.gaugesAgree) return 'below-cut-in';
  return reading.value > input.switch.cutOut + input.gaugesAgree ? 'above-cut-out' : 'between';
}
/** A needle this close to its pin, as a share of cut-in, is at zero. */
const ZERO_ON_GAUGE = 0.05;

function discharge(asked: Asked): string {
  const { parts } = asked;
  const out = deliver(parts, 0, running(asked));
  if (out.gained <= 0) return 'none';
  return out.air || parts.gas > 0 ? 'air' : 'clear';
}

function seenReading(asked: Asked, question: WaterQuestion): WaterReading | undefined {
  const answered = seenAnswer(asked, question);
  return answered === undefined ? undefined : said(answered);
}
