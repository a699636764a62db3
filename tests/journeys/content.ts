import type { Catalog } from '../../src/catalog/catalog.ts';
import { catalogFrom } from '../../src/proof/content.ts';

/** The same content that the built app carries. */
export function catalog(): Catalog {
  const built = catalogFrom('content');
  if ('problems' in built)
    throw new Error(`journeys: the content has ${built.problems.length} problems; run the content tests`);
  return built.catalog;
}
