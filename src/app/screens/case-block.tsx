import type { Question } from '../hooks/installation-facts.ts';
import { knownValue } from '../hooks/known-lines.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { TitleBlock } from '../parts/section.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** The title block of the drawing; there is room for it on a wide screen only. */
export function CaseBlock({ open }: { open: OpenCase }) {
  const texts = useTexts();
  const { catalog } = useServices();
  const { say } = texts;
  const { state } = open;
  if (state === undefined) return null;
  const value = (question: Question): string =>
    knownValue(texts, catalog, { state, question }) ?? say('unknown');
  return (
    <div className="wide-only">
      <TitleBlock
        cells={[
          { name: say('block-site'), text: state.site ?? say('no-name') },
          { name: say('block-motor'), text: value('motor') },
          { name: say('block-box'), text: value('box') },
          { name: say('block-cable'), text: `${value('buried')} + ${value('drop')}` },
          { name: say('block-case'), text: open.id },
        ]}
      />
    </div>
  );
}
