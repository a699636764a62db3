import { formatMinutes } from '../format/time.ts';
import { soFar } from '../hooks/case-time.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { useRoute } from '../hooks/use-route.ts';
import { Key } from '../parts/key.tsx';
import { Section } from '../parts/section.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { RuledOutList } from './ruled-out-list.tsx';
import { SiteStrip } from './site-strip.tsx';
import { SuspectList } from './suspect-list.tsx';
import { TrailList } from './trail-list.tsx';

/** Who stands, who is ruled out and by what, and the way that led here. */
export function SuspectsScreen({ open }: { open: OpenCase }) {
  const { say } = useTexts();
  const { go } = useRoute();
  const { view, state } = open;
  if (view === undefined || state === undefined) return null;
  const { readings, minutes } = soFar(state);
  return (
    <Frame
      name="suspects"
      strip={<SiteStrip open={open} />}
      title={say('suspects')}
      beside={say('so-far', {
        count: say(readings === 1 ? 'reading-count' : 'readings-count', { count: readings }),
        minutes: formatMinutes(minutes),
      })}
      first="answer"
      answer={
        <>
          <SuspectList view={view} />
          <RuledOutList view={view} />
        </>
      }
      work={
        <Section title={say('all-readings')}>
          <TrailList open={open} readingsOnly />
        </Section>
      }
      keys={
        <>
          <Key onPress={() => go({ screen: 'trail', case: open.id, about: [] })}>{say('all-readings')}</Key>
          <Key main onPress={() => go({ screen: 'step', case: open.id, about: [] })}>
            {say('to-step')}
          </Key>
        </>
      }
    />
  );
}
