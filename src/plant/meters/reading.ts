import { anchorKind } from '../electrical/anchor.ts';
import {
  clampedCurrent,
  deliveredWatts,
  magnitude,
  nodeIm,
  nodeRe,
  partCurrent,
} from '../electrical/branch.ts';
import { shaftLoad } from '../electrical/drive.ts';
import { endsOf } from '../electrical/install.ts';
import { LINE_RADIANS } from '../electrical/line.ts';
import type { Operating } from '../electrical/operate.ts';
import { answerOf } from '../rules.ts';
import type { Bench } from '../state.ts';
import type { PlantReading, ReadingRequest, ReadingSite, Regime } from '../types.ts';
import { capacitanceAcross, capacitanceBetween } from './capacitance.ts';
import { ohmsAcross, ohmsBetween, ohmsTied } from './ohms.ts';
import { regimeOf } from './regime.ts';
import { loadedVolts } from './volts.ts';

/**
 * Which instrument, where, and what does it show?
 *
 * Looks up the nodes and parts that a check names, picks the meter and lets it read. A name that the
 * installation lacks, a motor without a model and a question that is no business of the plant are
 * answers of their own kind, never numbers.
 */
export function takeReading(bench: Bench, request: ReadingRequest): PlantReading {
  const { predict, at } = request;
  if ('rule' in predict) return answerOf(bench, predict.rule, request.site);
  if (!('reads' in predict) || 'look' in at) return notForThePlant;
  switch (predict.reads) {
    case 'ohms':
    case 'insulation':
      return request.site.powered ? notForThePlant : readOhms(bench, request);
    case 'capacitance-in-service':
      return readInService(bench, request);
    case 'capacitance':
      return readCapacitance(bench, request);
    case 'volts':
      return readVolts(bench, request, bench.operating);
    case 'volts-at-start':
      return readVolts(bench, request, bench.powerUp);
    case 'amps':
      return readAmps(bench, request);
    case 'amps-at-start':
      return readStartAmps(bench, request);
    case 'watts':
      return readWatts(bench, request);
    case 'residual':
      return readResidual(bench, request);
  }
}

const notForThePlant: PlantReading = { kind: 'none', reason: 'not-a-plant-reading' };
const noSuchNode: PlantReading = { kind: 'none', reason: 'no-such-node' };
const noModel: PlantReading = { kind: 'none', reason: 'no-model' };
const dead: PlantReading = { kind: 'value', value: 0, regime: 'static' };

const value = (number: number, regime: Regime): PlantReading => ({ kind: 'value', value: number, regime });

/** Numbers of named nodes or parts; undefined when one of them is not there. */
function found(table: ReadonlyMap<string, number>, names: readonly string[]): number[] | undefined {
  const numbers = names.map((name) => table.get(name));
  return numbers.every((number) => number !== undefined) ? numbers : undefined;
}

function readOhms({ circuit, ohms }: Bench, { at, site }: ReadingRequest): PlantReading {
  const { nodes, indexOf } = circuit.layout;
  if ('across' in at) {
    const part = indexOf.get(at.across);
    return part === undefined ? noSuchNode : ohmsAcross(circuit, part);
  }
  if ('between' in at) {
    const ends = found(nodes, at.between);
    const tied = found(nodes, at.tie ?? []);
    if (ends === undefined || tied === undefined) return noSuchNode;
    return ohmsBetween(ohms, [ends[0]!, ends[1]!], { tied, site });
  }
  if (!('tied' in at)) return notForThePlant;
  const tied = found(nodes, at.tied);
  const to = nodes.get(at.to);
  return tied === undefined || to === undefined ? noSuchNode : ohmsTied(ohms, tied, { to, site });
}

function readCapacitance(bench: Bench, { at, site }: ReadingRequest): PlantReading {
  const { layout } = bench.circuit;
  if ('between' in at) {
    const ends = found(layout.nodes, at.between);
    if (ends === undefined) return noSuchNode;
    return site.powered ? notForThePlant : capacitanceBetween(bench, [ends[0]!, ends[1]!], site);
  }
  if (!('across' in at)) return notForThePlant;
  const part = layout.indexOf.get(at.across);
  return part === undefined ? noSuchNode : capacitanceAcross(bench.circuit, part);
}

/** Amps through a capacitor over volts across it; nothing where no current flows. */
function readInService(bench: Bench, { at, site }: ReadingRequest): PlantReading {
  const { circuit } = bench;
  const part = 'across' in at ? circuit.layout.indexOf.get(at.across) : undefined;
  if (part === undefined) return 'across' in at ? noSuchNode : notForThePlant;
  if (!site.powered || circuit.machine === undefined) return noModel;
  const isStart = circuit.layout.parts[part]!.kind === 'capacitor-start';
  const reached = isStart ? bench.powerUp(site) : bench.operating(site);
  const [from, to] = endsOf(circuit, part);
  const volts = magnitude({
    re: nodeRe(reached, from) - nodeRe(reached, to),
    im: nodeIm(reached, from) - nodeIm(reached, to),
  });
  const amps = magnitude(partCurrent(circuit, reached, part));
  if (amps < LEAST_AMPS) return { kind: 'none', reason: 'not-a-plant-reading' };
  return value(amps / (LINE_RADIANS * volts), regimeOf(circuit, reached));
}
/** Below this a clamp shows its own noise. */
const LEAST_AMPS = 0.1;

function readVolts(
  bench: Bench,
  request: ReadingRequest,
  reach: (site: ReadingSite) => Operating,
): PlantReading {
  const ends = probes(bench, request);
  if (ends === undefined)
    return 'between' in request.at || 'across' in request.at ? noSuchNode : notForThePlant;
  if (!request.site.powered) return dead;
  const at = reach(request.site);
  return value(loadedVolts(bench, at, ends), regimeOf(bench.circuit, at));
}

/** The two nodes the probes touch; across a part means its own two ends. */
function probes({ circuit }: Bench, { at }: ReadingRequest): readonly [number, number] | undefined {
  if ('across' in at) {
    const part = circuit.layout.indexOf.get(at.across);
    return part === undefined ? undefined : endsOf(circuit, part);
  }
  if (!('between' in at)) return undefined;
  const ends = found(circuit.layout.nodes, at.between);
  return ends === undefined ? undefined : [ends[0]!, ends[1]!];
}

function readAmps(bench: Bench, { at, site }: ReadingRequest): PlantReading {
  const parts = 'clamp' in at ? found(bench.circuit.layout.indexOf, at.clamp) : undefined;
  if (parts === undefined) return 'clamp' in at ? noSuchNode : notForThePlant;
  if (!site.powered) return dead;
  if (bench.circuit.machine === undefined) return noModel;
  const reached = bench.operating(site);
  const amps = magnitude(clampedCurrent(bench.circuit, reached, parts));
  return value(amps * anchorFor(bench, reached, parts), regimeOf(bench.circuit, reached));
}

function readStartAmps(bench: Bench, { at, site }: ReadingRequest): PlantReading {
  const parts = 'clamp' in at ? found(bench.circuit.layout.indexOf, at.clamp) : undefined;
  if (parts === undefined) return 'clamp' in at ? noSuchNode : notForThePlant;
  if (!site.powered) return dead;
  if (bench.circuit.machine === undefined) return noModel;
  return value(magnitude(clampedCurrent(bench.circuit, bench.powerUp(site), parts)), 'saturated');
}

/**
 * What a leakage clamp round several conductors shows. It is the difference of large currents, so
 * none of them is anchored: what does not come back is the leak's, whatever the motor draws.
 */
function readResidual(bench: Bench, { at, site }: ReadingRequest): PlantReading {
  const parts = 'clamp' in at ? found(bench.circuit.layout.indexOf, at.clamp) : undefined;
  if (parts === undefined) return 'clamp' in at ? noSuchNode : notForThePlant;
  if (!site.powered) return dead;
  const reached = bench.operating(site);
  const amps = magnitude(clampedCurrent(bench.circuit, reached, parts));
  return value(amps, regimeOf(bench.circuit, reached));
}

function readWatts(bench: Bench, { site }: ReadingRequest): PlantReading {
  if (!site.powered) return dead;
  if (bench.circuit.machine === undefined) return noModel;
  const reached = bench.operating(site);
  const factor = reached.end.speed === 0 ? 1 : bench.anchors.factor('watts', shaftLoad(bench.circuit));
  return value(deliveredWatts(bench.circuit, reached) * factor, regimeOf(bench.circuit, reached));
}

/** Published over model for the leads in the clamp; a running motor only, and one kind of lead only. */
function anchorFor(bench: Bench, at: Operating, parts: readonly number[]): number {
  if (at.end.speed === 0) return 1;
  const kinds = new Set(parts.map((part) => anchorKind(bench.circuit.layout.parts[part]!)));
  const [only] = kinds;
  if (kinds.size !== 1 || only === undefined || parts.length > 1) return 1;
  return bench.anchors.factor(only, shaftLoad(bench.circuit));
}
