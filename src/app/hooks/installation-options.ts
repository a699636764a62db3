import type { Catalog } from '../../catalog/catalog.ts';
import type { EventDraft } from '../../records/recorded.ts';
import type { Texts } from '../words/texts.ts';
import { fact } from './installation-facts.ts';
import { horsepower } from '../format/horsepower.ts';
import { inUnit } from '../../units/units.ts';

/** The engine asks for a motor row or a kind of box by id; this words an option and writes the answer. */
export function optionName(texts: Texts, catalog: Catalog, asked: { field: string; option: string }): string {
  const { field, option } = asked;
  if (field === 'box') return texts.name('boxes', option);
  const motor = catalog.motors[option];
  return motor === undefined ? texts.name('families', option) : motorName(texts, catalog, option);
}

/** A row of the motor table in words: "1 1/2 hp, 230 V, 3 wires, start and run capacitor". */
export function motorName(texts: Texts, catalog: Catalog, id: string): string {
  const motor = catalog.motors[id];
  if (motor === undefined) return id;
  return texts.say('row', {
    power: horsepower(inUnit(motor.power, 'hp')),
    volts: inUnit(motor.volts, 'V'),
    leads: texts.say(motor.leads),
    circuit: texts.say(`circuit-${motor.circuit}`),
  });
}

export function optionFact(catalog: Catalog, field: string, option: string): EventDraft {
  if (field !== 'box') return fact({ motor: option });
  const family = catalog.boxes[option]?.family;
  return fact(family === undefined ? { box: option } : { box: option, family });
}
