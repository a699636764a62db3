import { useState } from 'react';
import { inUnit } from '../../units/units.ts';
import { conductorsOf, fact } from '../hooks/installation-facts.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface CableProps {
  readonly open: OpenCase;
  readonly run: 'buried' | 'drop';
}

/** Wire size and length of one run, one way. */
export function CableQuestion({ open, run }: CableProps) {
  const { say } = useTexts();
  const { catalog } = useServices();
  const known = open.state?.installation[run];
  return (
    <>
      <fieldset className="question">
        <legend>{say('gauge')}</legend>
        <div className="key-grid">
          {conductorsOf(catalog).map(({ id, gauge }) => (
            <Key
              key={id}
              chosen={id === known?.conductor}
              onPress={() => void open.say(fact({ [run]: { conductor: id } }))}
            >
              {gauge}
            </Key>
          ))}
          <Key chosen={known?.conductor === undefined} onPress={() => void open.say(fact({}, [run]))}>
            {say('do-not-know')}
          </Key>
        </div>
      </fieldset>
      <LengthField key={run} open={open} run={run} />
    </>
  );
}

function LengthField({ open, run }: CableProps) {
  const { say } = useTexts();
  const length = open.state?.installation[run]?.length;
  const [typed, setTyped] = useState(length === undefined ? '' : String(Math.round(inUnit(length, 'ft'))));
  const feet = Number.parseFloat(typed);
  const store = (): void => {
    if (Number.isFinite(feet) && feet >= 0) void open.say(fact({ [run]: { length: [feet, 'ft'] } }));
  };
  return (
    <label className="field">
      <span>
        {say('length')}, {say('feet-unit')}
      </span>
      <input
        inputMode="decimal"
        value={typed}
        autoComplete="off"
        onChange={(event) => setTyped(event.target.value.replace(/[^0-9.]/g, ''))}
        onBlur={store}
        onKeyDown={(event) => event.key === 'Enter' && store()}
      />
    </label>
  );
}
