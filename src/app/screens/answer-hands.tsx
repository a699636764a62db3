import { useState } from 'react';
import type { Reading } from '../../schema/case.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import type { ReadingSet } from '../hooks/use-reading-set.ts';
import { AnswerKeys } from './answer-keys.tsx';
import { NotTaken } from './not-taken.tsx';
import { NumberPad } from './number-pad.tsx';
import { WindowOf } from './window-of.tsx';

interface HandsProps {
  readonly open: OpenCase;
  readonly set: ReadingSet;
}

/** What the hands answer with: window, boxes and pad for a number, keys for what is seen or heard. */
export function AnswerHands({ open, set }: HandsProps) {
  const { catalog } = useServices();
  const [asksWhy, setAsksWhy] = useState(false);
  const { active = '' } = set;
  const reads = catalog.checks[active]?.reads;
  const give = (reading: Reading): void => {
    setAsksWhy(false);
    void set.give(reading);
  };
  if (reads === undefined) return null;
  if (asksWhy) {
    return <NotTaken onReason={(reason) => give({ notTaken: reason })} onBack={() => setAsksWhy(false)} />;
  }
  if ('answers' in reads) {
    return (
      <AnswerKeys
        check={active}
        answers={reads.answers}
        onAnswer={(answer) => give({ answer })}
        onNotTaken={() => setAsksWhy(true)}
      />
    );
  }
  return (
    <>
      <WindowOf view={open.view} check={active} />
      <NumberPad open={open} set={set} onReading={give} onNotTaken={() => setAsksWhy(true)} />
    </>
  );
}
