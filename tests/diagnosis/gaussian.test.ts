import { describe, expect, test } from 'vitest';
import { observe, observeOver, onSide, standard } from '../../src/diagnosis/belief/gaussian.ts';
import { below, truncated } from '../../src/diagnosis/belief/normal.ts';
import { fromScale, toScale } from '../../src/diagnosis/belief/scale.ts';

const OHMS = { relative: 0.02, absolute: 0.1 };
const MISREADING = 0.004;

describe('the common scale', () => {
  test('asinh(r v / a) / r, by hand for 2.8, 3.4049 and 3.2 ohm', () => {
    // asinh(0.02 * 2.8 / 0.1) / 0.02 = asinh(0.56) / 0.02
    expect(toScale(2.8, OHMS)).toBeCloseTo(26.7112, 4);
    expect(toScale(3.4049, OHMS)).toBeCloseTo(31.8508, 4);
    expect(toScale(3.2, OHMS)).toBeCloseTo(30.141, 4);
  });
  test('goes back to the value it came from', () => {
    for (const value of [0, 0.02, 5, 4e3, 1e9])
      expect(fromScale(toScale(value, OHMS), OHMS)).toBeCloseTo(value, 5);
  });
});

describe('a reading moves a Gaussian', () => {
  // Sound: yellow-black 2.8 ohm. Splice in black: 0.6049 more. Slopes: main ohms, buried, drop, temperature.
  const slopes = Float64Array.from([0.9949, 0.6607, 1.0529, 0.7329]);
  const sound = { centre: toScale(2.8, OHMS), slopes };
  const splice = { centre: toScale(3.4049, OHMS), slopes };
  const z = toScale(3.2, OHMS);

  test('two faults, one reading: P(sound) = 0.25264 from equal priors', () => {
    const one = observe(standard(4), sound, { z, misreading: MISREADING });
    const other = observe(standard(4), splice, { z, misreading: MISREADING });
    expect(Math.exp(one.logLikelihood)).toBeCloseTo(0.0465128, 5);
    expect(Math.exp(other.logLikelihood)).toBeCloseTo(0.1375916, 5);
    const share = Math.exp(one.logLikelihood) / (Math.exp(one.logLikelihood) + Math.exp(other.logLikelihood));
    expect(share).toBeCloseTo(0.25264, 4);
  });

  test('without unknowns the same reading would be twenty times too sure', () => {
    const none = Float64Array.from([0]);
    const likelihood = (centre: number) =>
      Math.exp(observe(standard(1), { centre, slopes: none }, { z, misreading: 0 }).logLikelihood);
    const share = likelihood(sound.centre) / (likelihood(sound.centre) + likelihood(splice.centre));
    expect(share).toBeCloseTo(0.01189, 4);
  });

  test('main ohms learn from it: mean 0.838, variance 0.757 when the reading is trusted', () => {
    const { gaussian } = observe(standard(4), sound, { z, misreading: 0 });
    expect(gaussian.mean[0]).toBeCloseTo(0.838, 3);
    expect(gaussian.covariance[0]).toBeCloseTo(0.7569, 3);
  });

  test('a cause shared by two readings counts once: P(H1) = 0.81757, not 0.28905', () => {
    const shared = Float64Array.from([2]);
    const read = { z: 3, misreading: 0 };
    const total = (first: number, second: number) => {
      const one = observe(standard(1), { centre: first, slopes: shared }, read);
      const two = observe(one.gaussian, { centre: second, slopes: shared }, read);
      return { log: one.logLikelihood + two.logLikelihood, gaussian: two.gaussian };
    };
    const h1 = total(0, 0);
    const h2 = total(3, 0);
    expect(h1.log).toBeCloseTo(-3.93649, 4);
    expect(h2.log).toBeCloseTo(-5.43649, 4);
    expect(Math.exp(h1.log) / (Math.exp(h1.log) + Math.exp(h2.log))).toBeCloseTo(0.81757, 4);
    expect(h1.gaussian.mean[0]).toBeCloseTo(1.3333, 3);
    expect(h1.gaussian.covariance[0]).toBeCloseTo(0.1111, 3);
  });

  test('an open reading costs a closed winding ln(0.3 e) and an open lead next to nothing', () => {
    const top = toScale(1e6, OHMS);
    const none = Float64Array.from([0]);
    const closed = observeOver(
      standard(1),
      { centre: toScale(9.25, OHMS), slopes: none },
      { top, misreading: MISREADING },
    );
    const open = observeOver(
      standard(1),
      { centre: toScale(1e9, OHMS), slopes: none },
      { top, misreading: MISREADING },
    );
    expect(closed.logLikelihood).toBeCloseTo(-6.73, 2);
    expect(open.logLikelihood).toBeCloseTo(-0.004, 2);
  });
});

describe('the mode of the plant conditions what is unknown', () => {
  test('mean and variance of a half normal: ±0.7979 and 0.3634', () => {
    const margin = { centre: 0, slopes: Float64Array.from([1]) };
    const up = onSide(standard(1), margin, true);
    expect(up.share).toBeCloseTo(0.5, 6);
    expect(up.gaussian.mean[0]).toBeCloseTo(Math.sqrt(2 / Math.PI), 5);
    expect(up.gaussian.covariance[0]).toBeCloseTo(1 - 2 / Math.PI, 5);
    expect(onSide(standard(1), margin, false).gaussian.mean[0]).toBeCloseTo(-Math.sqrt(2 / Math.PI), 5);
  });
  test('shares of both sides sum to one', () => {
    for (const alpha of [-3, -0.4, 0, 1.7]) {
      expect(truncated(alpha, true).share + truncated(alpha, false).share).toBeCloseTo(1, 6);
    }
    expect(below(1.96)).toBeCloseTo(0.975, 4);
  });
});
