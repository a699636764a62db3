import { describe, expect, test } from 'vitest';
import { headOf, pressureOf, waterPower } from '../../src/plant/water/column.ts';
import { frictionHead, velocity } from '../../src/plant/water/pipe.ts';
import { deadHeadColumn, type PumpEnd, pumpHead, shaftShare } from '../../src/plant/water/pump.ts';
import { storageOf } from '../../src/plant/water/well.ts';
import { inUnit, of, type Quantity } from '../../src/units/units.ts';

const feet = (metres: number): number => inUnit(metres as Quantity<'length'>, 'ft');
const psi = (pascals: number): number => inUnit(pascals as Quantity<'pressure'>, 'psi');

/** Agrees to a share of the printed value. */
const near = (got: number, printed: number, share: number): void =>
  expect(Math.abs(got / printed - 1)).toBeLessThanOrEqual(share);

describe('pressure and head', () => {
  test.each([
    // Source: irrigation-extension, 1 psi = 2.31 ft and its multiples
    [1, 2.31],
    [20, 46.2],
    [30, 69.3],
    [40, 92.4],
    [50, 115.5],
    [60, 138.6],
  ])('%d psi is %d ft', (pressure, height) => {
    near(feet(headOf(of(pressure, 'psi'))), height, 0.002);
  });

  test('one atmosphere is 33.9 ft', () => {
    // Source: irrigation-extension, 14.7 psi
    near(feet(headOf(of(14.7, 'psi'))), 33.9, 0.002);
  });

  test('lift, elevation, friction and pressure add up', () => {
    // Source: irrigation-extension: 150 + 10 + 12 ft and 50 psi = 287.5 ft
    near(150 + 10 + 12 + feet(headOf(of(50, 'psi'))), 287.5, 0.001);
  });

  test('400 ft of shut-off over a level at 150 ft is 108.2 psi', () => {
    // Source: irrigation-extension, (400 − 150) / 2.31
    const column = deadHeadColumn({ shutOffHead: of(400, 'ft'), level: of(150, 'ft'), gaugeHeight: 0 });
    near(psi(pressureOf(column)), 108.2, 0.002);
  });
});

describe('power of water', () => {
  const ten = of(10, 'gpm');
  const watts = (head: number): number => waterPower(ten, head);

  test('10 gpm at 200 ft is 0.505 hp, and 685 W at the shaft of a pump of 55 %', () => {
    // Source: pump-power-course, gpm · ft / 3960
    near(watts(of(200, 'ft')) / of(1, 'hp'), 0.505, 0.003);
    near(watts(of(200, 'ft')) / 0.55, 685, 0.003);
  });

  test('the constant is 3956 gpm · ft per hp', () => {
    // Source: irrigation-lectures, from 62.4 lb/ft³; ours is 1000 kg/m³ and standard gravity
    near(of(1, 'hp') / waterPower(of(1, 'gpm'), of(1, 'ft')), 3956, 0.001);
  });

  test('10 gpm at 86.58 psi and 55 % is 0.918 hp', () => {
    // Source: pump-formula-sheet, gpm · psi / 1714
    near(watts(headOf(of(86.58, 'psi'))) / 0.55 / of(1, 'hp'), 0.918, 0.003);
  });
});

describe('friction', () => {
  test.each([
    // Source: pipe-friction-page, its worked example and its formula; inches, gpm, ft per 100 ft
    { flow: 200, bore: 3.048, smoothness: 140, lost: 9.007 },
    { flow: 10, bore: 1.049, smoothness: 100, lost: 11.738 },
    { flow: 10, bore: 1.049, smoothness: 140, lost: 6.295 },
    { flow: 10, bore: 1.38, smoothness: 140, lost: 1.658 },
    { flow: 5, bore: 1.049, smoothness: 140, lost: 1.744 },
  ])('$flow gpm in $bore in at $smoothness', ({ flow, bore, smoothness, lost }) => {
    const pipe = { bore: of(bore, 'in'), length: of(100, 'ft'), smoothness };
    near(feet(frictionHead(pipe, of(flow, 'gpm'))), lost, 0.005);
  });

  test('30 ft of it', () => {
    // Source: pipe-friction-page, 2.7 ft
    const pipe = { bore: of(3.048, 'in'), length: of(30, 'ft'), smoothness: 140 };
    near(feet(frictionHead(pipe, of(200, 'gpm'))), 2.7, 0.005);
  });

  test('200 gpm in 3.048 in runs at 8.8 ft/s', () => {
    // Source: pipe-friction-page
    near(feet(velocity(of(3.048, 'in'), of(200, 'gpm'))), 8.799, 0.002);
  });
});

describe('affinity laws', () => {
  const pump: PumpEnd = {
    classFlow: 1,
    classHead: 70,
    shutOffHead: 100,
    openFlow: 1.6,
    peakLoadFlow: 1.2,
    deadHeadLoad: 0.6,
    dryLoad: 0.3,
    headFactor: 1,
    flowFactor: 1,
  };

  test.each([
    // Source: affinity-digest: flow as speed, head as its square, power as its cube
    { speed: 1.1, flow: 1.1, head: 1.21, power: 1.331 },
    { speed: 3100 / 3450, flow: 0.8986, head: 0.8074, power: 0.7255 },
    { speed: 1750 / 1170, flow: 1.4957, head: 2.237, power: 3.346 },
  ])('at $speed of the speed', ({ speed, flow, head, power }) => {
    near(pumpHead(pump, flow, speed) / pumpHead(pump, 1, 1), head, 0.002);
    // The share is of torque at that speed: with speed squared it is torque, with the cube power.
    near((shaftShare(pump, flow, speed) * speed ** 3) / shaftShare(pump, 1, 1), power, 0.002);
  });
});

describe('casing', () => {
  test.each([
    // Source: casing-volume-sheet, gallons in each foot by inches of casing
    [2, 0.16],
    [4, 0.65],
    [5, 1.02],
    [6, 1.47],
    [8, 2.61],
    [10, 4.08],
    [12, 5.88],
  ])('%d in holds %d gal/ft', (bore, printed) => {
    const each = (storageOf(of(bore, 'in')) * of(1, 'ft')) as Quantity<'volume'>;
    expect(Math.abs(inUnit(each, 'gal') - printed)).toBeLessThanOrEqual(0.006);
  });
});
