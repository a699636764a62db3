import type { CallView } from '../../../machines/call/types.ts';
import { ruledOutFaults } from '../hooks/suspects.ts';
import { readingWords } from '../hooks/wording.ts';
import { Row, Rows, Section } from '../parts/section.tsx';
import type { Texts } from '../words/texts.ts';
import { useTexts } from '../words/use-texts.tsx';

/** Each fault that is out of the running, with the reading that put it there. */
export function RuledOutList({ view }: { view: CallView }) {
  const texts = useTexts();
  const faults = ruledOutFaults(view);
  return (
    <Section title={texts.say('ruled-out-by')}>
      {faults.length === 0 && <p>{texts.say('ruled-out-none')}</p>}
      <Rows>
        {faults.map(({ fault, checks }) => (
          <Row
            key={fault}
            sign="ruled-out"
            note={checks.map((check) => reason(texts, view, check)).join(' · ')}
          >
            {texts.fault(fault).name}
          </Row>
        ))}
      </Rows>
    </Section>
  );
}

function reason(texts: Texts, view: CallView, check: string): string {
  const judged = view.judged.find((one) => one.check === check);
  const { name } = texts.check(check);
  return judged === undefined ? name : `${name}: ${readingWords(texts, check, judged.reading)}`;
}
