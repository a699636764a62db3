import type { OpenCase } from '../hooks/use-case.ts';
import { useRoute } from '../hooks/use-route.ts';
import { useStop } from '../hooks/use-stop.ts';
import { Key } from '../parts/key.tsx';
import { Strip } from '../parts/strip.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { SaveKey } from './save-key.tsx';
import { TrailList } from './trail-list.tsx';

/** The engine or the store failed: what it said, every reading kept, and no advice. */
export function NoAdvice({ open, title }: { open: OpenCase; title: string }) {
  const { say } = useTexts();
  const { go } = useRoute();
  const stop = useStop(open);
  return (
    <Frame
      name="no-advice"
      strip={
        <Strip
          word="live"
          title={say('strip-live')}
          line={say('strip-nothing-opened')}
          stopText={say('stop')}
          onStop={stop}
        />
      }
      title={title}
      lead={open.problem}
      answer={
        open.events.length > 0 && (
          <>
            <p className="caution">{say('no-advice-kept')}</p>
            <TrailList open={open} />
            <SaveKey caseId={open.id} />
          </>
        )
      }
      keys={
        <>
          <Key onPress={() => go({ screen: 'cases' })}>{say('to-cases')}</Key>
          <Key main onPress={() => void open.again()}>
            {say('try-again')}
          </Key>
        </>
      }
    />
  );
}
