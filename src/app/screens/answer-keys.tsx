import { ChoiceKeys } from '../parts/choice-keys.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface AnswerKeysProps {
  readonly check: string;
  readonly answers: readonly string[];
  onAnswer(answer: string): void;
  onNotTaken(): void;
}

/** The closed answers of a check that is seen or heard; the title of the screen asks it. */
export function AnswerKeys({ check, answers, onAnswer, onNotTaken }: AnswerKeysProps) {
  const texts = useTexts();
  return (
    <ChoiceKeys
      check={check}
      legend={texts.check(check).ask}
      legendHidden
      choices={answers.map((id) => ({ id, text: texts.answer(check, id) }))}
      onChoose={onAnswer}
      notTaken={{ text: texts.say('cannot-take'), onPress: onNotTaken }}
    />
  );
}
