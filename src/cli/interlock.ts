import { checksOn } from '../../machines/call/applies.ts';
import { CHECK_INVARIANTS, STEP_INVARIANTS } from '../../machines/worksite/invariants.ts';
import { CHANGE_INVARIANTS, STATE_INVARIANTS } from '../../machines/worksite/invariants-of-the-machine.ts';
import { RULES } from '../../machines/worksite/permits.ts';
import { SAFE_STATE } from '../../machines/worksite/safe-state.ts';
import { foldSite } from '../../machines/worksite/site.ts';
import { SITE_STEPS, type SiteStep, type SiteStepId, stepIds } from '../../machines/worksite/step-table.ts';
import { missingSteps, type Way } from '../../machines/worksite/steps.ts';
import { mayActAs, type Work, workPlace } from '../../machines/worksite/work.ts';
import type { Catalog, Words } from '../catalog/catalog.ts';
import { resolveSystem } from '../diagnosis/system.ts';
import { type Person, person } from '../schema/basics.ts';
import type { Check } from '../schema/check.ts';
import type { Box } from '../schema/netlist.ts';

/**
 * The interlock on one page, made from the tables that the program runs on: every step with its
 * minutes, who may do it and what shows that it is done, every rule, every promise, and the way to
 * every check. Each line has a number, so that a licensed person can object to it.
 */
export function interlockPage(catalog: Catalog, language = 'en'): string {
  const words = catalog.words[language];
  if (words === undefined)
    throw new Error(
      `cli: no words in "${language}", the content has ${Object.keys(catalog.words).join(', ')}`,
    );
  return [
    ...opening(catalog),
    ...persons(words),
    ...steps(catalog, words),
    ...numbered('R', 'When a check may be asked for', RULES),
    ...numbered('C', 'What holds of every check that is asked for', CHECK_INVARIANTS),
    ...numbered('S', 'What holds of every step that is asked for', STEP_INVARIANTS),
    ...numbered('M', 'What the record of the site can never say', STATE_INVARIANTS),
    ...numbered('N', 'What no word can change', CHANGE_INVARIANTS),
    ...stop(words),
    ...ways(catalog, words),
  ].join('\n');
}

function opening({ version, judgements }: Catalog): string[] {
  const lapse = judgements['lapse-minutes']?.value;
  const away = typeof lapse === 'number' ? `${lapse} minutes away` : 'a while away';
  return [
    '# The interlock',
    '',
    'No check is asked for unless the work site is said to be in the state that it needs. What follows is common practice;',
    'local codes, the employer’s rules and licensed practice stand above it. It is made from the tables that the program',
    'runs on, and every rule is tested in every state that the site can be in. Object to a line by its number.',
    '',
    'The site is what a person says it is, now. What nobody has said counts as dangerous: live, charged, people near.',
    `After ${away}, on a hand-over, an import, a change of person or a step taken back, it counts as live and not proved again.`,
    '',
    `Content ${version}.`,
    '',
  ];
}

function persons(words: Words): string[] {
  const rows = person.options.map((who) => {
    const may = stepIds.filter((id) => mayActAs(who, SITE_STEPS[id].who));
    const steps =
      may.length === stepIds.length ? 'every step' : may.map((id) => stepName(words, id)).join(', ');
    return `| ${personName(words, who)} | ${REACH[who]} | ${steps} |`;
  });
  return ['## Who may do what', '', '| person | checks | steps |', '|---|---|---|', ...rows, ''];
}

const REACH: Readonly<Record<Person, string>> = {
  caller:
    'look, listen, open a tap, read a dial; covers on, no hazard; never a reset, never the small lever by the tank',
  'trainee-alone': 'checks without any hazard, covers on',
  'trainee-accompanied': 'as the check says, with the technician beside him',
  technician: 'as the check says; not on parts that may be live',
  qualified: 'as the check says, energised readings included',
};

function steps(catalog: Catalog, words: Words): string[] {
  const rows = stepIds.map((id, index) => {
    const { who, lines, hold }: SiteStep = SITE_STEPS[id];
    const minutes = lines.map((line) => catalog.siteSteps[line]?.minutes ?? 'not known').join(' + ');
    const asks = lines.map((line) => words.siteSteps[line]?.ask ?? line).join(' Then: ');
    const shows = lines.map((line) => words.siteSteps[line]?.shows ?? '').join(' ');
    const done = hold ? 'held press' : 'tap';
    return `| T${index + 1} | ${stepName(words, id)} | ${asks} | ${minutes} | ${personName(words, who)} | ${done} | ${shows} |`;
  });
  return [
    '## The steps, in order',
    '',
    'To dead work and back. A step that a place does not need is left out. A cover that goes on while the supply is not',
    'locked is put on by the qualified. Lifting and landing cost no minutes where a lid pulls apart.',
    '',
    '| no. | step | what is asked | minutes | who | said by | done when |',
    '|---|---|---|---|---|---|---|',
    ...rows,
    '',
  ];
}

interface Sentence {
  readonly name: string;
  readonly sentence: string;
}

function numbered(letter: string, title: string, rules: readonly Sentence[]): string[] {
  const rows = rules.map(({ name, sentence }, index) => `| ${letter}${index + 1} | ${name} | ${sentence} |`);
  return [`## ${title}`, '', '| no. | name | in words |', '|---|---|---|', ...rows, ''];
}

function stop(words: Words): string[] {
  const rows = SAFE_STATE.map(
    (id, index) => `| X${index + 1} | ${words.names['safe-state']?.texts[id] ?? id} |`,
  );
  return [
    '## “Stop, unsafe”',
    '',
    'From everywhere; the lines that fit are shown.',
    '',
    '| no. | in words |',
    '|---|---|',
    ...rows,
    '',
  ];
}

/** The way to every check from a site of which nothing has been said, for each kind of box that differs. */
function ways(catalog: Catalog, words: Words): string[] {
  const sections = kindsOfBox(catalog).flatMap((boxes) => [
    `### ${boxes.map(({ id }) => words.names.boxes?.texts[id] ?? id).join('; ')}`,
    '',
    ...waysWith(catalog, words, boxes),
    '',
  ]);
  return ['## The way to every check, when nothing has been said yet', '', ...sections];
}

/** Boxes that the interlock cannot tell apart stand together. */
function kindsOfBox(catalog: Catalog): Box[][] {
  const kinds = new Map<string, Box[]>();
  for (const box of Object.values(catalog.boxes)) {
    const key = `${box.plugApart} ${box.holdsCapacitor} ${box.family === 'no-box'}`;
    kinds.set(key, [...(kinds.get(key) ?? []), box]);
  }
  return [...kinds.values()];
}

function waysWith(catalog: Catalog, words: Words, boxes: readonly Box[]): string[] {
  const work: Work = { ...workPlace(catalog, boxes, {}), site: foldSite([]), who: 'qualified' };
  const minutesOf = (step: string) => catalog.siteSteps[step]?.minutes ?? 0;
  const groups = new Map<string, string[]>();
  for (const check of checksWith(catalog, boxes)) {
    const way = wayInWords(missingSteps(check, work, minutesOf), words);
    groups.set(way, [...(groups.get(way) ?? []), words.checks[check.id]?.name ?? check.id]);
  }
  return [...groups].map(([way, checks]) => `- ${way}: **${checks.join(', ')}**`);
}

function checksWith(catalog: Catalog, boxes: readonly Box[]): Check[] {
  const all = Object.values(catalog.checks);
  const fittings = [{}, ...Object.keys(catalog.fittings).map((id) => ({ [id]: true }))];
  const ids = new Set(
    boxes.flatMap(({ id }) =>
      fittings.flatMap((one) =>
        checksOn(resolveSystem(catalog, { box: id, fittings: one }), all).map((check) => check.id),
      ),
    ),
  );
  return all.filter(({ id }) => ids.has(id));
}

function wayInWords(way: Way, words: Words): string {
  if (!way.possible) return 'never asked for here';
  if (way.steps.length === 0) return 'at once';
  return way.steps
    .map(({ step, place }) =>
      place === undefined ? stepName(words, step) : `${stepName(words, step)} (${place})`,
    )
    .join(' → ');
}

function stepName(words: Words, id: SiteStepId | (string & {})): string {
  return words.siteSteps[id]?.name ?? id;
}

function personName(words: Words, who: Person): string {
  return words.names.persons?.texts[who] ?? who;
}
