import type { WaterQuestion } from '../../schema/water.ts';
import { type Asked, running, tapPressure } from './asked.ts';
import { found } from './found.ts';
import { feltBy } from './pressure-switch.ts';
import { secondsEmptying, secondsFilling } from './tank-tests.ts';

/** What is noticed without any instrument, and what two gauges say of each other. */
export function seenAnswer(asked: Asked, question: WaterQuestion): string | undefined {
  const { parts, drive } = asked;
  const { input } = parts;
  switch (question) {
    case 'water-at-tap':
      return waterAtTap(asked);
    case 'stops':
      return { cycles: 'stops', 'runs-on': 'never-stops', 'never-runs': 'never-starts' }[
        found(parts, drive).state
      ];
    case 'cycling':
      return cycling(asked);
    case 'starts-unused':
      return startsUnused(asked) ? 'yes' : 'no';
    case 'relief':
      return found(parts, drive).pressure >= input.relief ? 'wet' : 'dry';
    case 'fills-isolated':
      return fillsIsolated(asked);
    case 'gauge-tells':
      if (parts.gauge.stuck !== undefined) return 'stuck';
      return Math.abs(parts.gauge.offset) > input.gaugesAgree ? 'off' : 'agree';
    case 'tube-tells': {
      const felt = Math.max(0, feltBy(parts.switch, input.switch.cutOut));
      return Math.abs(felt - input.switch.cutOut) > input.gaugesAgree ? 'differs' : 'agree';
    }
    default:
      return undefined;
  }
}

function waterAtTap(asked: Asked): string {
  const { parts } = asked;
  const { house, tank } = parts.input;
  const pressure = found(parts, asked.drive, { open: true, draw: house.usualDraw });
  if (pressure.state === 'never-runs' || parts.closed.has('house')) return 'none';
  const tap = tapPressure(asked);
  if (tap <= 0) return 'none';
  if (tap < house.weakTap) return 'weak';
  return secondsFilling(parts, running(asked).speed, 0) < tank.leastFill / 2 ? 'pulsing' : 'normal';
}

function cycling(asked: Asked): string {
  const { parts, drive } = asked;
  const { house, tank } = parts.input;
  const { state } = found(parts, drive, { open: true, draw: house.usualDraw });
  if (state === 'never-runs') return 'no-starts';
  if (state === 'runs-on') return 'does-not-stop';
  return secondsFilling(parts, running(asked).speed, 0) < tank.leastFill / 2 ? 'rapid' : 'slow';
}

/** Whether it comes on with every tap shut, sooner than a tight system would. */
function startsUnused({ parts, drive }: Asked): boolean {
  if (found(parts, drive).state !== 'cycles') return false;
  return secondsEmptying(parts, 0) < parts.input.tank.leastRest;
}

/** With the house shut off: does it come up to cut-out? */
function fillsIsolated({ parts, drive }: Asked): string {
  const { state, pressure } = found(parts, drive, { open: false, draw: 0 });
  if (state === 'never-runs') return 'never-runs';
  return pressure >= parts.switch.cutOut ? 'fills' : 'still-low';
}
