/**
 * What head does a pump end give at a flow, and how hard is its shaft to turn?
 *
 * A falling curve through three printed points: shut-off head, head at the flow that names the pump,
 * and the flow against nothing. Speed moves it by the affinity laws. Worn stages lose head at every
 * flow; a blocked intake loses flow and keeps the shut-off head. The shaft asks for a share of its
 * load at class flow that rises to a peak and falls again. What worn stages lose in head they turn
 * into heat, so the load at a flow stays.
 *
 * @source law: affinity laws; the power law through three points is ours
 */
export interface PumpEnd {
  readonly classFlow: number;
  readonly classHead: number;
  readonly shutOffHead: number;
  readonly openFlow: number;
  readonly peakLoadFlow: number;
  readonly deadHeadLoad: number;
  readonly dryLoad: number;
  /** Factors of what is wrong with it; one when sound. */
  readonly headFactor: number;
  readonly flowFactor: number;
}

/** Steepness of the curve: the exponent that takes it through its middle point. */
const steepness = (pump: PumpEnd): number =>
  Math.log(1 - pump.classHead / pump.shutOffHead) / Math.log(pump.classFlow / pump.openFlow);

/**
 * Metres of head at a flow; negative beyond the open flow, where the pump only resists.
 *
 * @param speed share of the speed at full load
 */
export function pumpHead(pump: PumpEnd, flow: number, speed: number): number {
  const scale = speed * pump.flowFactor * pump.openFlow;
  const most = speed * speed * pump.headFactor * pump.shutOffHead;
  if (flow <= 0) return most;
  if (scale <= 0) return -Infinity;
  return most * (1 - (flow / scale) ** steepness(pump));
}

/**
 * Gauge pressure with the valve shut, pascals as metres of column: shut-off head less what has to be
 * lifted.
 *
 * @example
 * deadHeadColumn({ shutOffHead: 120, level: 30, gaugeHeight: 2 }) // => 88
 */
export function deadHeadColumn(of: { shutOffHead: number; level: number; gaugeHeight: number }): number {
  return of.shutOffHead - of.level - of.gaugeHeight;
}

/** Share of the load at class flow that the shaft asks for at a flow. */
export function shaftShare(pump: PumpEnd, flow: number, speed: number): number {
  if (speed <= 0) return pump.deadHeadLoad;
  const x = Math.max(0, flow) / (speed * pump.classFlow);
  const peak = pump.peakLoadFlow / pump.classFlow;
  return pump.deadHeadLoad + ((1 - pump.deadHeadLoad) * x * (2 * peak - x)) / (2 * peak - 1);
}
