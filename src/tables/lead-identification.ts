import type { LeadColour } from '../schema/basics.ts';

/**
 * Which of three unmarked motor leads is which?
 *
 * The common lead is the one that takes no part in the highest of the three readings, since that one
 * goes through both windings. From the common lead the start winding reads more than the main. Cable
 * ohms add to all three readings alike and change nothing.
 *
 * @source practice: two makers print the same rule
 */
export interface PairReading {
  readonly leads: readonly [string, string];
  readonly ohms: number;
}

/**
 * The colour that each lead should carry; `undefined` where the readings name no three leads or two
 * of them are equal, so that the rule cannot decide.
 *
 * @example
 * leadColours([{ leads: ['1', '2'], ohms: 6 }, { leads: ['2', '3'], ohms: 2 }, { leads: ['3', '1'], ohms: 4 }]) // => { '1': 'red', '2': 'black', '3': 'yellow' }
 */
export function leadColours(
  readings: readonly [PairReading, PairReading, PairReading],
): Readonly<Record<string, LeadColour>> | undefined {
  const leads = [...new Set(readings.flatMap((reading) => reading.leads))];
  const pairs = new Set(readings.map((reading) => [...reading.leads].sort().join(' ')));
  const [highest, middle, lowest] = [...readings].sort((one, other) => other.ohms - one.ohms);
  if (leads.length !== 3 || pairs.size !== 3) return undefined;
  if (highest === undefined || middle === undefined || lowest === undefined) return undefined;
  if (!(highest.ohms > middle.ohms && middle.ohms > lowest.ohms)) return undefined;
  const common = leads.find((lead) => !highest.leads.includes(lead));
  const start = middle.leads.find((lead) => lead !== common);
  const main = lowest.leads.find((lead) => lead !== common);
  if (common === undefined || start === undefined || main === undefined || start === main) return undefined;
  return { [start]: 'red', [main]: 'black', [common]: 'yellow' };
}
