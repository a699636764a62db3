import type { Catalog } from '../../catalog/catalog.ts';
import { resolveSystem } from '../../diagnosis/system.ts';
import type { Installation } from '../../schema/installation.ts';
import type { Box } from '../../schema/netlist.ts';

/** The box that is drawn: the known one, else the likeliest of those that fit what is known. */
export function boxOf(catalog: Catalog, installation: Installation | undefined): Box | undefined {
  return resolveSystem(catalog, installation ?? {}).choices[0]?.box;
}
