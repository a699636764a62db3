import type { OpenCase } from '../hooks/use-case.ts';
import { useRoute } from '../hooks/use-route.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { SiteStrip } from './site-strip.tsx';
import { TrailList } from './trail-list.tsx';

/** Everything that was said and read, corrected readings included. */
export function TrailScreen({ open }: { open: OpenCase }) {
  const { say } = useTexts();
  const { go } = useRoute();
  return (
    <Frame
      name="trail"
      strip={<SiteStrip open={open} />}
      title={say('trail')}
      lead={say('trail-hint')}
      answer={<TrailList open={open} />}
      keys={
        <Key main onPress={() => go({ screen: 'step', case: open.id, about: [] })}>
          {say('to-step')}
        </Key>
      }
    />
  );
}
