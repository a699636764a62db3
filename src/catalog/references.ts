import type { Check } from '../schema/check.ts';
import type { Fault } from '../schema/fault.ts';
import type { Catalog, Problem } from './catalog.ts';
import { evidencedRecords } from './evidence.ts';
import { namesIn, namesOfEdit, namesOfPoint } from './reach.ts';
import { wordProblems } from './word-references.ts';

/** Second ring: every id that a record names exists, and every text that a person will read is there. */
export function referenceProblems(catalog: Catalog): Problem[] {
  return [
    ...sourceProblems(catalog),
    ...pieceProblems(catalog),
    ...faultProblems(catalog),
    ...checkProblems(catalog),
    ...actionProblems(catalog),
    ...ruleProblems(catalog),
    ...sequenceProblems(catalog),
    ...Object.values(catalog.words).flatMap((words) => wordProblems(catalog, words)),
  ];
}

interface Naming {
  readonly at: string;
  readonly ids: readonly string[];
  readonly among: Readonly<Record<string, unknown>>;
  /** Folder where the named records live. */
  readonly folder: string;
}

function missing({ at, ids, among, folder }: Naming): Problem[] {
  return ids
    .filter((id) => !Object.hasOwn(among, id))
    .map((id) => ({
      at,
      message: `${folder} has no ${id}`,
      hint: `add content/${folder}/${id}.json or mend the name`,
    }));
}

function sourceProblems({ sources, ...catalog }: Catalog): Problem[] {
  return evidencedRecords({ sources, ...catalog }).flatMap(({ at, record }) =>
    record.from.flatMap(({ source }, index) =>
      missing({ at: `${at} › from[${index}] › source`, ids: [source], among: sources, folder: 'sources' }),
    ),
  );
}

function pieceProblems(catalog: Catalog): Problem[] {
  const { netlists, elements, motors } = catalog;
  return [
    ...Object.values(catalog.boxes).flatMap(({ id, pieces }) =>
      missing({ at: `boxes/${id} › pieces`, ids: pieces, among: netlists, folder: 'netlists' }),
    ),
    ...Object.values(netlists).flatMap(({ id, parts }) =>
      parts.flatMap(({ kind }, index) => {
        const at = `netlists/${id} › parts[${index}] › kind`;
        return missing({ at, ids: [kind], among: elements, folder: 'elements' });
      }),
    ),
    ...Object.values(catalog.fittings).flatMap(({ id, replaces = {} }) =>
      missing({
        at: `fittings/${id} › replaces`,
        ids: Object.entries(replaces).flat(),
        among: netlists,
        folder: 'netlists',
      }),
    ),
    ...Object.keys(catalog.motorModels).flatMap((id) =>
      missing({ at: `motor-models/${id} › id`, ids: [id], among: motors, folder: 'motors' }),
    ),
  ];
}

/** Nodes and parts that stand in no netlist at all. */
function unknownNames(at: string, names: readonly string[], known: ReadonlySet<string>): Problem[] {
  return names
    .filter((name) => !known.has(name))
    .map((name) => ({
      at,
      message: `no netlist has ${name}`,
      hint: 'name a node or part of content/netlists',
    }));
}

function faultProblems(catalog: Catalog): Problem[] {
  const known = namesIn(Object.values(catalog.netlists));
  return Object.values(catalog.faults).flatMap((fault) => [
    ...variantProblems(fault, known),
    ...signProblems(fault, catalog),
    ...faultLinks(fault, catalog),
  ]);
}

function variantProblems(fault: Fault, known: ReadonlySet<string>): Problem[] {
  return fault.variants.flatMap(({ edits, needs = [], without = [] }, index) => {
    const names = [...edits.flatMap(namesOfEdit), ...needs, ...without];
    return unknownNames(`faults/${fault.id} › variants[${index}]`, names, known);
  });
}

function signProblems(fault: Fault, { checks }: Catalog): Problem[] {
  return (fault.signs ?? []).flatMap((sign, index) => {
    const at = `faults/${fault.id} › signs[${index}]`;
    const check = checks[sign.check];
    if (check === undefined)
      return missing({ at: `${at} › check`, ids: [sign.check], among: checks, folder: 'checks' });
    return unknownAnswers(`${at} › answer`, check, [sign.answer]);
  });
}

function unknownAnswers(at: string, check: Check, answers: readonly string[]): Problem[] {
  const known: readonly string[] = 'answers' in check.reads ? check.reads.answers : [];
  return answers
    .filter((answer) => !known.includes(answer))
    .map((answer) => ({
      at,
      message: `${check.id} has no answer ${answer}`,
      hint: known.length > 0 ? `one of ${known.join(', ')}` : 'it reads a number',
    }));
}

function faultLinks(fault: Fault, { circumstances, faults, actions, fittings }: Catalog): Problem[] {
  const at = `faults/${fault.id}`;
  const wanted = fault.fitting === undefined ? [] : [fault.fitting];
  const { action, actionInPlugApart, tendsToCause = [], prior } = fault;
  const happened = (prior.times ?? []).map(({ circumstance }) => circumstance);
  return [
    ...missing({ at: `${at} › prior › times`, ids: happened, among: circumstances, folder: 'circumstances' }),
    ...missing({ at: `${at} › fitting`, ids: wanted, among: fittings, folder: 'fittings' }),
    ...missing({ at: `${at} › tendsToCause`, ids: tendsToCause, among: faults, folder: 'faults' }),
    ...missing({ at: `${at} › action`, ids: [action], among: actions, folder: 'actions' }),
    ...missing({
      at: `${at} › actionInPlugApart`,
      ids: actionInPlugApart === undefined ? [] : [actionInPlugApart],
      among: actions,
      folder: 'actions',
    }),
  ];
}

function checkProblems(catalog: Catalog): Problem[] {
  const known = namesIn(Object.values(catalog.netlists));
  const sets = new Map(Object.values(catalog.checks).map((check) => [check.set ?? check.id, check]));
  const orSets = { ...catalog.checks, ...Object.fromEntries(sets) };
  return Object.values(catalog.checks).flatMap((check) => [
    ...checkLinks(check, catalog, orSets),
    ...unknownNames(
      `checks/${check.id} › at`,
      [...namesOfPoint(check.at), ...(check.needs ?? []), ...(check.without ?? [])],
      known,
    ),
    ...answersOfCheck(check),
  ]);
}

function checkLinks(check: Check, catalog: Catalog, orSets: Readonly<Record<string, Check>>): Problem[] {
  const at = `checks/${check.id}`;
  const { instruments, hazards, checks, fittings } = catalog;
  const wanted = check.fitting === undefined ? [] : [check.fitting];
  const after = (check.after ?? []).flatMap((one) => (typeof one === 'string' ? [one] : one.checks));
  const seen = (check.after ?? []).flatMap((one) => (typeof one === 'string' ? [] : [one.seen]));
  const summed = 'sumTest' in check.predict ? check.predict.sumTest : [];
  return [
    ...missing({
      at: `${at} › instrument`,
      ids: [check.instrument],
      among: instruments,
      folder: 'instruments',
    }),
    ...missing({ at: `${at} › fitting`, ids: wanted, among: fittings, folder: 'fittings' }),
    ...missing({ at: `${at} › hazards`, ids: check.hazards, among: hazards, folder: 'hazards' }),
    ...missing({ at: `${at} › after`, ids: after, among: orSets, folder: 'checks' }),
    ...missing({ at: `${at} › predict`, ids: summed, among: checks, folder: 'checks' }),
    ...seen.flatMap((sight) => {
      const seenCheck = checks[sight.check];
      if (seenCheck !== undefined) return unknownAnswers(`${at} › after`, seenCheck, sight.answers);
      return missing({ at: `${at} › after`, ids: [sight.check], among: checks, folder: 'checks' });
    }),
  ];
}

/** What a check expects, and what is usual, are answers of its own. */
function answersOfCheck(check: Check): Problem[] {
  const { expected, usual = [] } = check;
  const at = `checks/${check.id}`;
  return [
    ...unknownAnswers(`${at} › expected`, check, expected === undefined ? [] : [expected]),
    ...unknownAnswers(
      `${at} › usual`,
      check,
      usual.map(({ answer }) => answer),
    ),
  ];
}

function actionProblems({ actions, parts, checks }: Catalog): Problem[] {
  return Object.values(actions).flatMap((action) => [
    ...missing({ at: `actions/${action.id} › parts`, ids: action.parts, among: parts, folder: 'parts' }),
    ...missing({ at: `actions/${action.id} › proof`, ids: action.proof, among: checks, folder: 'checks' }),
  ]);
}

function ruleProblems({ rules, checks, faults }: Catalog): Problem[] {
  return Object.values(rules).flatMap(({ id, needs, when }) => [
    ...missing({ at: `rules/${id} › needs`, ids: needs.flat(), among: checks, folder: 'checks' }),
    ...missing({
      at: `rules/${id} › when`,
      ids: 'faults' in when ? when.faults : [],
      among: faults,
      folder: 'faults',
    }),
  ]);
}

function sequenceProblems({ sequences, checks }: Catalog): Problem[] {
  return Object.values(sequences).flatMap(({ id, checks: ids, instead = {} }) =>
    missing({
      at: `sequences/${id} › checks`,
      ids: [...ids, ...Object.entries(instead).flat()],
      among: checks,
      folder: 'checks',
    }),
  );
}
