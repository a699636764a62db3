import type { OpenCall } from './call.ts';
import type { NextStep } from './types.ts';

/**
 * Facts of the installation that must be asked before readings can mean anything: which kind of box,
 * and which motor row. "Unknown" is an answer; then belief holds the likely rows apart.
 */
export function askInstallation(call: OpenCall): NextStep | undefined {
  const { catalog, state, visit } = call;
  const { family, box, motor } = state.installation;
  if (family === undefined && box === undefined && !visit.saidUnknown.has('family')) {
    const families = [...new Set(Object.values(catalog.boxes).map((one) => one.family))];
    return { kind: 'ask-installation', field: 'family', options: families };
  }
  if (motor === undefined && !visit.saidUnknown.has('motor')) {
    return { kind: 'ask-installation', field: 'motor', options: motorRows(call) };
  }
  return undefined;
}

/** Rows that fit what is known, auxiliary rows left out. */
function motorRows({ catalog, state }: OpenCall): string[] {
  const { family, leads, power } = state.installation;
  const boxes = Object.values(catalog.boxes).filter((one) => family === undefined || one.family === family);
  return Object.values(catalog.motors)
    .filter(
      (row) =>
        row.auxiliary === undefined &&
        (leads === undefined || row.leads === leads) &&
        (power === undefined || Math.abs(row.power - power) < 0.02 * power) &&
        boxes.some(
          (one) =>
            one.leads === row.leads && one.serves.includes(row.circuit) && row.power <= one.power.high * 1.01,
        ),
    )
    .sort((one, other) => one.power - other.power)
    .map((row) => row.id);
}
