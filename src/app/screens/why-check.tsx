import { useState } from 'react';
import type { OpenCase } from '../hooks/use-case.ts';
import type { CheckStep } from '../hooks/use-step.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { OtherChecks } from './other-checks.tsx';
import { OutcomeTable } from './outcome-table.tsx';

/** Why this check, and what each outcome would mean: on a wide screen always, on a phone behind a key. */
export function WhyCheck({ open, step }: { open: OpenCase; step: CheckStep }) {
  const { say, name } = useTexts();
  const [shown, setShown] = useState<'why' | 'others'>();
  const toggle = (what: 'why' | 'others'): void => setShown(shown === what ? undefined : what);
  return (
    <section className="why" data-shown={shown}>
      <div className="how-keys">
        <Key small pressed={shown === 'why'} onPress={() => toggle('why')}>
          {say(shown === 'why' ? 'why-hide' : 'why')}
        </Key>
        <Key small pressed={shown === 'others'} onPress={() => toggle('others')}>
          {say('others')}
        </Key>
      </div>
      <div className="why-body">
        {step.ranked !== undefined && (
          <p>{say('why-line', { minutes: Math.max(1, Math.round(step.ranked.minutes)) })}</p>
        )}
        {step.procedure !== undefined && (
          <p className="second-voice">{say('why-tree', { procedure: name('procedures', step.procedure) })}</p>
        )}
        {step.ranked !== undefined && <OutcomeTable ranked={step.ranked} />}
      </div>
      {shown === 'others' && <OtherChecks open={open} others={step.others} />}
    </section>
  );
}
