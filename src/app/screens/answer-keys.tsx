import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface AnswerKeysProps {
  readonly check: string;
  readonly answers: readonly string[];
  onAnswer(answer: string): void;
  onNotTaken(): void;
}

/** The closed answers of a check that is seen or heard. */
export function AnswerKeys({ check, answers, onAnswer, onNotTaken }: AnswerKeysProps) {
  const texts = useTexts();
  return (
    <div className="answers">
      {answers.map((answer) => (
        <Key key={answer} onPress={() => onAnswer(answer)}>
          {texts.answer(check, answer)}
        </Key>
      ))}
      <Key sign="not-taken" onPress={onNotTaken}>
        {texts.say('cannot-take')}
      </Key>
    </div>
  );
}
