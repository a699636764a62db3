import type { EventDraft } from '../../records/recorded.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { ChoiceKeys } from '../parts/choice-keys.tsx';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { SiteStrip } from './site-strip.tsx';

/** The three answers that open a call; each is stored when it is tapped. */
export const OPENING = ['what-is-seen', 'breaker-lever', 'gauge-zone'] as const;
type Opening = (typeof OPENING)[number];

interface FirstScreenProps {
  readonly open: OpenCase;
  onBegin(): void;
  onDanger(): void;
}

export function FirstScreen({ open, onBegin, onDanger }: FirstScreenProps) {
  const { say } = useTexts();
  const seen = standing(open, 'what-is-seen');
  return (
    <Frame
      name="seen"
      strip={<SiteStrip open={open} />}
      title={say('seen-title')}
      beside={open.state?.site}
      answer={
        <>
          <Choices open={open} check="what-is-seen" legend={say('seen-title')} hidden />
          <Choices open={open} check="breaker-lever" legend={say('seen-lever')} />
          <Choices open={open} check="gauge-zone" legend={say('seen-gauge')} />
        </>
      }
      keys={
        <>
          <Key sign="unsafe" onPress={onDanger}>
            {say('seen-danger')}
          </Key>
          <Key main disabled={seen === undefined} onPress={onBegin}>
            {say('begin')}
          </Key>
        </>
      }
    />
  );
}

interface ChoicesProps {
  readonly open: OpenCase;
  readonly check: Opening;
  readonly legend: string;
  /** The title of the screen says it already. */
  readonly hidden?: boolean;
}

function Choices({ open, check, legend, hidden = false }: ChoicesProps) {
  const { catalog } = useServices();
  const { answer } = useTexts();
  const reads = catalog.checks[check]?.reads;
  if (reads === undefined || !('answers' in reads)) return null;
  const now = standing(open, check);
  return (
    <ChoiceKeys
      check={check}
      legend={legend}
      legendHidden={hidden}
      choices={reads.answers.map((id) => ({ id, text: answer(check, id) }))}
      {...(now === undefined ? {} : { chosen: now.answer })}
      onChoose={(one) => void open.say(said(check, one, now?.event))}
    />
  );
}

/** A second tap corrects the first; both stay in the trail. */
function said(check: Opening, answer: string, before: string | undefined): EventDraft {
  const event = { kind: 'answer', check, reading: { answer } } as const;
  return before === undefined ? event : { ...event, corrects: before };
}

function standing(open: OpenCase, check: Opening): { event: string; answer: string } | undefined {
  const found = open.state?.answers.find((one) => one.check === check);
  return found !== undefined && 'answer' in found.reading
    ? { event: found.event, answer: found.reading.answer }
    : undefined;
}
