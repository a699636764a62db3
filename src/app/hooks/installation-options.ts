import type { Catalog } from '../../catalog/catalog.ts';
import type { EventDraft } from '../../records/recorded.ts';
import { boxFamily } from '../../schema/basics.ts';
import type { Installation } from '../../schema/installation.ts';
import type { Motor } from '../../schema/motor.ts';
import { inUnit } from '../../units/units.ts';
import { formatIn } from '../format/amount.ts';
import type { Texts } from '../words/texts.ts';
import { horsepower } from './horsepower.ts';
import { fact, familyFact, plates } from './installation-facts.ts';
import { factWithRow } from './motor-rows.ts';

/** The engine asks for a motor row or a kind of box by id; this words an option and writes the answer. */
export function optionName(texts: Texts, catalog: Catalog, asked: { field: string; option: string }): string {
  const { field, option } = asked;
  if (field === 'motor') return motorName(texts, catalog, option);
  return texts.name(field === 'box' ? 'boxes' : 'families', option);
}

/** A row of the motor table in words: "1 1/2 hp, 230 V, 3 wires, start and run capacitor". */
export function motorName(texts: Texts, catalog: Catalog, id: string): string {
  const motor = catalog.motors[id];
  if (motor === undefined) return id;
  const row = texts.say('row', {
    power: horsepower(inUnit(motor.power, 'hp')),
    volts: inUnit(motor.volts, 'V'),
    leads: texts.say(motor.leads),
    circuit: texts.say(`circuit-${motor.circuit}`),
  });
  return [row, ...whatTellsApart(texts, catalog, motor)].join(', ');
}

/** Run capacitor and motor size, where other rows of the same power and circuit differ in nothing else. */
function whatTellsApart(texts: Texts, catalog: Catalog, motor: Motor): string[] {
  const twins = plates(catalog).filter(
    (one) =>
      one.id !== motor.id &&
      one.leads === motor.leads &&
      one.circuit === motor.circuit &&
      one.volts === motor.volts &&
      Math.abs(one.power - motor.power) < 1,
  );
  const run = motor.runCapacitor;
  return [
    ...(run !== undefined && twins.some((one) => one.runCapacitor !== run)
      ? [texts.say('row-run', { amount: formatIn(run, 'uF').text })]
      : []),
    ...(twins.some((one) => one.frame !== motor.frame)
      ? [texts.say('row-frame', { inches: Math.round(inUnit(motor.frame, 'in')) })]
      : []),
  ];
}

/** @throws when the engine asks for a field that no screen can answer */
export function optionFact(
  catalog: Catalog,
  known: Installation,
  asked: { field: string; option: string },
): EventDraft {
  const { field, option } = asked;
  if (field === 'motor') return fact({ motor: option });
  if (field === 'box') return factWithRow(catalog, known, { set: { box: option } });
  const family = boxFamily.options.find((one) => one === option);
  if (field !== 'family' || family === undefined)
    throw new Error(`app: the engine asks for ${field} ${option}; word it in installation-options`);
  return factWithRow(catalog, known, familyFact(catalog, family));
}
