import type { Truth } from './truth.ts';

/** Sites of our own, each with one thing wrong. */
const cables: Truth['installation'] = {
  supply: { volts: [240, 'V'] },
  buried: { conductor: 'copper-12', length: [60, 'ft'] },
  drop: { conductor: 'copper-12', length: [180, 'ft'] },
};

const twoWire: Truth['installation'] = {
  ...cables,
  family: 'no-box',
  box: 'none-2-wire',
  leads: '2-wire',
  power: [0.75, 'hp'],
};
const startOnly: Truth['installation'] = {
  ...cables,
  family: 'start-only',
  box: 'start-only-current-relay',
  leads: '3-wire',
  power: [1, 'hp'],
};
const overloadInLine: Truth['installation'] = {
  ...cables,
  family: 'start-and-run',
  box: 'start-and-run-main-overload-in-line',
  leads: '3-wire',
  power: [1.5, 'hp'],
};
const contactor: Truth['installation'] = {
  ...cables,
  family: 'contactor',
  box: 'contactor-loop-fed-from-l2',
  leads: '3-wire',
  power: [3, 'hp'],
};

export const TRUTHS = {
  oneSwitchPole: { installation: twoWire, fault: 'switch-pole-open', variant: 'pole-2' },
  startCapacitor: { installation: startOnly, fault: 'start-capacitor-open', variant: 'open' },
  contactorCoil: { installation: contactor, fault: 'contactor-coil-open', variant: 'open' },
  loopWire: {
    installation: contactor,
    fault: 'loop-wire-open',
    variant: 'wire-back',
    seen: { 'loop-devices': 'none' },
  },
  mainOverload: { installation: overloadInLine, fault: 'main-overload-tripped', variant: 'open' },
  yellowSplice: { installation: overloadInLine, fault: 'wellhead-splice-open', variant: 'yellow' },
  tornTank: { installation: twoWire, fault: 'tank-waterlogged', variant: 'torn', severity: 0.08 },
  holeInThePipe: { installation: startOnly, fault: 'drop-pipe-hole', variant: 'upper', severity: 1.8e-4 },
  weakWell: { installation: contactor, fault: 'well-yield-low', variant: 'yield', severity: 0.07 },
  shutValve: { installation: overloadInLine, fault: 'house-valve-shut', variant: 'shut' },
  startWinding: { installation: overloadInLine, fault: 'winding-start-open', variant: 'start' },
} as const satisfies Record<string, Truth>;
