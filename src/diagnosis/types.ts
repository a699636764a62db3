import type { Evidence } from '../schema/basics.ts';
import type { Reading } from '../schema/case.ts';

/**
 * What the diagnosis says, as plain data that can cross a worker and be printed.
 * Numbers are SI; nothing here is rounded.
 */

type ElectricalPart = 'table' | 'cable' | 'temperature' | 'supply' | 'load' | 'label' | 'meter' | 'practice';
type WaterPart = 'system' | 'well' | 'pump' | 'tank';

/** One contribution to an expected window, in the unit of the window, with its sources. */
export interface WindowPart {
  readonly name: ElectricalPart | WaterPart;
  /** What this part adds at the low and at the high end. */
  readonly low: number;
  readonly high: number;
  readonly from: readonly Evidence[];
}

/** What this very installation should read, sound. */
export interface ExpectedWindow {
  readonly check: string;
  readonly kind: 'range' | 'open' | 'answer' | 'unknown';
  /** Ends of a range; an absent end is unbounded. */
  readonly low?: number;
  readonly high?: number;
  readonly unit?: string;
  readonly answer?: string;
  readonly parts: readonly WindowPart[];
  readonly quality: 'baseline' | 'nameplate' | 'table' | 'practice';
  /** True when a part is known only from memory: then it condemns nothing alone. */
  readonly fromMemory: boolean;
  /** Why there is no window: the fields that would give one. */
  readonly missing?: readonly string[];
}

/** The closed list of outcomes of a number; a category's outcomes are its answers. */
export const OUTCOMES = ['as-expected', 'low', 'high', 'none', 'open', 'unstable', 'not-taken'] as const;
export type Outcome = (typeof OUTCOMES)[number] | (string & {});

export interface JudgedReading {
  readonly check: string;
  readonly reading: Reading;
  readonly outcome: Outcome;
  /** How far outside the window, SI, when low or high. */
  readonly by?: number;
}

/** One fault in one variant, with the probability that it is what is wrong. */
export interface Suspect {
  readonly fault: string;
  readonly variant: string;
  readonly action: string;
  readonly probability: number;
  /** The reading that took most of its probability away, once it is below 1 in 100. */
  readonly ruledOutBy?: string;
}

/** What an outcome of the next check would mean: the suspects that would then lead. */
export interface OutcomePreview {
  readonly outcome: Outcome;
  readonly probability: number;
  readonly leads: readonly string[];
}

export interface RankedCheck {
  /** The check, or the reading set, that is proposed. */
  readonly checks: readonly string[];
  readonly gain: number;
  readonly minutes: number;
  readonly perMinute: number;
  readonly outcomes: readonly OutcomePreview[];
}

export interface EvidenceLine {
  readonly check: string;
  readonly reading: Reading;
  readonly outcome: Outcome;
  readonly window: ExpectedWindow;
  /** ln of how much the reading raised the odds of the verdict. */
  readonly weight: number;
  /** Suspects that this reading put out of the running. */
  readonly rulesOut: readonly string[];
}

/**
 * How a call ends. `refer`: readings that would go on exist, but nobody present may take them.
 */
export interface Verdict {
  readonly kind: 'named' | 'group' | 'contradiction' | 'watch' | 'refer' | 'not-this-tool' | 'normal';
  /** Verdict class of the leading fault. */
  readonly verdictClass: string;
  readonly action: string;
  readonly faults: readonly Suspect[];
  /** What may have brought it about and is still there, likeliest first. */
  readonly causes: readonly {
    readonly fault: string;
    readonly action: string;
    readonly probability: number;
  }[];
  readonly probability: number;
  readonly evidence: readonly EvidenceLine[];
  /** Reading to take again, when the readings contradict each other. */
  readonly takeAgain?: string;
  /** Hard rules not yet met, by rule name. */
  readonly owed: readonly string[];
  readonly proof: readonly ExpectedWindow[];
}
