import { fact } from '../hooks/installation-facts.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** What some installations have and others lack; each is there, not there, or nobody knows. */
export function FittingsQuestion({ open }: { open: OpenCase }) {
  const { say, name } = useTexts();
  const { catalog } = useServices();
  const known = open.state?.installation.fittings ?? {};
  return Object.values(catalog.fittings)
    .filter(({ motorVolts }) => motorVolts === undefined)
    .map(({ id }) => (
      <fieldset className="question" key={id}>
        <legend>{name('fittings', id)}</legend>
        <div className="key-grid">
          <Key chosen={known[id] === true} onPress={() => void open.say(fact({ fittings: { [id]: true } }))}>
            {say('fitting-there')}
          </Key>
          <Key
            chosen={known[id] === false}
            onPress={() => void open.say(fact({ fittings: { [id]: false } }))}
          >
            {say('fitting-missing')}
          </Key>
          <Key
            chosen={known[id] === undefined}
            onPress={() => void open.say(fact({ fittings: without(known, id) }, ['fittings']))}
          >
            {say('do-not-know')}
          </Key>
        </div>
      </fieldset>
    ));
}

function without(known: Readonly<Record<string, boolean>>, gone: string): Record<string, boolean> {
  return Object.fromEntries(Object.entries(known).filter(([id]) => id !== gone));
}
