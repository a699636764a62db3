import type { Catalog } from '../../catalog/catalog.ts';
import type { CaseState } from '../../schema/case-state.ts';
import type { CableRun, Installation } from '../../schema/installation.ts';
import { inUnit } from '../../units/units.ts';
import type { Texts } from '../words/texts.ts';
import { horsepower } from './horsepower.ts';
import type { Question } from './installation-facts.ts';
import { motorName } from './installation-options.ts';
import { waterFields } from './water-facts.ts';

/** What a line of the title block holds, in words; nothing where it is unknown. */
export function knownValue(
  texts: Texts,
  catalog: Catalog,
  asked: { readonly state: CaseState; readonly question: Question },
): string | undefined {
  const { installation, person, instruments, meter, circumstances } = asked.state;
  switch (asked.question) {
    case 'box':
      return boxValue(texts, installation);
    case 'motor':
      return motorValue(texts, catalog, installation);
    case 'supply':
      return installation.supply?.volts === undefined
        ? undefined
        : texts.say('volts', { volts: Math.round(inUnit(installation.supply.volts, 'V')) });
    case 'buried':
      return runValue(texts, catalog, installation.buried);
    case 'drop':
      return runValue(texts, catalog, installation.drop);
    case 'water':
      return joined(
        waterFields(installation).flatMap(({ id, amount }) =>
          amount === undefined ? [] : [`${texts.say(`water-${id}`)} ${amount}`],
        ),
      );
    case 'fittings':
      return joined(
        Object.entries(installation.fittings ?? {}).flatMap(([id, there]) =>
          there ? [texts.name('fittings', id)] : [],
        ),
      );
    case 'person':
      return texts.name('persons', person);
    case 'kit':
      return [texts.name('meters', meter), ...instruments.map((one) => texts.name('instruments', one))].join(
        ', ',
      );
    case 'happened':
      return joined(circumstances.map((one) => texts.name('circumstances', one)));
    default: {
      const never: never = asked.question;
      return never;
    }
  }
}

function boxValue(texts: Texts, { box, family }: Installation): string | undefined {
  if (box !== undefined) return texts.name('boxes', box);
  return family === undefined ? undefined : texts.name('families', family);
}

function motorValue(
  texts: Texts,
  catalog: Catalog,
  { motor, power, leads }: Installation,
): string | undefined {
  if (motor !== undefined) return motorName(texts, catalog, motor);
  return joined([
    ...(power === undefined ? [] : [texts.say('hp', { power: horsepower(inUnit(power, 'hp')) })]),
    ...(leads === undefined ? [] : [texts.say(leads)]),
  ]);
}

function runValue(texts: Texts, catalog: Catalog, run: CableRun | undefined): string | undefined {
  const gauge = run?.conductor === undefined ? undefined : catalog.conductors[run.conductor]?.gauge;
  return joined([
    ...(run?.length === undefined ? [] : [texts.say('feet', { feet: Math.round(inUnit(run.length, 'ft')) })]),
    ...(gauge === undefined ? [] : [texts.say('awg', { gauge })]),
  ]);
}

const joined = (parts: readonly string[]): string | undefined =>
  parts.length === 0 ? undefined : parts.join(', ');
