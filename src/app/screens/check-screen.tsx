import { formatMinutes } from '../format/time.ts';
import { soFar } from '../hooks/case-time.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { useReadingSet } from '../hooks/use-reading-set.ts';
import type { CheckStep } from '../hooks/use-step.ts';
import type { Texts } from '../words/texts.ts';
import { useTexts } from '../words/use-texts.tsx';
import { AnswerHands } from './answer-hands.tsx';
import { CaseBlock } from './case-block.tsx';
import { CheckPicture } from './check-picture.tsx';
import { Frame } from './frame.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepHelp } from './step-help.tsx';
import { StepMenu } from './step-menu.tsx';

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
      beside={stepNumber(texts, readings + 1, minutes)}
      lead={words.ask}
      work={
        <>
          <CheckPicture open={open} check={check.id} />
          <CaseBlock open={open} />
        </>
      }
      answer={
        <>
          <StepHelp open={open} step={step} words={words} />
          <StepMenu open={open} />
        </>
      }
      hands={<AnswerHands open={open} set={set} />}
    />
  );
}

function stepNumber({ say }: Texts, count: number, minutes: number): string {
  return minutes === 0
    ? say('step-number', { count })
    : say('step-number-minutes', { count, minutes: formatMinutes(minutes) });
}
