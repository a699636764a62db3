import { caseInput } from '../case-input.ts';
import { type Answer, type Around, badInput, type Command, type Given } from '../command.ts';
import { checkData, describing } from '../describe.ts';
import { installationData, NOTHING_FITS, readyInstallation } from '../installation.ts';

/** What every check should read on the installation of a case, sound, with the parts of each window. */
export const expect: Command = {
  usage: 'expect CASE.json',
  about: 'every expected window of this installation, with its parts and sources',
  run,
};

async function run(given: Given, around: Around): Promise<Answer> {
  const input = await caseInput(given, around);
  if ('answer' in input) return input.answer;
  const ready = readyInstallation(around, input.state);
  if (ready === undefined) return badInput(NOTHING_FITS);
  const describe = describing(around.catalog);
  const windows = ready.checks.map(({ id }) => checkData(describe, id, ready.windows[id]));
  const { case: caseId } = input.state;
  return {
    kind: 'data',
    data: { case: caseId, contentVersion: around.catalog.version, ...installationData(ready), windows },
  };
}
