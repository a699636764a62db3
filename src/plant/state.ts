import { type Anchors, anchorsOf } from './electrical/anchor.ts';
import { type Drive, driveOf } from './electrical/drive.ts';
import { elementOf } from './electrical/elements/impedance.ts';
import type { Circuit } from './electrical/install.ts';
import { type Network, network, type Slot, slot } from './electrical/network.ts';
import {
  atPowerUp,
  MOST_MARGIN,
  marginsOf,
  type Operating,
  operate,
  withoutModel,
} from './electrical/operate.ts';
import type { Layout } from './layout.ts';
import { type OhmBench, ohmBench } from './meters/ohms.ts';
import { takeReading } from './meters/reading.ts';
import type { VoltBench } from './meters/volts.ts';
import { motorSeen } from './rules.ts';
import type {
  Margins,
  Mode,
  PlantInput,
  PlantReading,
  PlantState,
  ReadingRequest,
  ReadingSite,
} from './types.ts';

/**
 * One installation with its faults: everything worked out at most once, when first asked for.
 *
 * Readings share run-ups (one for each state of switch and leads) and ohmmeter networks. Forcing a
 * mode changes the run-up and nothing else.
 */
export interface Bench extends VoltBench {
  readonly anchors: Anchors;
  readonly ohms: OhmBench;
  /** The state reached with the site as it is. */
  operating(site: ReadingSite): Operating;
  /** The instant of power-up. */
  powerUp(site: ReadingSite): Operating;
}

const CALLED: ReadingSite = { powered: true, calling: true, leads: 'connected' };
/** Without a model there is one mode only: every margin is certain. */
const NO_MARGINS: Margins = { start: MOST_MARGIN, release: MOST_MARGIN };

/** What all states of one plant have in common. */
export interface Shared {
  readonly anchors: Anchors;
  /** Scratch equations: filled, factored and solved within one call. */
  readonly net: Network;
  readonly ohmSlot: Slot;
  readonly voltSlot: Slot;
}

export function sharedOf(input: PlantInput, layout: Layout): Shared {
  const seriesShare = elementOf(input, 'capacitor-run').seriesShare ?? 0;
  const { size } = layout;
  return {
    anchors: anchorsOf(input.motor, input.model, seriesShare),
    net: network(size),
    ohmSlot: slot(size),
    voltSlot: slot(size),
  };
}

export function plantState(circuit: Circuit, shared: Shared, forced?: Mode): PlantState {
  const bench = benchOf(circuit, shared, forced);
  const drive = memo(() => bench.drive(CALLED));
  const margins = memo(() => {
    const ready = drive();
    return ready === undefined ? NO_MARGINS : marginsOf(ready);
  });
  return {
    get mode(): Mode {
      return bench.operating(CALLED).mode;
    },
    get margins(): Margins {
      return margins();
    },
    turns: (calling: boolean): number | undefined => {
      const { machine } = circuit;
      if (machine === undefined) return undefined;
      const end = calling ? bench.operating(CALLED).end : satisfied(bench).end;
      return end.speed / (1 - machine.fullSlip);
    },
    pumpLoad: () => 1,
    motorSeen: () => motorSeen(bench),
    drive: () => undefined,
    read: (request: ReadingRequest): PlantReading => takeReading(bench, request),
  };
}

/** What the motor does once the switch is satisfied: nothing, unless something holds it in. */
function satisfied(bench: ReturnType<typeof benchOf>): Operating {
  const site = { ...CALLED, calling: false };
  const ready = bench.drive(site);
  return ready === undefined ? bench.operating(site) : operate(ready);
}

function benchOf(
  circuit: Circuit,
  { anchors, net, ohmSlot, voltSlot }: Shared,
  forced: Mode | undefined,
): Bench & { drive(site: ReadingSite): Drive | undefined } {
  const drives = new Map<string, { readonly drive: Drive | undefined }>();
  const ends = new Map<string, Operating>();
  const key = (site: ReadingSite): string =>
    `${circuit.faulted.command ?? site.calling} ${site.leads} ${site.cooled ?? false}`;
  const drive = (site: ReadingSite): Drive | undefined => {
    return remembered(drives, key(site), () => ({ drive: driveOf(circuit, { ...site, net }) })).drive;
  };
  return {
    circuit,
    anchors,
    ohms: ohmBench(circuit, ohmSlot),
    voltSlot,
    drive,
    operating: (site) =>
      remembered(ends, key(site), () => {
        const ready = drive(site);
        return ready === undefined ? withoutModel(circuit, { ...site, net }) : operate(ready, forced);
      }),
    powerUp: (site) =>
      remembered(ends, `${key(site)} power-up`, () => {
        const ready = drive(site);
        return ready === undefined ? withoutModel(circuit, { ...site, net }) : atPowerUp(ready);
      }),
  };
}

function remembered<T>(known: Map<string, T>, key: string, make: () => T): T {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  known.set(key, made);
  return made;
}

function memo<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
