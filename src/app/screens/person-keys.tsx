import { type Person, person } from '../../schema/basics.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface PersonKeysProps {
  readonly chosen: Person | undefined;
  onChoose(role: Person): void;
}

/** Most trusted first: those are the ones who stand at the equipment. */
const ROLES: readonly Person[] = [...person.options].reverse();

export function PersonKeys({ chosen, onChoose }: PersonKeysProps) {
  const { say, name } = useTexts();
  return (
    <fieldset className="question">
      <legend>{say('who-reads')}</legend>
      <p className="second-voice">{say('who-why')}</p>
      <div className="key-column">
        {ROLES.map((role) => (
          <Key key={role} chosen={role === chosen} onPress={() => onChoose(role)}>
            {name('persons', role)}
          </Key>
        ))}
      </div>
    </fieldset>
  );
}
