import type { Catalog } from '../../src/catalog/catalog.ts';
import { type BeliefModel, buildModel } from '../../src/diagnosis/belief/model.ts';
import { resolveSystem } from '../../src/diagnosis/system.ts';
import type { MeterClass } from '../../src/diagnosis/windows/meter.ts';
import type { Installation } from '../../src/schema/installation.ts';

/**
 * Belief models kept between taps: the same installation, meter and content give the same model, and
 * its predictions are the costly part of a call. A few are kept, the oldest is dropped.
 */
const KEPT = 3;
const models = new Map<string, BeliefModel>();

export function modelFor(catalog: Catalog, installation: Installation, meter: MeterClass): BeliefModel {
  const key = JSON.stringify([catalog.version, meter, installation]);
  const known = models.get(key);
  if (known !== undefined) return known;
  const model = buildModel(catalog, resolveSystem(catalog, installation), meter);
  models.set(key, model);
  const [oldest] = models.keys();
  if (models.size > KEPT && oldest !== undefined) models.delete(oldest);
  return model;
}
