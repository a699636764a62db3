import type { Verdict } from '../../diagnosis/types.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { useRoute } from '../hooks/use-route.ts';
import { verdictHeading } from '../hooks/verdict-words.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { EvidenceTable } from './evidence-table.tsx';
import { Frame } from './frame.tsx';
import { ProofList } from './proof-list.tsx';
import { RepairSection } from './repair-section.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';
import { SuspectList } from './suspect-list.tsx';

/** What is wrong, what proves it, what would overturn it, the repair and its proof. */
export function VerdictScreen({ open, verdict }: { open: OpenCase; verdict: Verdict }) {
  const texts = useTexts();
  const { say } = texts;
  const { title, lead } = verdictHeading(texts, verdict);
  const fault = verdict.faults[0] === undefined ? undefined : texts.fault(verdict.faults[0].fault);
  const isRepair = verdict.kind === 'named' || verdict.kind === 'group';
  return (
    <Frame
      name={`verdict ${verdict.action}`}
      strip={<SiteStrip open={open} />}
      title={title}
      lead={<strong>{lead}</strong>}
      first="work"
      work={
        <>
          {verdict.kind === 'named' && fault !== undefined && fault.technician !== '' && (
            <p>{fault.technician}</p>
          )}
          {verdict.kind === 'group' && open.view !== undefined && (
            <SuspectList view={open.view} only={verdict.faults} />
          )}
          <EvidenceTable evidence={verdict.evidence} />
          {fault !== undefined && fault.overturn !== '' && (
            <p className="overturn">
              <strong>{say('overturn')}</strong> {fault.overturn}
            </p>
          )}
          {verdict.causes.map(({ fault: cause, action }) => (
            <p key={cause}>
              <strong>{say('look-for-cause')}</strong> {texts.fault(cause).name}: {texts.action(action).name}
            </p>
          ))}
          {verdict.owed.length > 0 && (
            <p>
              <strong>{say('owed')}:</strong>{' '}
              {verdict.owed.map((rule) => texts.name('rules', rule)).join(' · ')}
            </p>
          )}
        </>
      }
      answer={
        <>
          {isRepair && <RepairSection verdict={verdict} work={false} />}
          {isRepair && <ProofList verdict={verdict} done={[]} site={open.view?.site} />}
          <StepMenu open={open} />
        </>
      }
      keys={<VerdictKeys open={open} verdict={verdict} />}
    />
  );
}

function VerdictKeys({ open, verdict }: { open: OpenCase; verdict: Verdict }) {
  const { say } = useTexts();
  const { go } = useRoute();
  const { takeAgain } = verdict;
  return (
    <>
      <Key onPress={() => go({ screen: 'report', case: open.id, about: [] })}>{say('report')}</Key>
      {takeAgain !== undefined ? (
        <Key main onPress={() => go({ screen: 'reading', case: open.id, about: [takeAgain] })}>
          {say('take-again')}
        </Key>
      ) : verdict.kind === 'named' || verdict.kind === 'group' ? (
        <Key main onPress={() => void open.say({ kind: 'visit', type: 'consent-given' })}>
          {say('begin-repair')}
        </Key>
      ) : (
        <Key main onPress={() => void open.say({ kind: 'visit', type: 'closed' })}>
          {say('proof-close')}
        </Key>
      )}
    </>
  );
}
