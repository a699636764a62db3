import type { Motor } from '../schema/motor.ts';
import type { Catalog, Problem } from './catalog.ts';

/**
 * Third ring, motor rows: what physics demands of a row, and of a row beside its neighbours.
 *
 * A row that breaks one of these was misread or mistyped; the engine would condemn good motors on it.
 */
export function motorProblems(catalog: Catalog): Problem[] {
  const rows = Object.values(catalog.motors);
  return [...rows.flatMap(rowProblems), ...orderProblems(rows)];
}

type Load = NonNullable<Motor['fullLoad']>;

const hint = 'compare with the source';

function rowProblems(motor: Motor): Problem[] {
  const at = `motors/${motor.id}`;
  return [
    ...loadProblems(motor).map((problem) => ({ ...problem, at: `${at} › ${problem.at}`, hint })),
    ...windingProblems(motor).map((problem) => ({ ...problem, at: `${at} › ${problem.at}`, hint })),
  ];
}

type Finding = Omit<Problem, 'hint'>;

/** Full load draws no more than service-factor load, and that less than a locked rotor. */
function loadProblems({ fullLoad: full, serviceFactorLoad: service, lockedRotor }: Motor): Finding[] {
  const found: Finding[] = [];
  if (full !== undefined && service !== undefined) {
    if (lineAmps(full) > lineAmps(service)) {
      found.push({ at: 'fullLoad › amps', message: 'more than at service-factor load' });
    }
    if ((full.watts ?? 0) > (service.watts ?? Number.POSITIVE_INFINITY)) {
      found.push({ at: 'fullLoad › watts', message: 'more than at service-factor load' });
    }
  }
  const most = service ?? full;
  if (lockedRotor !== undefined && most !== undefined && lineAmps(most) >= lockedRotor) {
    found.push({ at: 'lockedRotor', message: 'not above the running amps' });
  }
  return found;
}

/** Amps of the line that carries everything: the common lead of a three-lead motor. */
const lineAmps = ({ amps }: Load): number => ('line' in amps ? amps.line : amps.yellow);

/** The start winding is of thinner wire; leads, circuit and capacitors fit each other. */
function windingProblems(motor: Motor): Finding[] {
  const { winding, circuit, leads, runCapacitor } = motor;
  const found: Finding[] = [];
  if (winding !== undefined && 'main' in winding && winding.start.low <= winding.main.high) {
    found.push({ at: 'winding › start', message: 'not above the main winding' });
  }
  if ((circuit === 'start-inside') !== (leads === '2-wire')) {
    found.push({ at: 'circuit', message: `${circuit} does not go with ${leads}` });
  }
  if (winding !== undefined && 'lineToLine' in winding !== (leads === '2-wire')) {
    found.push({ at: 'winding', message: `these readings do not exist on a ${leads} motor` });
  }
  if ((circuit === 'start-and-run') !== (runCapacitor !== undefined)) {
    found.push({ at: 'runCapacitor', message: `${circuit} and this do not go together` });
  }
  return found;
}

/**
 * Printed ranges of neighbours overlap a little; a larger motor above this share of the ohms of a
 * smaller one is a mistake, not a spread.
 */
const SLACK = 1.1;

/** Among rows of one kind a larger motor has thicker copper: no more main ohms than a smaller one. */
function orderProblems(rows: readonly Motor[]): Problem[] {
  const plates = rows.filter((motor) => motor.auxiliary === undefined);
  return plates.flatMap((larger) => {
    const high = mainOhms(larger);
    const smaller = plates.find((other) => {
      const low = mainOhms(other);
      return (
        isOneKind(larger, other) &&
        other.power < larger.power * 0.99 &&
        high !== undefined &&
        low !== undefined &&
        high > low * SLACK
      );
    });
    if (smaller === undefined) return [];
    return [
      { at: `motors/${larger.id} › winding`, message: `more ohms than the smaller ${smaller.id}`, hint },
    ];
  });
}

function mainOhms({ winding }: Motor): number | undefined {
  if (winding === undefined) return undefined;
  return 'main' in winding ? winding.main.high : winding.lineToLine.high;
}

const isOneKind = (one: Motor, other: Motor): boolean =>
  one.leads === other.leads && one.volts === other.volts && one.frame === other.frame;
