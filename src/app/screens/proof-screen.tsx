import type { NextStep } from '../../../machines/call/types.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { CheckScreen } from './check-screen.tsx';
import { Frame } from './frame.tsx';
import { ProofList } from './proof-list.tsx';
import { SiteStepsScreen } from './site-steps-screen.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';

type Proof = Extract<NextStep, { kind: 'proof' }>;

/** After the repair: back into service, then the readings as left, one by one, then the close. */
export function ProofScreen({ open, proof }: { open: OpenCase; proof: Proof }) {
  const { say } = useTexts();
  if (open.view === undefined) return null;
  if (proof.steps.length > 0) {
    return (
      <SiteStepsScreen
        open={open}
        steps={proof.steps}
        checks={[]}
        site={open.view.site}
        then={say('site-then-proof')}
      />
    );
  }
  const { check } = proof;
  if (check !== undefined) {
    const step = {
      kind: 'check',
      checks: [check.check],
      procedure: undefined,
      ranked: undefined,
      others: [],
    } as const;
    return <CheckScreen open={open} step={step} asLeft onComplete={() => undefined} />;
  }
  return <ProofDone open={open} proof={proof} />;
}

function ProofDone({ open, proof }: { open: OpenCase; proof: Proof }) {
  const texts = useTexts();
  const { say } = texts;
  const odd = proof.done.filter(
    (one) => one.outcome !== 'as-expected' && one.outcome !== 'not-taken' && isNumber(one.reading),
  );
  return (
    <Frame
      name="proof done"
      strip={<SiteStrip open={open} />}
      title={say('proof-title')}
      lead={say('proof-done')}
      answer={
        <>
          <ProofList verdict={proof.verdict} done={proof.done} site={open.view?.site} />
          {proof.cannotRead.length > 0 && (
            <p className="caution">
              {say('proof-cannot-read', {
                checks: proof.cannotRead.map((check) => texts.check(check).name).join(', '),
              })}
            </p>
          )}
          {odd.map(({ check }) => (
            <p key={check} className="caution">
              {say('proof-odd', { check: texts.check(check).name })}
            </p>
          ))}
          <StepMenu open={open} />
        </>
      }
      keys={
        <>
          <Key onPress={() => void open.say({ kind: 'visit', type: 'repair-did-not-help' })}>
            {say('no-help')}
          </Key>
          <Key main onPress={() => void open.say({ kind: 'visit', type: 'closed' })}>
            {say('proof-close')}
          </Key>
        </>
      }
    />
  );
}

const isNumber = (reading: object): boolean => 'value' in reading;
