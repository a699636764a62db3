import { viewCall } from '../../../machines/call/call.ts';
import type { CallView, NextStep } from '../../../machines/call/types.ts';
import { caseInput } from '../case-input.ts';
import type { Answer, Around, Command, Given } from '../command.ts';
import {
  checkData,
  type Describe,
  describing,
  judgedData,
  rankedData,
  stepData,
  suspectData,
  verdictData,
} from '../describe.ts';

/** What to do next in a case, why, and what is suspected: the answer that the screen gives, as data. */
export const next: Command = {
  usage: 'next CASE.json',
  about: 'the verdict, or the next check with why, its window and the missing site steps',
  run,
};

async function run(given: Given, around: Around): Promise<Answer> {
  const input = await caseInput(given, around);
  if ('answer' in input) return input.answer;
  const view = viewCall(around.catalog, input.state);
  return { kind: 'data', data: { case: input.state.case, ...viewData(describing(around.catalog), view) } };
}

function viewData(describe: Describe, view: CallView) {
  const suspects = view.suspects.map((one) => suspectData(describe, one));
  return {
    contentVersion: view.contentVersion,
    visit: view.visit,
    site: view.site.word,
    next: nextData(describe, view.next, view),
    suspects: suspects.filter(({ probability }) => probability > 0),
    ruledOut: suspects.filter(({ probability }) => probability === 0),
    judged: view.judged.map(judgedData),
    takeAgain: view.surprise,
    assumed: view.assumed,
  };
}

function nextData(describe: Describe, step: NextStep, view: CallView) {
  switch (step.kind) {
    case 'site-steps':
      return {
        kind: step.kind,
        missingSiteSteps: step.steps.map((one) => stepData(describe, one)),
        checks: step.towards.map((check) => checkData(describe, check, view.windows[check])),
        why: step.ranked && rankedData(step.ranked),
      };
    case 'check':
      return {
        kind: step.kind,
        procedure: step.procedure,
        missingSiteSteps: [],
        checks: step.checks.map(({ check, window }) => checkData(describe, check, window)),
        why: step.ranked && rankedData(step.ranked),
        others: step.others.map(rankedData),
      };
    case 'verdict':
      return { kind: step.kind, verdict: verdictData(describe, step.verdict) };
    case 'repair':
      return {
        kind: step.kind,
        missingSiteSteps: step.steps.map((one) => stepData(describe, one)),
        refer: step.refer,
        verdict: verdictData(describe, step.verdict),
      };
    case 'proof':
      return {
        kind: step.kind,
        missingSiteSteps: step.steps.map((one) => stepData(describe, one)),
        check: step.check && checkData(describe, step.check.check, step.check.window),
        done: step.done.map(judgedData),
        verdict: verdictData(describe, step.verdict),
      };
    case 'closed':
      return { kind: step.kind, owed: step.owed, verdict: verdictData(describe, step.verdict) };
    case 'ask-installation':
    case 'stopped':
    case 'not-this-tool':
      return step;
    default: {
      const never: never = step;
      return never;
    }
  }
}
