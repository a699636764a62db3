import type { Check, CheckPoint } from '../schema/check.ts';
import type { Edit, Fault } from '../schema/fault.ts';
import type { Box, Netlist } from '../schema/netlist.ts';
import type { Catalog, Problem } from './catalog.ts';

/**
 * Third ring, reach: can every fault occur and every check be made in at least one installation, and
 * do the pieces of every box make one circuit?
 *
 * A name that stands in some netlist may still never meet the others it is used with.
 */
interface Reach {
  readonly box: Box;
  readonly names: ReadonlySet<string>;
}

export function reachProblems(catalog: Catalog): Problem[] {
  const boxes = Object.values(catalog.boxes);
  const reaches = boxes.flatMap((box) =>
    [undefined, ...Object.values(catalog.fittings)].map((fitting) => ({
      box,
      names: namesIn(piecesOf(catalog, box, fitting?.replaces)),
    })),
  );
  return [
    ...boxes.flatMap((box) => circuitProblems(box, piecesOf(catalog, box))),
    ...Object.values(catalog.faults).flatMap((fault) => faultReach(fault, reaches)),
    ...Object.values(catalog.checks).flatMap((check) => checkReach(check, reaches)),
  ];
}

/** @param swapped pieces that a fitting puts in the place of others */
function piecesOf(catalog: Catalog, box: Box, swapped: Readonly<Record<string, string>> = {}): Netlist[] {
  return box.pieces.flatMap((id) => catalog.netlists[swapped[id] ?? id] ?? []);
}

/** Every part and node of some pieces. */
export function namesIn(pieces: readonly Netlist[]): ReadonlySet<string> {
  const names = new Set<string>();
  for (const { terminals, parts } of pieces) {
    for (const { id } of terminals) names.add(id);
    for (const { id, between } of parts) for (const name of [id, ...between]) names.add(name);
  }
  return names;
}

export function namesOfEdit(edit: Edit): readonly string[] {
  if ('part' in edit) return [edit.part];
  if ('parts' in edit) return edit.parts;
  return 'nodes' in edit ? edit.nodes : [];
}

export function namesOfPoint(at: CheckPoint): readonly string[] {
  if ('between' in at) return [...at.between, ...(at.tie ?? [])];
  if ('across' in at) return [at.across];
  if ('clamp' in at) return at.clamp;
  return 'tied' in at ? [...at.tied, at.to] : [];
}

interface Wanted {
  readonly needs: readonly string[];
  readonly without: readonly string[];
}

const fits = ({ names }: Reach, { needs, without }: Wanted): boolean =>
  needs.every((name) => names.has(name)) && without.every((name) => !names.has(name));

function faultReach(fault: Fault, reaches: readonly Reach[]): Problem[] {
  const possible = reaches.filter(({ box }) => fault.families?.includes(box.family) ?? true);
  return fault.variants.flatMap((variant, index) => {
    const needs = [...variant.edits.flatMap(namesOfEdit), ...(variant.needs ?? [])];
    if (possible.some((reach) => fits(reach, { needs, without: variant.without ?? [] }))) return [];
    return [
      {
        at: `faults/${fault.id} › variants[${index}]`,
        message: `can occur in no installation: ${needs.join(', ')} never meet`,
        hint: 'mend the names, needs, without or families',
      },
    ];
  });
}

function checkReach(check: Check, reaches: readonly Reach[]): Problem[] {
  const needs = [...namesOfPoint(check.at), ...(check.needs ?? [])];
  const possible = reaches.filter(({ box }) => !(check.notPlugApart === true && box.plugApart));
  if (possible.some((reach) => fits(reach, { needs, without: check.without ?? [] }))) return [];
  return [
    {
      at: `checks/${check.id} › at`,
      message: `can be made in no installation: ${needs.join(', ')} never meet`,
      hint: 'mend the names, needs or without',
    },
  ];
}

/** One service, no part twice, and every node reached from the neutral through some part. */
function circuitProblems(box: Box, pieces: readonly Netlist[]): Problem[] {
  const at = `boxes/${box.id} › pieces`;
  const hint = 'compare with the pieces of a similar box';
  const parts = pieces.flatMap((piece) => piece.parts);
  const twice = parts.filter(({ id }, index) => parts.findIndex((other) => other.id === id) !== index);
  const start = parts.find(({ kind }) => kind === 'source')?.between[0];
  if (start === undefined) return [{ at, message: 'no piece holds a source', hint }];
  const reached = reachedFrom(start, parts);
  const adrift = parts.filter(({ between }) => !reached.has(between[0])).map(({ id }) => id);
  return [
    ...twice.map(({ id }) => ({ at, message: `${id} occurs twice`, hint })),
    ...(adrift.length > 0 ? [{ at, message: `not joined to the service: ${adrift.join(', ')}`, hint }] : []),
  ];
}

function reachedFrom(start: string, parts: Netlist['parts']): ReadonlySet<string> {
  const reached = new Set([start]);
  for (let before = 0; before !== reached.size; ) {
    before = reached.size;
    for (const { between } of parts) {
      if (between.some((node) => reached.has(node))) for (const node of between) reached.add(node);
    }
  }
  return reached;
}
