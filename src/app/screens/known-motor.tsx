import type { Installation } from '../../schema/installation.ts';
import { horsepower } from '../hooks/horsepower.ts';
import { fact, isSamePower, leadsFact, powersOf, suppliesOf } from '../hooks/installation-facts.ts';
import { motorName } from '../hooks/installation-options.ts';
import { factWithRow, motorRows } from '../hooks/motor-rows.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

const LEADS = ['2-wire', '3-wire'] as const;

/** Horsepower and wires, as the plate or the box says. */
export function MotorQuestion({ open }: { open: OpenCase }) {
  const { say } = useTexts();
  const { catalog } = useServices();
  const known = open.state?.installation ?? {};
  return (
    <>
      <fieldset className="question">
        <legend>{say('power')}</legend>
        <div className="key-grid">
          {powersOf(catalog).map((power) => (
            <Key
              key={power}
              chosen={isSamePower(known, power)}
              onPress={() => void open.say(factWithRow(catalog, known, { set: { power: [power, 'hp'] } }))}
            >
              {say('hp', { power: horsepower(power) })}
            </Key>
          ))}
          <Key chosen={known.power === undefined} onPress={() => void open.say(fact({}, ['power', 'motor']))}>
            {say('do-not-know')}
          </Key>
        </div>
      </fieldset>
      <fieldset className="question">
        <legend>{say('leads')}</legend>
        <div className="key-grid">
          {LEADS.map((leads) => (
            <Key
              key={leads}
              chosen={leads === known.leads}
              onPress={() => void open.say(factWithRow(catalog, known, leadsFact(known, leads)))}
            >
              {say(leads)}
            </Key>
          ))}
          <Key chosen={known.leads === undefined} onPress={() => void open.say(fact({}, ['leads']))}>
            {say('do-not-know')}
          </Key>
        </div>
      </fieldset>
      <RowQuestion open={open} known={known} />
    </>
  );
}

/** Which row of the tables, where what is known leaves several. */
function RowQuestion({ open, known }: { open: OpenCase; known: Installation }) {
  const texts = useTexts();
  const { catalog } = useServices();
  const rows = known.power === undefined || known.leads === undefined ? [] : motorRows(catalog, known);
  if (rows.length === 0) return null;
  return (
    <fieldset className="question">
      <legend>{texts.say('motor-row')}</legend>
      <div className="key-column">
        {rows.map((row) => (
          <Key
            key={row.id}
            chosen={row.id === known.motor}
            onPress={() => void open.say(fact({ motor: row.id }))}
          >
            {motorName(texts, catalog, row.id)}
          </Key>
        ))}
      </div>
    </fieldset>
  );
}

/** The service volts; the reading of the day is taken later, with a meter. */
export function SupplyQuestion({ open }: { open: OpenCase }) {
  const { say } = useTexts();
  const { catalog } = useServices();
  const known = open.state?.installation ?? {};
  const volts = known.supply?.volts;
  return (
    <div className="key-column">
      {suppliesOf(catalog).map((one) => (
        <Key
          key={one}
          chosen={one === volts}
          onPress={() =>
            void open.say(factWithRow(catalog, known, { set: { supply: { volts: [one, 'V'] } } }))
          }
        >
          {say('volts', { volts: one })}
        </Key>
      ))}
      <Key chosen={volts === undefined} onPress={() => void open.say(fact({}, ['supply']))}>
        {say('do-not-know')}
      </Key>
    </div>
  );
}
