import type { OpenCase } from '../hooks/use-case.ts';
import { useRoute } from '../hooks/use-route.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';

/** The system is none that is known here: said plainly, with the way back to what was filled in. */
export function NotThisToolScreen({ open, exit }: { open: OpenCase; exit: string }) {
  const { say, name } = useTexts();
  const { go } = useRoute();
  return (
    <Frame
      name="not-this-tool"
      strip={<SiteStrip open={open} />}
      title={say('verdict-not-this-tool')}
      lead={say('verdict-not-this-tool-lead')}
      answer={
        <>
          <p>{name('exits', exit)}</p>
          <StepMenu open={open} />
        </>
      }
      keys={
        <Key main onPress={() => go({ screen: 'known', case: open.id, about: [] })}>
          {say('menu-known')}
        </Key>
      }
    />
  );
}
