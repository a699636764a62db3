import { soFar } from '../hooks/case-time.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { useReadingSet } from '../hooks/use-reading-set.ts';
import type { CheckStep } from '../hooks/use-step.ts';
import { useTexts } from '../words/use-texts.tsx';
import { AnswerHands } from './answer-hands.tsx';
import { CheckPicture } from './check-picture.tsx';
import { Frame } from './frame.tsx';
import { HowList } from './how-list.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';
import { WhyCheck } from './why-check.tsx';

interface CheckProps {
  readonly open: OpenCase;
  readonly step: CheckStep;
  /** True in the proof run: the readings are the next visit's baseline. */
  readonly asLeft: boolean;
  onComplete(checks: readonly string[]): void;
}

/** One question: what is done, where the probes go, what to expect, and the keys to say what it read. */
export function CheckScreen({ open, step, asLeft, onComplete }: CheckProps) {
  const texts = useTexts();
  const { catalog } = useServices();
  const set = useReadingSet({ open, checks: step.checks, asLeft, onComplete: onComplete });
  const active = set.active ?? step.checks[0];
  const check = active === undefined ? undefined : catalog.checks[active];
  if (check === undefined || open.state === undefined) return null;
  const words = texts.check(check.id);
  const { readings, minutes } = soFar(open.state);
  return (
    <Frame
      name={`check ${step.checks.join(' ')}`}
      check={check.id}
      strip={<SiteStrip open={open} />}
      title={words.name}
      beside={texts.say('step-number', { count: readings + 1, minutes })}
      lead={words.ask}
      work={<CheckPicture open={open} check={check.id} />}
      answer={
        <>
          <HowList lines={[...words.how, ...(words.spoils ?? [])]} language={texts.language} />
          <WhyCheck open={open} step={step} />
          <StepMenu open={open} />
        </>
      }
      hands={<AnswerHands open={open} set={set} />}
    />
  );
}
