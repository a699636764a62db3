import type { Problem } from '../catalog/catalog.ts';

const SHOWN_MOST = 20;

/** One line for each problem, the first twenty: `case.json › events[3] › reading › value[0]: …`. */
export function problemLines(problems: readonly Problem[], name: string): string[] {
  const lines = problems.slice(0, SHOWN_MOST).map((one) => problemLine(one, name));
  const rest = problems.length - lines.length;
  return rest > 0 ? [...lines, `${name}: and ${rest} more`] : lines;
}

function problemLine({ at, message, hint }: Problem, name: string): string {
  return at === 'the file' ? `${name}: ${message}. ${hint}` : `${name} › ${at}: ${message}. ${hint}`;
}
