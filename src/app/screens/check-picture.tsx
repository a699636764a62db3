import { boxOf } from '../hooks/box-of.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { Picture } from '../picture/picture.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** This installation with the two probe points marked, and both points named in words. */
export function CheckPicture({ open, check }: { open: OpenCase; check: string }) {
  const texts = useTexts();
  const { catalog } = useServices();
  const record = catalog.checks[check];
  const box = boxOf(catalog, open.state?.installation);
  const { points = [], name } = texts.check(check);
  const place = record?.site.place;
  const drawn =
    record !== undefined &&
    box !== undefined &&
    open.view !== undefined &&
    place !== undefined &&
    !('look' in record.at);
  return (
    <>
      {drawn && (
        <Picture
          pieces={box.pieces.flatMap((piece) => catalog.netlists[piece] ?? [])}
          focus={place}
          site={open.view.site}
          at={record.at}
          unit={'unit' in record.reads ? texts.name('units', record.reads.unit) : ''}
          words={{
            sheet: (sheet) => (sheet === 'box' ? texts.name('boxes', box.id) : texts.name('places', sheet)),
            live: texts.say('picture-live'),
            lifted: texts.say('picture-lifted'),
          }}
          spoken={[name, ...points].join('; ')}
        />
      )}
      <ol className="points">
        {points.map((point) => (
          <li key={point}>{point}</li>
        ))}
      </ol>
    </>
  );
}
