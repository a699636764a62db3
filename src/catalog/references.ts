import type { CheckPoint } from '../schema/check.ts';
import type { Edit } from '../schema/fault.ts';
import type { Catalog, Problem, Words } from './catalog.ts';

/** Second ring: every id that a record names exists, and every text that a person will read is there. */
export function referenceProblems(catalog: Catalog): Problem[] {
  return [
    ...sourceProblems(catalog),
    ...netlistProblems(catalog),
    ...faultProblems(catalog),
    ...checkProblems(catalog),
    ...actionProblems(catalog),
    ...ruleProblems(catalog),
    ...Object.values(catalog.words).flatMap((words) => wordProblems(catalog, words)),
  ];
}

type Naming = { readonly at: string; readonly id: string; readonly among: Readonly<Record<string, unknown>>; readonly kind: string };

function missing({ at, id, among, kind }: Naming): Problem[] {
  return id in among ? [] : [{ at, message: `no ${kind} ${id}`, hint: `add content/${kind}s/${id}.json or mend the name` }];
}

/** Tables whose records carry evidence, by folder. */
export function evidencedRecords(catalog: Catalog) {
  const { motors, motorModels, conductors, netlists, boxes, elements, faults, actions, checks, instruments } = catalog;
  const { circumstances, hazards, parts, judgements, rules, siteSteps } = catalog;
  return Object.entries({
    motors,
    'motor-models': motorModels,
    conductors,
    netlists,
    boxes,
    elements,
    faults,
    actions,
    checks,
    instruments,
    circumstances,
    hazards,
    parts,
    judgements,
    rules,
    'site-steps': siteSteps,
  }).flatMap(([folder, table]) => Object.values(table).map((record) => ({ at: `${folder}/${record.id}`, record })));
}

function sourceProblems(catalog: Catalog): Problem[] {
  return evidencedRecords(catalog).flatMap(({ at, record }) =>
    record.from.flatMap(({ source }, index) =>
      missing({ at: `${at} › from[${index}] › source`, id: source, among: catalog.sources, kind: 'source' }),
    ),
  );
}

function netlistProblems(catalog: Catalog): Problem[] {
  const pieces = Object.values(catalog.boxes).flatMap((box) =>
    box.pieces.flatMap((id, index) => missing({ at: `boxes/${box.id} › pieces[${index}]`, id, among: catalog.netlists, kind: 'netlist' })),
  );
  const kinds = Object.values(catalog.netlists).flatMap((netlist) =>
    netlist.parts.flatMap((part, index) => missing({ at: `netlists/${netlist.id} › parts[${index}] › kind`, id: part.kind, among: catalog.elements, kind: 'element' })),
  );
  const models = Object.keys(catalog.motorModels).flatMap((id) => missing({ at: `motor-models/${id}`, id, among: catalog.motors, kind: 'motor' }));
  return [...pieces, ...kinds, ...models];
}

/** Every node and part of every netlist. */
function knownNames(catalog: Catalog): Readonly<Record<string, true>> {
  const names: Record<string, true> = {};
  for (const netlist of Object.values(catalog.netlists)) {
    for (const terminal of netlist.terminals) names[terminal.id] = true;
    for (const part of netlist.parts) for (const name of [part.id, ...part.between]) names[name] = true;
  }
  return names;
}

function unknownNames(at: string, names: readonly string[], known: Readonly<Record<string, true>>): Problem[] {
  return names
    .filter((name) => !(name in known))
    .map((name) => ({ at, message: `no netlist has ${name}`, hint: 'name a node or part of content/netlists' }));
}

function faultProblems(catalog: Catalog): Problem[] {
  const known = knownNames(catalog);
  return Object.values(catalog.faults).flatMap((fault) => {
    const at = `faults/${fault.id}`;
    const edits = fault.variants.flatMap((variant, index) =>
      unknownNames(`${at} › variants[${index}]`, [...variant.edits.flatMap(namesOfEdit), ...(variant.needs ?? []), ...(variant.without ?? [])], known),
    );
    const signs = (fault.signs ?? []).flatMap((sign, index) => signProblems(catalog, { at: `${at} › signs[${index}]`, ...sign }));
    const times = (fault.prior.times ?? []).flatMap(({ circumstance }, index) =>
      missing({ at: `${at} › prior › times[${index}]`, id: circumstance, among: catalog.circumstances, kind: 'circumstance' }),
    );
    const caused = (fault.tendsToCause ?? []).flatMap((id, index) => missing({ at: `${at} › tendsToCause[${index}]`, id, among: catalog.faults, kind: 'fault' }));
    const actions = [fault.action, ...(fault.actionInPlugApart === undefined ? [] : [fault.actionInPlugApart])].flatMap((id) =>
      missing({ at: `${at} › action`, id, among: catalog.actions, kind: 'action' }),
    );
    return [...edits, ...signs, ...times, ...caused, ...actions];
  });
}

function signProblems(catalog: Catalog, sign: { at: string; check: string; answer: string }): Problem[] {
  const check = catalog.checks[sign.check];
  if (check === undefined) return missing({ at: `${sign.at} › check`, id: sign.check, among: catalog.checks, kind: 'check' });
  const answers: readonly string[] = 'answers' in check.reads ? check.reads.answers : [];
  return answers.includes(sign.answer)
    ? []
    : [{ at: `${sign.at} › answer`, message: `${check.id} has no answer ${sign.answer}`, hint: `one of ${answers.join(', ')}` }];
}

function namesOfEdit(edit: Edit): readonly string[] {
  if ('part' in edit) return [edit.part];
  if ('parts' in edit) return edit.parts;
  return 'nodes' in edit ? edit.nodes : [];
}

function namesOfPoint(at: CheckPoint): readonly string[] {
  if ('between' in at) return [...at.between, ...(at.tie ?? [])];
  if ('across' in at) return [at.across];
  if ('clamp' in at) return at.clamp;
  return 'tied' in at ? [...at.tied, at.to] : [];
}

function checkProblems(catalog: Catalog): Problem[] {
  const known = knownNames(catalog);
  const sets = Object.fromEntries(Object.values(catalog.checks).flatMap((check) => [[check.id, true], [check.set ?? check.id, true]]));
  return Object.values(catalog.checks).flatMap((check) => {
    const at = `checks/${check.id}`;
    return [
      ...unknownNames(`${at} › at`, [...namesOfPoint(check.at), ...(check.needs ?? []), ...(check.without ?? [])], known),
      ...missing({ at: `${at} › instrument`, id: check.instrument, among: catalog.instruments, kind: 'instrument' }),
      ...check.hazards.flatMap((id, index) => missing({ at: `${at} › hazards[${index}]`, id, among: catalog.hazards, kind: 'hazard' })),
      ...(check.after ?? []).flatMap((id, index) => missing({ at: `${at} › after[${index}]`, id, among: sets, kind: 'check' })),
    ];
  });
}

function actionProblems(catalog: Catalog): Problem[] {
  return Object.values(catalog.actions).flatMap((action) => [
    ...action.parts.flatMap((id, index) => missing({ at: `actions/${action.id} › parts[${index}]`, id, among: catalog.parts, kind: 'part' })),
    ...action.proof.flatMap((id, index) => missing({ at: `actions/${action.id} › proof[${index}]`, id, among: catalog.checks, kind: 'check' })),
  ]);
}

function ruleProblems(catalog: Catalog): Problem[] {
  return Object.values(catalog.rules).flatMap((rule) => [
    ...rule.needs.flat().flatMap((id) => missing({ at: `rules/${rule.id} › needs`, id, among: catalog.checks, kind: 'check' })),
    ...('faults' in rule.when ? rule.when.faults : []).flatMap((id) => missing({ at: `rules/${rule.id} › when`, id, among: catalog.faults, kind: 'fault' })),
  ]);
}

function wordProblems(catalog: Catalog, words: Words): Problem[] {
  const wanted = [
    { kind: 'checks', records: catalog.checks, texts: words.checks },
    { kind: 'faults', records: catalog.faults, texts: words.faults },
    { kind: 'actions', records: catalog.actions, texts: words.actions },
    { kind: 'site-steps', records: catalog.siteSteps, texts: words.siteSteps },
  ];
  const lacking = wanted.flatMap(({ kind, records, texts }) =>
    Object.keys(records)
      .filter((id) => !(id in texts))
      .map((id) => ({ at: `words/${words.language}/${kind}/${id}`, message: 'has no words', hint: `write content/words/${words.language}/${kind}/${id}.json` })),
  );
  return [...lacking, ...answerProblems(catalog, words)];
}

/** Every closed answer of a check has a text. */
function answerProblems(catalog: Catalog, words: Words): Problem[] {
  return Object.values(catalog.checks).flatMap((check) => {
    const answers = 'answers' in check.reads ? check.reads.answers : [];
    const texts = words.checks[check.id]?.answers ?? {};
    return answers
      .filter((answer) => !(answer in texts))
      .map((answer) => ({ at: `words/${words.language}/checks/${check.id} › answers`, message: `no text for ${answer}`, hint: 'add it' }));
  });
}
