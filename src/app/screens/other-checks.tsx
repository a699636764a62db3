import type { RankedCheck } from '../../diagnosis/types.ts';
import { formatMinutes } from '../format/time.ts';
import { setName } from '../hooks/set-name.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface OthersProps {
  readonly open: OpenCase;
  readonly others: readonly RankedCheck[];
  /** Called once the wish is stored. */
  onAsked?(): void;
}

/** What else could be read next; the engine leads there, site steps first. */
export function OtherChecks({ open, others, onAsked }: OthersProps) {
  const texts = useTexts();
  const { say } = texts;
  const ask = async (wanted: string): Promise<void> => {
    if (await open.say({ kind: 'visit', type: `asked-for.${wanted}` })) onAsked?.();
  };
  if (others.length === 0) return <p>{say('others-none')}</p>;
  return (
    <div className="others">
      <p className="second-voice">{say('others-hint')}</p>
      <div className="key-column">
        {others.map((one) => (
          <Key key={one.checks.join(' ')} onPress={() => void ask(one.checks[0] ?? '')}>
            <span>{setName(texts, one.checks)}</span>
            <span className="second-voice">
              {say('other-minutes', { minutes: formatMinutes(one.minutes) })}
            </span>
          </Key>
        ))}
      </div>
    </div>
  );
}
