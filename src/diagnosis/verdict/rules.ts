import type { Action } from '../../schema/fault.ts';
import type { HardRule } from '../../schema/smaller.ts';
import type { EvidenceLine } from '../types.ts';

/**
 * The hard rules: what must have been read before a repair is named, whatever its probability.
 * The rules are content; this says which of them are still owed, and by which checks.
 */
export interface Owed {
  readonly rule: string;
  /** Checks that would serve, the ones that exist on this installation. */
  readonly checks: readonly string[];
}

export interface RuleSubject {
  readonly action: Action;
  /** Faults that hold nearly all of the action's probability. */
  readonly faults: readonly string[];
  readonly evidence: readonly EvidenceLine[];
  readonly noBuriedRun: boolean;
  /** Does the check exist on this installation? */
  applies(check: string): boolean;
}

export function owedRules(rules: readonly HardRule[], subject: RuleSubject): Owed[] {
  const owed = rules
    .filter((rule) => concerns(rule, subject))
    .flatMap((rule) =>
      rule.needs
        .map((group) => group.filter((check) => subject.applies(check)))
        .filter((group) => group.length > 0 && !group.some((check) => counts(rule, subject, check)))
        .map((checks) => ({ rule: rule.id, checks })),
    );
  return restsOnMemoryAlone(subject) ? [...owed, { rule: 'not-on-memory-alone', checks: [] }] : owed;
}

function concerns(rule: HardRule, subject: RuleSubject): boolean {
  if (rule.unlessNoBuriedRun === true && subject.noBuriedRun) return false;
  return 'pull' in rule.when
    ? subject.action.pull
    : rule.when.faults.some((fault) => subject.faults.includes(fault));
}

function counts(rule: HardRule, subject: RuleSubject, check: string): boolean {
  const line = subject.evidence.find((one) => one.check === check);
  if (line === undefined || line.outcome === 'not-taken' || line.outcome === 'unstable') return false;
  if (rule.outcomes !== undefined && !rule.outcomes.includes(line.outcome)) return false;
  return rule.mustRaiseOdds === true ? line.weight > 0 : true;
}

const CARRIES = Math.log(2);

/**
 * A figure known only from memory condemns no part: some reading that carries the verdict must need
 * no table (open, none, a category, a fixed band), or rest on a printed one.
 */
function restsOnMemoryAlone(subject: RuleSubject): boolean {
  if (!subject.action.pull) return false;
  const carrying = subject.evidence.filter((line) => line.weight > CARRIES);
  return (
    carrying.length > 0 &&
    carrying.every((line) => line.window.fromMemory && (line.outcome === 'low' || line.outcome === 'high'))
  );
}
