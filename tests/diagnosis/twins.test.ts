import { describe, expect, test } from 'vitest';
import { checksOn } from '../../machines/call/applies.ts';
import { type Channel, channelOf } from '../../src/diagnosis/belief/channel.ts';
import { buildModel } from '../../src/diagnosis/belief/model.ts';
import { twinsOf } from '../../src/diagnosis/belief/twins.ts';
import { resolveSystem } from '../../src/diagnosis/system.ts';
import { catalogFrom } from '../../src/proof/content.ts';

/**
 * A prediction that is shared must be the one that the piece would have made by itself. Every check
 * is asked of a spread of pieces both ways.
 */
const built = catalogFrom('content');
if ('problems' in built) throw new Error(`content: ${JSON.stringify(built.problems[0])}`);
const { catalog } = built;

const system = resolveSystem(catalog, {
  box: 'start-and-run-main-overload-in-line',
  motor: '3-wire-1.5hp-230v-start-and-run',
});
const model = buildModel(catalog, system, 'ordinary');
const checks = checksOn(system, Object.values(catalog.checks));
const twins = twinsOf(model.pieces);

/** Far apart in standard deviations of what is predicted, or in the share of some answer. */
function difference(one: Channel, other: Channel): number {
  if (one.kind !== other.kind) return Number.POSITIVE_INFINITY;
  if (one.kind === 'number' && other.kind === 'number') {
    const deviation = Math.hypot(1, ...one.line.slopes);
    const slopes = one.line.slopes.map((slope, axis) => Math.abs(slope - other.line.slopes[axis]!));
    return Math.max(Math.abs(one.line.centre - other.line.centre), ...slopes) / deviation;
  }
  if (one.kind === 'answers' && other.kind === 'answers') {
    const answers = Object.keys({ ...one.probability, ...other.probability });
    return Math.max(
      ...answers.map((answer) => Math.abs((one.probability[answer] ?? 0) - (other.probability[answer] ?? 0))),
    );
  }
  return 0;
}

describe('shared predictions', () => {
  test.each(checks.map((check) => [check.id, check] as const))('%s', (_, check) => {
    const seen = new Map<string, Channel>();
    for (let piece = 0; piece < model.pieces.length; piece += 7) {
      const name = twins.nameFor(piece, check);
      const own = channelOf(catalog, check, { piece: model.pieces[piece]!, meter: 'ordinary' });
      const first = seen.get(name) ?? own;
      seen.set(name, first);
      expect(
        { piece: model.pieces[piece]!.hypothesis.fault.id, off: difference(first, own) < 0.2 },
        `${check.id} of ${name}`,
      ).toEqual({ piece: model.pieces[piece]!.hypothesis.fault.id, off: true });
    }
  });

  test('pieces that differ are not twins', () => {
    const check = catalog.checks['ohms-yellow-black']!;
    const open = model.pieces.findIndex(({ hypothesis }) => hypothesis.fault.id === 'winding-main-open');
    const sound = model.pieces.findIndex(({ hypothesis }) => hypothesis.fault.id === 'nothing-wrong');
    expect(twins.nameFor(open, check)).not.toBe(twins.nameFor(sound, check));
  });
});
