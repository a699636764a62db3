import type { RankedCheck } from '../../diagnosis/types.ts';
import { OutcomeSign } from '../parts/outcome-sign.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** What each outcome of the next check would mean: the suspects that would then lead. */
export function OutcomeTable({ ranked }: { ranked: RankedCheck }) {
  const texts = useTexts();
  const check = ranked.checks[0] ?? '';
  return (
    <table className="outcomes">
      <thead>
        <tr>
          <th scope="col">{texts.say('if-it-reads')}</th>
          <th scope="col">{texts.say('then-lead')}</th>
        </tr>
      </thead>
      <tbody>
        {ranked.outcomes.map(({ outcome, leads }) => (
          <tr key={outcome}>
            <th scope="row">
              <OutcomeSign outcome={outcome} /> {texts.answer(check, outcome)}
            </th>
            <td>
              {leads.length === 0
                ? texts.say('nothing-leads')
                : leads.map((fault) => texts.fault(fault).name).join(', ')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
