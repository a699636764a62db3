import { headOf } from '../plant/water/column.ts';
import type { WaterInput } from '../plant/water/types.ts';
import type { Installation } from '../schema/installation.ts';
import type { Motor } from '../schema/motor.ts';
import type { Quantity } from '../units/units.ts';
import { figures } from './judgements.ts';
import type { Knowledge } from './knowledge.ts';

/**
 * From what is known of well, pump end, tank and switch to a water system that can be asked, and
 * which fittings this installation may have.
 *
 * What nobody knows is taken from the usual house of the content, kept in proportion: a deeper well
 * has deeper water and a pump with more stages.
 */
export function waterInput(knowledge: Knowledge, known: Installation): WaterInput | undefined {
  const usual = Object.values(knowledge.water)[0];
  if (usual === undefined) return undefined;
  const settings = switchOf(usual, known);
  const well = wellOf(usual, known);
  return {
    ...usual,
    well,
    pump: pumpOf(usual, known, { lift: well.staticLevel, cutOut: settings.cutOut }),
    tank: {
      ...usual.tank,
      volume: known.tank?.volume ?? usual.tank.volume,
      precharge: moved(usual.tank.precharge, settings.cutIn - usual.switch.cutIn),
    },
    switch: settings,
    checkAboveGround: known.checkAboveGround ?? usual.checkAboveGround,
  };
}

const moved = <Q extends Quantity>(value: Q, by: number): Q => Math.max(0, value + by) as Q;
const times = <Q extends Quantity>(value: Q, by: number): Q => (value * by) as Q;

/** Known settings; the one that is not known keeps its usual distance from the other. */
function switchOf(usual: WaterInput, known: Installation): WaterInput['switch'] {
  const apart = usual.switch.cutOut - usual.switch.cutIn;
  const cutIn =
    known.cutIn ?? (known.cutOut === undefined ? usual.switch.cutIn : moved(known.cutOut, -apart));
  const cutOut = known.cutOut ?? moved(cutIn, apart);
  return { ...usual.switch, cutIn, cutOut };
}

function wellOf(usual: WaterInput, known: Installation): WaterInput['well'] {
  const intake = known.well?.intake ?? known.drop?.length ?? usual.well.intake;
  const deeper = intake / usual.well.intake;
  return {
    casing: known.well?.casing ?? usual.well.casing,
    intake,
    depth: moved(usual.well.depth, intake - usual.well.intake),
    staticLevel: known.well?.staticLevel ?? times(usual.well.staticLevel, deeper),
    specificCapacity: known.well?.specificCapacity ?? times(usual.well.specificCapacity, 1 / deeper),
  };
}

function pumpOf(
  usual: WaterInput,
  known: Installation,
  asked: { lift: number; cutOut: number },
): WaterInput['pump'] {
  const { pump } = usual;
  const more = (asked.lift + headOf(asked.cutOut)) / (usual.well.staticLevel + headOf(usual.switch.cutOut));
  const wider = (known.pump?.classFlow ?? pump.classFlow) / pump.classFlow;
  const shutOffHead = known.pump?.shutOffHead ?? times(pump.shutOffHead, more);
  return {
    ...pump,
    classFlow: times(pump.classFlow, wider),
    openFlow: times(pump.openFlow, wider),
    peakLoadFlow: times(pump.peakLoadFlow, wider),
    shutOffHead,
    classHead: known.pump?.classHead ?? times(shutOffHead, pump.classHead / pump.shutOffHead),
  };
}

/** One standard deviation of the unknowns of the water side that are wider than usual here. */
export function waterSpreads(knowledge: Knowledge, known: Installation): Readonly<Record<string, number>> {
  const wide = figures(knowledge.judgements, 'spreads-unknown');
  const unknown = {
    waterLevel: known.well?.staticLevel === undefined,
    wellYield: known.well?.specificCapacity === undefined,
    pumpHead: known.pump?.shutOffHead === undefined,
    tankVolume: known.tank?.volume === undefined,
    precharge: known.cutIn === undefined,
  };
  return Object.fromEntries(
    Object.entries(unknown).flatMap(([name, isUnknown]) => {
      const width = wide[name];
      return isUnknown && width !== undefined ? [[name, width]] : [];
    }),
  );
}

/** Chance that each fitting is there, here and on the usual installation. */
export type Fittings = Readonly<Record<string, { readonly chance: number; readonly usual: number }>>;

/** Chance that each fitting is there: said, implied by the motor, or as usual. */
export function fittingsOf(knowledge: Knowledge, known: Installation, motor: Motor): Fittings {
  return Object.fromEntries(
    Object.values(knowledge.fittings).map(({ id, usual, motorVolts }) => {
      const said =
        known.fittings?.[id] ?? (motorVolts === undefined ? undefined : motorVolts === motor.volts);
      return [id, { usual, chance: said === undefined ? usual : Number(said) }];
    }),
  );
}

/** Pieces that stand in the place of others, for the fittings that are there for certain. */
export function swapsOf(knowledge: Knowledge, fittings: Fittings): Readonly<Record<string, string>> {
  return Object.assign(
    {},
    ...Object.values(knowledge.fittings)
      .filter(({ id }) => fittings[id]?.chance === 1)
      .map(({ replaces = {} }) => replaces),
  );
}
