import { boxesOf, fact, familiesOf, familyFact } from '../hooks/installation-facts.ts';
import { factWithRow } from '../hooks/motor-rows.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** The family first, then the kind, where a family has several. */
export function BoxQuestion({ open }: { open: OpenCase }) {
  const { say, name } = useTexts();
  const { catalog } = useServices();
  const known = open.state?.installation ?? {};
  const kinds = known.family === undefined ? [] : boxesOf(catalog, known.family);
  return (
    <>
      <div className="key-column">
        {familiesOf(catalog).map((family) => (
          <Key
            key={family}
            chosen={family === known.family}
            onPress={() => void open.say(factWithRow(catalog, known, familyFact(catalog, family)))}
          >
            {name('families', family)}
          </Key>
        ))}
        <Key
          chosen={known.family === undefined}
          onPress={() => void open.say(fact({}, ['family', 'box', 'leads', 'motor']))}
        >
          {say('do-not-know')}
        </Key>
      </div>
      {kinds.length > 1 && (
        <fieldset className="question">
          <legend>{say('known-kind')}</legend>
          <div className="key-column">
            {kinds.map((box) => (
              <Key
                key={box.id}
                chosen={box.id === known.box}
                onPress={() => void open.say(factWithRow(catalog, known, { set: { box: box.id } }))}
              >
                {name('boxes', box.id)}
              </Key>
            ))}
            <Key chosen={known.box === undefined} onPress={() => void open.say(fact({}, ['box']))}>
              {say('do-not-know')}
            </Key>
          </div>
        </fieldset>
      )}
    </>
  );
}
