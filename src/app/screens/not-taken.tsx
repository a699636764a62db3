import { type NotTakenReason, notTakenReason } from '../../schema/case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

interface NotTakenProps {
  onReason(reason: NotTakenReason): void;
  onBack(): void;
}

/** Why a reading cannot be had. A reason is an answer too: it is kept, and the call goes on. */
export function NotTaken({ onReason, onBack }: NotTakenProps) {
  const { say, name } = useTexts();
  return (
    <section className="not-taken" aria-label={say('not-taken-title')}>
      <h2>{say('not-taken-title')}</h2>
      <p className="second-voice">{say('not-taken-hint')}</p>
      <div className="key-grid">
        {notTakenReason.options.map((reason) => (
          <Key key={reason} onPress={() => onReason(reason)}>
            {name('not-taken', reason)}
          </Key>
        ))}
      </div>
      <Key onPress={onBack}>{say('back')}</Key>
    </section>
  );
}
