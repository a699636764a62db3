import type { z } from 'zod';
import type { Problem } from './catalog.ts';

/**
 * First ring: what zod found wrong with one record, as problems whose path a person can follow.
 *
 * Where a field may take several forms zod reports all of them; the form that was most likely meant
 * speaks alone, so that a volt in a list of ohms is called a wrong unit and not "invalid input".
 */
type Issue = z.core.$ZodIssue;

export function shapeProblems(at: string, issues: readonly Issue[]): Problem[] {
  return issues.flatMap((issue) => problemsOf(at, issue));
}

function problemsOf(record: string, issue: Issue): Problem[] {
  const at = issue.path.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : `${text} › ${String(step)}`),
    record,
  );
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        at: `${at} › ${key}`,
        message: 'there is no such field',
        hint: 'remove it, or mend its name',
      }));
    case 'invalid_value':
      return [{ at, message: issue.message, hint: `write one of ${issue.values.map(String).join(', ')}` }];
    case 'invalid_union': {
      const [closest] = [...issue.errors].sort((one, other) => strangeness(one) - strangeness(other));
      if (closest !== undefined && closest.length > 0) return shapeProblems(at, closest);
      return [{ at, message: issue.message, hint: HINT }];
    }
    default:
      return [{ at, message: issue.message, hint: HINT }];
  }
}

const HINT = 'compare with the shape in src/schema; `npm run schema` writes it for the editor';

/** How little a value looks like a form: fields of the form it lacks, fields it has too many. */
function strangeness(issues: readonly Issue[]): number {
  return issues.reduce((sum, issue) => {
    if (issue.code === 'unrecognized_keys') return sum + issue.keys.length;
    return sum + (issue.path.length <= 1 && issue.code.startsWith('invalid') ? 1 : 0);
  }, 0);
}
