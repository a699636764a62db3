import type { Problem } from '../catalog/catalog.ts';
import type { CaseEventInput, Reading } from '../schema/case.ts';
import type { Check } from '../schema/check.ts';
import { installation as installationShape } from '../schema/installation.ts';
import { of, type UnitName, unitsOf } from '../units/units.ts';
import { didYouMean } from './nearest.ts';
import type { RecordedEvent } from './recorded.ts';

type IdsOf = Readonly<Record<string, unknown>>;

/** The part of the catalog that a case refers to; a whole Catalog serves. */
export interface Known {
  readonly checks: Readonly<Record<string, Pick<Check, 'reads'>>>;
  readonly instruments: IdsOf;
  readonly circumstances: IdsOf;
  readonly motors: IdsOf;
  readonly boxes: IdsOf;
  readonly conductors: IdsOf;
  readonly fittings: IdsOf;
}

/**
 * Does an event of the right shape also make sense to this content: are its ids known, is a reading
 * in a unit of its check, is no quantity of another world?
 *
 * @param at  path of the event in its file: `events[3]`
 */
export function eventFits(event: CaseEventInput, known: Known, at: string): Problem[] {
  switch (event.kind) {
    case 'answer':
      return answerFits(event, known.checks, at);
    case 'kit':
      return event.instruments.flatMap((id, index) =>
        idFits({ id, table: known.instruments, what: 'instrument', at: `${at} › instruments[${index}]` }),
      );
    case 'circumstances':
      return event.happened.flatMap((id, index) =>
        idFits({ id, table: known.circumstances, what: 'circumstance', at: `${at} › happened[${index}]` }),
      );
    case 'installation':
      return installationFits(event.set, known, `${at} › set`);
    default:
      return [];
  }
}

interface Reference {
  readonly id: string | undefined;
  readonly table: IdsOf;
  readonly what: string;
  readonly at: string;
}

function idFits({ id, table, what, at }: Reference): Problem[] {
  if (id === undefined || Object.hasOwn(table, id)) return [];
  const meant = didYouMean(id, Object.keys(table));
  return [
    {
      at,
      message: `there is no ${what} "${id}"`,
      hint: meant === '' ? `Write the id of a known ${what}.` : meant.trim(),
    },
  ];
}

type Answer = Extract<CaseEventInput, { kind: 'answer' }>;

/** Is the check known, and can the reading be a reading of it? */
export function answerFits(event: Answer, checks: Known['checks'], at: string): Problem[] {
  const check = Object.hasOwn(checks, event.check) ? checks[event.check] : undefined;
  if (check === undefined)
    return idFits({ id: event.check, table: checks, what: 'check', at: `${at} › check` });
  return readingFits({ id: event.check, reads: check.reads }, event.reading, `${at} › reading`);
}

/** Every answer of a case that cannot stand on this content, by its event: kept, reported, not used. */
export function answersThatDoNotFit(events: readonly RecordedEvent[], checks: Known['checks']): Problem[] {
  return events.flatMap((event) => (event.kind === 'answer' ? answerFits(event, checks, event.id) : []));
}

/** A reading against what its check reads. Not taken always fits. */
export function readingFits(check: Pick<Check, 'id' | 'reads'>, reading: Reading, at: string): Problem[] {
  const { reads, id } = check;
  if ('notTaken' in reading) return [];
  if ('answers' in reads) {
    const list = reads.answers.join(', ');
    if (!('answer' in reading))
      return [
        { at, message: `${id} is answered in words`, hint: `Write {"answer": …} with one of ${list}.` },
      ];
    if (reads.answers.includes(reading.answer)) return [];
    const meant = didYouMean(reading.answer, reads.answers);
    return [
      {
        at: `${at} › answer`,
        message: `"${reading.answer}" is no answer to ${id}`,
        hint: `${meant}Write one of ${list}.`,
      },
    ];
  }
  const units = unitsOf(reads.quantity);
  if ('answer' in reading) {
    return [
      { at, message: `${id} is a number, not words`, hint: `Write {"value": [number, "${units[0]}"]}.` },
    ];
  }
  return 'value' in reading ? valueFits({ id, units, value: reading.value, at }) : [];
}

interface Valued {
  readonly id: string;
  readonly units: readonly UnitName[];
  readonly value: readonly [number, UnitName];
  readonly at: string;
}

function valueFits({ id, units, value: [number, unit], at }: Valued): Problem[] {
  if (!units.includes(unit)) {
    return [
      {
        at: `${at} › value[1]`,
        message: `${id} is not read in ${unit}`,
        hint: `Write one of ${units.join(', ')}.`,
      },
    ];
  }
  if (of(number, unit) <= MOST) return [];
  return [
    {
      at: `${at} › value[0]`,
      message: 'no meter shows a number as large as that',
      hint: 'Write what the display shows, or {"open": true}.',
    },
  ];
}

/** In SI. Beyond this a number is a slip of the hand, and sums of it would no longer be finite. */
const MOST = 1e12;

type InstallationEvent = Extract<CaseEventInput, { kind: 'installation' }>;

function installationFits(set: InstallationEvent['set'], known: Known, at: string): Problem[] {
  return [
    ...idFits({ id: set.motor, table: known.motors, what: 'motor', at: `${at} › motor` }),
    ...idFits({ id: set.box, table: known.boxes, what: 'box', at: `${at} › box` }),
    ...(['buried', 'drop'] as const).flatMap((run) =>
      idFits({
        id: set[run]?.conductor,
        table: known.conductors,
        what: 'conductor',
        at: `${at} › ${run} › conductor`,
      }),
    ),
    ...Object.keys(set.fittings ?? {}).flatMap((id) =>
      idFits({ id, table: known.fittings, what: 'fitting', at: `${at} › fittings` }),
    ),
    ...quantitiesFit(installationShape.parse(set), at),
  ];
}

/** Nothing of an installation is negative; only a length may be nothing at all. */
function quantitiesFit(value: unknown, at: string, name = ''): Problem[] {
  if (typeof value === 'number') {
    const least = name === 'length' ? value >= 0 : value > 0;
    if (least && value <= MOST) return [];
    return [
      {
        at,
        message: 'this quantity cannot be',
        hint: name === 'length' ? 'Write 0 or more.' : 'Write a quantity above 0.',
      },
    ];
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const isEnd = (key === 'low' || key === 'high') && typeof inner === 'number';
    return quantitiesFit(inner, isEnd ? at : `${at} › ${key}`, key);
  });
}
