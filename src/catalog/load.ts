import { type Built, buildCatalog } from './build.ts';
import { readContent } from './read.ts';

/** The catalog of this build, or what is wrong with its content. Checked once, then kept. */
let built: Built | undefined;

export function loadCatalog(): Built {
  built ??= buildCatalog(readContent());
  return built;
}
