import type { OpenCase } from '../hooks/use-case.ts';
import { useTexts } from '../words/use-texts.tsx';

/** This installation with the two probe points marked. */
export function CheckPicture({ check }: { open: OpenCase; check: string }) {
  const { points = [] } = useTexts().check(check);
  return (
    <ol className="points">
      {points.map((point) => (
        <li key={point}>{point}</li>
      ))}
    </ol>
  );
}
