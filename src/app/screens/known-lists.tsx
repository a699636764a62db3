import { instrumentsOf } from '../hooks/installation-facts.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

const METERS = ['ordinary', 'bench'] as const;

/** Which meter, and what else is in the truck. */
export function KitQuestion({ open }: { open: OpenCase }) {
  const { say, name } = useTexts();
  const { catalog } = useServices();
  if (open.state === undefined) return null;
  const { meter, instruments } = open.state;
  return (
    <>
      <fieldset className="question">
        <legend>{say('meter-class')}</legend>
        <div className="key-grid">
          {METERS.map((one) => (
            <Key
              key={one}
              chosen={one === meter}
              onPress={() => void open.say({ kind: 'kit', instruments: [...instruments], meter: one })}
            >
              {say(`meter-${one}`)}
            </Key>
          ))}
        </div>
      </fieldset>
      <fieldset className="question">
        <legend>{say('instruments')}</legend>
        <div className="key-grid">
          {instrumentsOf(catalog).map((one) => (
            <Key
              key={one}
              chosen={instruments.includes(one)}
              onPress={() => void open.say({ kind: 'kit', instruments: toggled(instruments, one), meter })}
            >
              {name('instruments', one)}
            </Key>
          ))}
        </div>
      </fieldset>
    </>
  );
}

/** What went before: each makes some faults likelier. */
export function HappenedQuestion({ open }: { open: OpenCase }) {
  const { say, name } = useTexts();
  const { catalog } = useServices();
  const happened = open.state?.circumstances ?? [];
  return (
    <div className="key-grid">
      {Object.keys(catalog.circumstances).map((one) => (
        <Key
          key={one}
          chosen={happened.includes(one)}
          onPress={() => void open.say({ kind: 'circumstances', happened: toggled(happened, one) })}
        >
          {name('circumstances', one)}
        </Key>
      ))}
      <Key
        chosen={happened.length === 0}
        onPress={() => void open.say({ kind: 'circumstances', happened: [] })}
      >
        {say('happened-none')}
      </Key>
    </div>
  );
}

function toggled(list: readonly string[], one: string): string[] {
  return list.includes(one) ? list.filter((other) => other !== one) : [...list, one];
}
