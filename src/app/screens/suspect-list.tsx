import type { CallView } from '../../../machines/call/types.ts';
import type { Suspect } from '../../diagnosis/types.ts';
import { inHundred } from '../format/share.ts';
import { listSuspects, type SuspectGroup } from '../hooks/suspects.ts';
import { useTexts } from '../words/use-texts.tsx';

interface SuspectListProps {
  readonly view: CallView;
  /** Only these, for a verdict that names a group. */
  readonly only?: readonly Suspect[];
}

/** Who stands, by how much in 100; a bracket holds those that one repair serves. */
export function SuspectList({ view, only }: SuspectListProps) {
  const { say } = useTexts();
  const groups: readonly SuspectGroup[] =
    only === undefined ? listSuspects(view).groups : [{ action: only[0]?.action ?? '', suspects: only }];
  if (groups.length === 0) return <p>{say('no-suspects')}</p>;
  return (
    <div className="suspects">
      {groups.map((group, index) => (
        <Group key={group.action} group={group} leads={index === 0} />
      ))}
    </div>
  );
}

function Group({ group, leads }: { group: SuspectGroup; leads: boolean }) {
  const texts = useTexts();
  const isBracketed = group.suspects.length > 1;
  return (
    <div className="suspect-group" data-bracket={isBracketed}>
      <ul>
        {group.suspects.map((suspect, index) => (
          <SuspectRow
            key={`${suspect.fault} ${suspect.variant}`}
            suspect={suspect}
            leads={leads && index === 0}
          />
        ))}
      </ul>
      {isBracketed && (
        <p className="bracket-words">
          {texts.say('one-repair', { action: texts.action(group.action).name })}
        </p>
      )}
    </div>
  );
}

function SuspectRow({ suspect, leads }: { suspect: Suspect; leads: boolean }) {
  const { say, faultName } = useTexts();
  const count = inHundred(suspect.probability);
  return (
    <li className="suspect" data-leads={leads}>
      <span className="suspect-name">{faultName(suspect.fault, suspect.variant)}</span>
      <strong>{count === undefined ? say('under-1-in-100') : say('in-100', { count })}</strong>
      <span className="suspect-scale" aria-hidden="true">
        <span className="suspect-bar" style={{ inlineSize: `${count ?? 0}%` }} />
      </span>
    </li>
  );
}
