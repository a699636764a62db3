import type { Motor } from '../schema/motor.ts';
import type { Catalog, Problem } from './catalog.ts';
import { evidencedRecords } from './references.ts';

/** Third ring: records that are well formed and refer to each other may still make no sense. */
export function senseProblems(catalog: Catalog): Problem[] {
  return [
    ...Object.values(catalog.motors).flatMap(ampProblems),
    ...orderProblems(catalog),
    ...evidenceProblems(catalog),
    ...callerProblems(catalog),
    ...makerProblems(catalog),
  ];
}

/** Full load draws no more than service-factor load, and that less than a locked rotor. */
function ampProblems(motor: Motor): Problem[] {
  const full = motor.fullLoad?.amps;
  const service = motor.serviceFactorLoad?.amps;
  if (full === undefined || service === undefined) return [];
  const at = `motors/${motor.id}`;
  const line = (amps: typeof full): number => ('line' in amps ? amps.line : amps.yellow);
  const problems: Problem[] = [];
  if (line(full) > line(service))
    problems.push({
      at: `${at} › fullLoad`,
      message: 'draws more than at service-factor load',
      hint: 'compare with the source',
    });
  if (motor.lockedRotor !== undefined && line(service) >= motor.lockedRotor) {
    problems.push({
      at: `${at} › lockedRotor`,
      message: 'is not above the service-factor amps',
      hint: 'compare with the source',
    });
  }
  return problems;
}

/** Among rows of one kind a larger motor has no higher main ohms, a little slack aside. */
const SLACK = 1.1;

function orderProblems(catalog: Catalog): Problem[] {
  const rows = Object.values(catalog.motors).filter(
    (motor) => motor.winding !== undefined && motor.auxiliary === undefined,
  );
  const main = ({ winding }: Motor): number =>
    winding === undefined ? 0 : 'main' in winding ? winding.main.high : winding.lineToLine.high;
  const kind = (motor: Motor): string => `${motor.leads} ${motor.volts} ${motor.frame}`;
  return rows.flatMap((motor) =>
    rows
      .filter(
        (other) =>
          kind(other) === kind(motor) &&
          other.power > motor.power * 1.01 &&
          main(other) > main(motor) * SLACK,
      )
      .map((other) => ({
        at: `motors/${other.id} › winding`,
        message: `has more ohms than the smaller ${motor.id}`,
        hint: 'a larger motor has thicker copper; compare with the source',
      })),
  );
}

/** Figures of a motor row, each of which some entry of `from` must vouch for. */
const MOTOR_FIGURES = [
  'fullLoad',
  'serviceFactorLoad',
  'winding',
  'lockedRotor',
  'startCapacitor',
  'runCapacitor',
  'breaker',
] as const;

function evidenceProblems(catalog: Catalog): Problem[] {
  const rows = Object.values(catalog.motors).flatMap((motor) =>
    MOTOR_FIGURES.filter((field) => motor[field] !== undefined && !isVouched(motor.from, field)).map(
      (field) => ({
        at: `motors/${motor.id} › ${field}`,
        message: 'no entry of from vouches for this figure',
        hint: 'name it in the `of` of the source it was read in',
      }),
    ),
  );
  const misnamed = evidencedRecords(catalog).flatMap(({ at, record }) =>
    record.from.flatMap(({ of = [] }, index) =>
      of
        .filter((field) => !((field.split('.')[0] ?? '') in record))
        .map((field) => ({
          at: `${at} › from[${index}] › of`,
          message: `the record has no ${field}`,
          hint: 'name a field of this record',
        })),
    ),
  );
  return [...rows, ...misnamed];
}

function isVouched(from: Motor['from'], field: string): boolean {
  return from.some(
    ({ of }) => of === undefined || of.some((name) => name === field || name.startsWith(`${field}.`)),
  );
}

/** A caller looks, listens and reads; nothing else is his. */
function callerProblems(catalog: Catalog): Problem[] {
  return Object.values(catalog.checks)
    .filter((check) => check.who === 'caller')
    .filter((check) => !('look' in check.at) || check.site.cover !== 'any' || check.hazards.length > 0)
    .map((check) => ({
      at: `checks/${check.id} › who`,
      message: 'a caller only looks, listens and reads with every cover on',
      hint: 'ask at least a technician, or make it a look',
    }));
}

/** A maker's name stands in the citation of a source and nowhere else. */
function makerProblems(catalog: Catalog): Problem[] {
  const makers = [...new Set(Object.values(catalog.sources).flatMap((source) => source.makers ?? []))];
  const texts = [
    ...evidencedRecords(catalog).map(({ at, record }) => ({ at, text: JSON.stringify(record) })),
    ...Object.values(catalog.words).flatMap((words) =>
      Object.entries({
        checks: words.checks,
        faults: words.faults,
        actions: words.actions,
        names: words.names,
      }).flatMap(([kind, table]) =>
        Object.values(table).map((record) => ({
          at: `words/${words.language}/${kind}/${record.id}`,
          text: JSON.stringify(record),
        })),
      ),
    ),
  ];
  return texts.flatMap(({ at, text }) =>
    makers
      .filter((maker) => new RegExp(`\\b${maker}\\b`, 'i').test(text))
      .map((maker) => ({
        at,
        message: `names the maker ${maker}`,
        hint: 'a maker is named only in content/sources',
      })),
  );
}
