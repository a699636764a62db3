import type { RankedCheck } from '../../diagnosis/types.ts';
import { formatMinutes } from '../format/time.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface OthersProps {
  readonly open: OpenCase;
  readonly others: readonly RankedCheck[];
}

/** What else could be read next; the engine leads there, site steps first. */
export function OtherChecks({ open, others }: OthersProps) {
  const { say, check } = useTexts();
  if (others.length === 0) return <p>{say('others-none')}</p>;
  return (
    <div className="others">
      <p className="second-voice">{say('others-hint')}</p>
      <div className="key-column">
        {others.map((one) => (
          <Key
            key={one.checks.join(' ')}
            onPress={() => void open.say({ kind: 'visit', type: `asked-for.${one.checks[0] ?? ''}` })}
          >
            <span>{one.checks.map((id) => check(id).name).join(', ')}</span>
            <span className="second-voice">
              {say('other-minutes', { minutes: formatMinutes(one.minutes) })}
            </span>
          </Key>
        ))}
      </div>
    </div>
  );
}
