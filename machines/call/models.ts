import type { Catalog } from '../../src/catalog/catalog.ts';
import { type BeliefModel, buildModel } from '../../src/diagnosis/belief/model.ts';
import { resolveSystem } from '../../src/diagnosis/system.ts';
import type { ExpectedWindow } from '../../src/diagnosis/types.ts';
import { expectedWindows } from '../../src/diagnosis/windows/expect.ts';
import type { MeterClass } from '../../src/diagnosis/windows/meter.ts';
import type { Check } from '../../src/schema/check.ts';
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

const windows = new WeakMap<BeliefModel, Map<boolean, Record<string, ExpectedWindow>>>();

/** Windows of all checks on a model's installation; they change only when the motor has run. */
export function windowsFor(
  model: BeliefModel,
  checks: readonly Check[],
  justRun: boolean,
): Record<string, ExpectedWindow> {
  const kept = windows.get(model) ?? new Map<boolean, Record<string, ExpectedWindow>>();
  windows.set(model, kept);
  const known = kept.get(justRun);
  if (known !== undefined) return known;
  const { knowledge, system, meter } = model;
  const made = expectedWindows({ knowledge, system, meter, justRun }, checks);
  kept.set(justRun, made);
  return made;
}
