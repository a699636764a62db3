import type { Catalog } from '../../../src/catalog/catalog.ts';
import { catalogFrom } from '../../../src/proof/content.ts';

/** The real content: screens are tested with the words that people read. */
export function content(): Catalog {
  const built = catalogFrom('content');
  if ('problems' in built) throw new Error(`screens: the content has ${built.problems.length} problems`);
  return built.catalog;
}
