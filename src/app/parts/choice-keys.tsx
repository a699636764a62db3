import '../styles/base.css';
import '../styles/choices.css';
import { choiceSign, signsOf } from './choice-signs.tsx';
import { Key } from './key.tsx';

export interface Choice {
  readonly id: string;
  readonly text: string;
}

interface ChoiceKeysProps {
  /** The check that is answered: it says which signs the keys carry. */
  readonly check: string;
  /** The question, above the keys; `hidden` where the screen's title already asks it. */
  readonly legend: string;
  readonly legendHidden?: boolean;
  readonly choices: readonly Choice[];
  readonly chosen?: string;
  onChoose(id: string): void;
  /** The last key, "can't take it", where the check may be passed over. */
  readonly notTaken?: { readonly text: string; onPress(): void };
}

/** The answers of a check that is seen or heard, as large keys. */
export function ChoiceKeys({
  check,
  legend,
  legendHidden,
  choices,
  chosen,
  onChoose,
  notTaken,
}: ChoiceKeysProps) {
  return (
    <fieldset
      className="choice-keys"
      data-check={check}
      data-signs={signsOf(check)}
      data-count={choices.length}
    >
      <legend className={legendHidden ? 'unseen' : undefined}>{legend}</legend>
      {choices.map(({ id, text }) => (
        <Key key={id} chosen={id === chosen} onPress={() => onChoose(id)}>
          <ChoiceSign check={check} answer={id} />
          {text}
        </Key>
      ))}
      {notTaken !== undefined && (
        <Key sign="not-taken" onPress={notTaken.onPress}>
          {notTaken.text}
        </Key>
      )}
    </fieldset>
  );
}

function ChoiceSign({ check, answer }: { check: string; answer: string }) {
  const sign = choiceSign(check, answer);
  return sign === undefined ? null : <span className="choice-signs">{sign}</span>;
}
