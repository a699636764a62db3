import { signOf } from '../format/unit.ts';
import { boxOf } from '../hooks/box-of.ts';
import { knownValue } from '../hooks/known-lines.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import type { Lengths } from '../picture/names.ts';
import { Picture } from '../picture/picture.tsx';
import type { Texts } from '../words/texts.ts';
import { useTexts } from '../words/use-texts.tsx';

/** This installation with the probe points marked; what is only looked at or heard has no picture. */
export function CheckPicture({ open, check }: { open: OpenCase; check: string }) {
  const texts = useTexts();
  const { catalog } = useServices();
  const { state, view } = open;
  const record = catalog.checks[check];
  const box = boxOf(catalog, state?.installation);
  if (record === undefined || box === undefined || view === undefined || state === undefined) return null;
  const { place } = record.site;
  if (place === undefined || 'look' in record.at) return null;
  const { points = [], name } = texts.check(check);
  const run = (question: 'buried' | 'drop'): string | undefined =>
    knownValue(texts, catalog, { state, question });
  return (
    <Picture
      pieces={box.pieces.flatMap((piece) => catalog.netlists[piece] ?? [])}
      focus={place}
      site={view.site}
      at={record.at}
      unit={'unit' in record.reads ? signOf(record.reads.unit) : ''}
      words={pictureWords(texts)}
      lengths={lengthsOf(run('buried'), run('drop'))}
      title={place === 'box' ? texts.name('families', box.family) : texts.name('places', place)}
      note={texts.say(`picture-${view.site.places[place]}`)}
      points={points}
      spoken={[name, ...points].join('; ')}
    />
  );
}

function pictureWords({ say, name }: Texts) {
  return {
    sheet: (sheet: string) => name('places', sheet),
    live: say('picture-live'),
    lifted: say('picture-lifted'),
    split: say('picture-split'),
    off: say('picture-off'),
    locked: say('picture-locked'),
  };
}

function lengthsOf(buried: string | undefined, drop: string | undefined): Lengths {
  return { ...(buried === undefined ? {} : { buried }), ...(drop === undefined ? {} : { drop }) };
}
