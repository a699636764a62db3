import { optionFact, optionName } from '../hooks/installation-options.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { SiteStrip } from './site-strip.tsx';
import { StepMenu } from './step-menu.tsx';
import type { To } from './step-screen.tsx';

interface AskProps {
  readonly open: OpenCase;
  readonly field: string;
  readonly options: readonly string[];
  readonly to: To;
}

/** One fact of the installation that the next readings rest on; "do not know" is an answer. */
export function AskInstallationScreen({ open, field, options, to }: AskProps) {
  const texts = useTexts();
  const { catalog } = useServices();
  const { say } = texts;
  return (
    <Frame
      name={`ask ${field}`}
      strip={<SiteStrip open={open} />}
      title={say(field === 'motor' ? 'ask-motor' : 'ask-box')}
      lead={say('more-known')}
      answer={
        <>
          <div className="key-column">
            {options.map((option) => (
              <Key
                key={option}
                onPress={() =>
                  void open.say(optionFact(catalog, open.state?.installation ?? {}, { field, option }))
                }
              >
                {optionName(texts, catalog, { field, option })}
              </Key>
            ))}
          </div>
          <StepMenu open={open} />
        </>
      }
      keys={
        <>
          <Key onPress={() => to('known')}>{say('known-title')}</Key>
          <Key main onPress={() => void open.say({ kind: 'visit', type: `${field}-unknown` })}>
            {say('do-not-know')}
          </Key>
        </>
      }
    />
  );
}
