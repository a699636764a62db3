import type { Verdict } from '../../diagnosis/types.ts';
import { useServices } from '../hooks/services.tsx';
import { Section } from '../parts/section.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface RepairProps {
  readonly verdict: Verdict;
  /** The site is safe for the hands: the steps of the work may be shown. */
  readonly work: boolean;
}

/** The repair: parts, minutes and caution, and its steps once the site is safe for them. */
export function RepairSection({ verdict, work }: RepairProps) {
  const texts = useTexts();
  const { catalog } = useServices();
  const { say } = texts;
  const words = texts.action(verdict.action);
  const action = catalog.actions[verdict.action];
  const fault = verdict.faults[0] === undefined ? undefined : texts.fault(verdict.faults[0].fault);
  const parts = action?.parts ?? [];
  const minutes = action === undefined ? undefined : say('repair-minutes', action.minutes);
  return (
    <Section
      title={`${say('repair')}: ${words.name}`}
      {...(minutes === undefined ? {} : { beside: minutes })}
    >
      {work ? (
        <ol>
          {words.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      ) : (
        <p>{say('repair-after-safe')}</p>
      )}
      <p>
        <strong>{say('parts')}:</strong>{' '}
        {parts.length === 0 ? say('parts-none') : parts.map((part) => texts.name('parts', part)).join(', ')}
      </p>
      {[words.caution, fault?.caution].map(
        (caution) =>
          caution !== undefined && (
            <p key={caution} className="caution">
              <strong>{say('caution')}:</strong> {caution}
            </p>
          ),
      )}
      {fault !== undefined && fault.rootCauses.length > 0 && (
        <>
          <h3>{say('root-causes')}</h3>
          <ul>
            {fault.rootCauses.map((cause) => (
              <li key={cause}>{cause}</li>
            ))}
          </ul>
        </>
      )}
    </Section>
  );
}
