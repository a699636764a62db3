import type { Question } from '../hooks/installation-facts.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { BoxQuestion } from './known-box.tsx';
import { CableQuestion } from './known-cable.tsx';
import { FittingsQuestion } from './known-fittings.tsx';
import { HappenedQuestion, KitQuestion } from './known-lists.tsx';
import { MotorQuestion, SupplyQuestion } from './known-motor.tsx';
import { WaterQuestion } from './known-water.tsx';
import { PersonKeys } from './person-keys.tsx';

/** The keys of one line of the title block. Each tap is stored by itself. */
export function QuestionBody({ open, question }: { open: OpenCase; question: Question }) {
  switch (question) {
    case 'box':
      return <BoxQuestion open={open} />;
    case 'motor':
      return <MotorQuestion open={open} />;
    case 'supply':
      return <SupplyQuestion open={open} />;
    case 'buried':
    case 'drop':
      return <CableQuestion open={open} run={question} />;
    case 'water':
      return <WaterQuestion open={open} />;
    case 'fittings':
      return <FittingsQuestion open={open} />;
    case 'person':
      return (
        <PersonKeys
          chosen={open.state?.person}
          onChoose={(role) => void open.say({ kind: 'person', role })}
        />
      );
    case 'kit':
      return <KitQuestion open={open} />;
    case 'happened':
      return <HappenedQuestion open={open} />;
    default: {
      const never: never = question;
      return never;
    }
  }
}
