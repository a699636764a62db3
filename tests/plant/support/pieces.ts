import type { Netlist, Part, PartKind, Sheet } from '../../../src/schema/netlist.ts';

/**
 * Small netlists for the tests of the plant: the same nodes and parts as the content's, no drawing.
 */
type Line = readonly [id: string, kind: PartKind, from: string, to: string, lead?: Part['lead']];

export function piece(id: string, sheet: Sheet, lines: readonly Line[]): Netlist {
  return {
    id,
    sheet,
    size: [1, 1],
    terminals: [],
    parts: lines.map(([part, kind, from, to, lead]) => ({
      id: part,
      kind,
      between: [from, to],
      ...(lead === undefined ? {} : { lead }),
    })),
    from: [{ source: 'service-judgement', where: 'test', mark: 'practice' }],
  };
}

export const service = piece('service', 'service', [
  ['service.leg-1', 'source', 'service.N', 'service.L1'],
  ['service.leg-2', 'source', 'service.N', 'service.L2'],
  ['service.bond', 'earth', 'service.N', 'service.G', 'ground'],
]);

export const panel = piece('panel', 'panel', [
  ['panel.breaker-1', 'breaker-pole', 'service.L1', 'panel.T1'],
  ['panel.breaker-2', 'breaker-pole', 'service.L2', 'panel.T2'],
  ['panel.disconnect-1', 'disconnect-pole', 'panel.T1', 'panel.D1'],
  ['panel.disconnect-2', 'disconnect-pole', 'panel.T2', 'panel.D2'],
  ['panel.ground', 'earth', 'service.G', 'panel.G', 'ground'],
]);

export const switchInPath = piece('switch-in-path', 'switch', [
  ['switch.wire-1', 'wire', 'panel.D1', 'switch.L1'],
  ['switch.wire-2', 'wire', 'panel.D2', 'switch.L2'],
  ['switch.pole-1', 'switch-pole', 'switch.L1', 'switch.T1'],
  ['switch.pole-2', 'switch-pole', 'switch.L2', 'switch.T2'],
  ['switch.out-1', 'wire', 'switch.T1', 'box.L1'],
  ['switch.out-2', 'wire', 'switch.T2', 'box.L2'],
  ['switch.ground', 'earth', 'panel.G', 'switch.G', 'ground'],
]);

export const switchNoBox = piece('switch-in-path-no-box', 'switch', [
  ['switch.wire-1', 'wire', 'panel.D1', 'switch.L1'],
  ['switch.wire-2', 'wire', 'panel.D2', 'switch.L2'],
  ['switch.pole-1', 'switch-pole', 'switch.L1', 'switch.T1'],
  ['switch.pole-2', 'switch-pole', 'switch.L2', 'switch.T2'],
  ['switch.lead-one', 'lead-terminal', 'switch.T1', 'lead.1', 'one'],
  ['switch.lead-two', 'lead-terminal', 'switch.T2', 'lead.2', 'two'],
  ['switch.ground', 'earth', 'panel.G', 'switch.G', 'ground'],
]);

export const switchInLoop = piece('switch-in-loop-from-l2', 'switch', [
  ['switch.feed-1', 'wire', 'panel.D1', 'box.L1'],
  ['switch.feed-2', 'wire', 'panel.D2', 'box.L2'],
  ['switch.wire-1', 'wire', 'box.L2', 'switch.L1'],
  ['switch.pole-1', 'switch-pole', 'switch.L1', 'switch.T1'],
  ['switch.wire-2', 'wire', 'switch.T1', 'box.SW'],
]);

const leads: readonly Line[] = [
  ['box.lead-yellow', 'lead-terminal', 'box.Y', 'lead.Y', 'yellow'],
  ['box.lead-black', 'lead-terminal', 'box.B', 'lead.B', 'black'],
  ['box.lead-red', 'lead-terminal', 'box.R', 'lead.R', 'red'],
  ['box.ground', 'earth', 'panel.G', 'box.G', 'ground'],
];

const startParts = (tap: string): readonly Line[] => [
  ['box.run-capacitor', 'capacitor-run', tap, 'box.R'],
  ['box.start-capacitor', 'capacitor-start', tap, 'box.one'],
  ['box.bleed', 'bleed', tap, 'box.one'],
  ['box.relay-contact', 'relay-contact', 'box.one', 'box.R'],
  ['box.relay-coil', 'relay-coil', 'box.R', 'box.Y'],
];

/** Potential relay, main overload in the line, no contactor. */
export const startAndRunBox = piece('box-start-and-run-main-overload-in-line', 'box', [
  ['box.main-overload', 'overload', 'box.L1', 'box.B'],
  ['box.wire-yellow', 'wire', 'box.L2', 'box.Y'],
  ['box.wire-tap', 'wire', 'box.B', 'box.tap'],
  ...startParts('box.tap'),
  ...leads,
]);

/** The same behind a line contactor whose coil the control loop feeds. */
export const contactorBox = piece('box-contactor-loop-fed-from-l2', 'box', [
  ['box.contactor-coil', 'contactor-coil', 'box.SW', 'box.L1'],
  ['box.pole-1', 'contactor-pole', 'box.L1', 'box.T1'],
  ['box.pole-2', 'contactor-pole', 'box.L2', 'box.T2'],
  ['box.main-overload', 'overload', 'box.T1', 'box.B'],
  ['box.wire-yellow', 'wire', 'box.T2', 'box.Y'],
  ['box.wire-tap', 'wire', 'box.B', 'box.tap'],
  ...startParts('box.tap'),
  ...leads,
]);

/** Plug-apart lid with a current-sensing relay in the main lead. */
export const startOnlyBox = piece('box-start-only-current-relay', 'box', [
  ['box.lid-1', 'lid-contact', 'box.L1', 'box.one'],
  ['box.lid-2', 'lid-contact', 'box.L2', 'box.Y'],
  ['box.sense-coil', 'sense-coil', 'box.one', 'box.B'],
  ['box.sense-switch', 'sense-switch', 'box.B', 'box.cap'],
  ['box.start-capacitor', 'capacitor-start', 'box.cap', 'box.R'],
  ...leads,
]);

/** Start capacitor only, potential relay. */
export const startOnlyPotentialBox = piece('box-start-only-potential-relay', 'box', [
  ['box.lid-1', 'lid-contact', 'box.L1', 'box.B'],
  ['box.lid-2', 'lid-contact', 'box.L2', 'box.Y'],
  ['box.start-capacitor', 'capacitor-start', 'box.B', 'box.one'],
  ['box.bleed', 'bleed', 'box.B', 'box.one'],
  ['box.relay-contact', 'relay-contact', 'box.one', 'box.R'],
  ['box.relay-coil', 'relay-coil', 'box.R', 'box.Y'],
  ...leads,
]);

export const well3Wire = piece('well-3-wire', 'well', [
  ['run.yellow', 'conductor-buried', 'lead.Y', 'well.Y', 'yellow'],
  ['run.black', 'conductor-buried', 'lead.B', 'well.B', 'black'],
  ['run.red', 'conductor-buried', 'lead.R', 'well.R', 'red'],
  ['well.splice-yellow', 'splice', 'well.Y', 'drop.Y', 'yellow'],
  ['well.splice-black', 'splice', 'well.B', 'drop.B', 'black'],
  ['well.splice-red', 'splice', 'well.R', 'drop.R', 'red'],
  ['drop.yellow', 'conductor-drop', 'drop.Y', 'motor.Y', 'yellow'],
  ['drop.black', 'conductor-drop', 'drop.B', 'motor.B', 'black'],
  ['drop.red', 'conductor-drop', 'drop.R', 'motor.R', 'red'],
  ['run.ground', 'earth', 'box.G', 'well.G', 'ground'],
  ['drop.ground', 'earth', 'well.G', 'motor.G', 'ground'],
]);

export const well2Wire = piece('well-2-wire', 'well', [
  ['run.one', 'conductor-buried', 'lead.1', 'well.1', 'one'],
  ['run.two', 'conductor-buried', 'lead.2', 'well.2', 'two'],
  ['well.splice-one', 'splice', 'well.1', 'drop.1', 'one'],
  ['well.splice-two', 'splice', 'well.2', 'drop.2', 'two'],
  ['drop.one', 'conductor-drop', 'drop.1', 'motor.1', 'one'],
  ['drop.two', 'conductor-drop', 'drop.2', 'motor.2', 'two'],
  ['run.ground', 'earth', 'switch.G', 'well.G', 'ground'],
  ['drop.ground', 'earth', 'well.G', 'motor.G', 'ground'],
]);

export const motor3Wire = piece('motor-3-wire', 'motor', [
  ['motor.protector', 'protector', 'motor.Y', 'motor.C', 'yellow'],
  ['motor.main', 'winding-main', 'motor.B', 'motor.C', 'black'],
  ['motor.start', 'winding-start', 'motor.R', 'motor.C', 'red'],
  ['motor.insulation', 'insulation', 'motor.C', 'motor.G'],
]);

export const motor2Wire = piece('motor-2-wire', 'motor', [
  ['motor.protector', 'protector', 'motor.2', 'motor.C', 'two'],
  ['motor.main', 'winding-main', 'motor.1', 'motor.C'],
  ['motor.start-switch', 'start-switch-inside', 'motor.1', 'motor.S'],
  ['motor.start', 'winding-start', 'motor.S', 'motor.C'],
  ['motor.insulation', 'insulation', 'motor.C', 'motor.G'],
]);

export const startAndRun = [service, panel, switchInPath, startAndRunBox, well3Wire, motor3Wire];
export const contactor = [service, panel, switchInLoop, contactorBox, well3Wire, motor3Wire];
export const startOnly = [service, panel, switchInPath, startOnlyBox, well3Wire, motor3Wire];
export const startOnlyPotential = [
  service,
  panel,
  switchInPath,
  startOnlyPotentialBox,
  well3Wire,
  motor3Wire,
];
export const noBox = [service, panel, switchNoBox, well2Wire, motor2Wire];
