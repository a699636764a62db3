import type {
  ExpectedWindow,
  JudgedReading,
  RankedCheck,
  Suspect,
  Verdict,
} from '../../src/diagnosis/types.ts';
import type { Person, Place } from '../../src/schema/basics.ts';
import type { TrailLine } from '../../src/schema/case-state.ts';

/**
 * The call as a screen or the command line sees it: pure data, made anew from the case after every
 * event, able to cross a worker. Texts are looked up by id in the words of the catalog.
 */

/** What the strip says; folded from the worksite machine and from nothing else. */
export interface SiteView {
  /** live · locked (not proved) · not-bled · proved */
  readonly word: 'live' | 'locked' | 'not-bled' | 'proved';
  readonly supply: 'live' | 'off' | 'locked';
  readonly places: Readonly<Record<Place, 'closed' | 'open' | 'proved'>>;
  readonly leads: 'connected' | 'lifted' | 'split';
  readonly charge: 'possible' | 'bled';
  readonly disinfection: 'none' | 'due' | 'done';
  readonly secondSource: 'none-seen' | 'possible';
  readonly stopped: boolean;
  /** Place that the strip speaks of: that of the present step. */
  readonly here: Place | undefined;
  /** True after a lapse: each fact must be said again. */
  readonly lapsed: boolean;
}

/** A step that makes the site safe, in its place in the fixed order. */
export interface SiteStepView {
  readonly step: string;
  readonly place: Place | undefined;
  readonly minutes: number;
  /** Event of the worksite machine that says it is done. */
  readonly says: { readonly type: string; readonly place?: Place };
  /** Needs a press that is held: lock-out and proof of dead. */
  readonly hold: boolean;
  /** Site steps whose instructions this one press confirms together, in order; at least the step itself. */
  readonly lines: readonly string[];
  /** The least qualified person who may do it. */
  readonly who: Person;
  /** A second source could feed this place: the proof of dead says so. */
  readonly mindSecondSource?: true;
}

/** Who proposes checks: the trees and what no tree holds, or every permitted check by itself. */
export type ProposedBy = 'trees' | 'planner';

export interface CheckView {
  readonly check: string;
  readonly window: ExpectedWindow;
}

export type NextStep =
  | {
      readonly kind: 'site-steps';
      /** Steps still missing before the checks of `towards` may be shown, in order. */
      readonly steps: readonly SiteStepView[];
      readonly towards: readonly string[];
      readonly ranked: RankedCheck | undefined;
      readonly others: readonly RankedCheck[];
    }
  | {
      readonly kind: 'check';
      readonly checks: readonly CheckView[];
      readonly procedure: string | undefined;
      readonly ranked: RankedCheck | undefined;
      readonly others: readonly RankedCheck[];
    }
  | { readonly kind: 'ask-installation'; readonly field: string; readonly options: readonly string[] }
  | { readonly kind: 'verdict'; readonly verdict: Verdict }
  /** The repair is begun: make the site safe for it, then show its steps. */
  | {
      readonly kind: 'repair';
      readonly steps: readonly SiteStepView[];
      readonly verdict: Verdict;
      /** Who must do it, where nobody present may. */
      readonly refer: Person | undefined;
    }
  /** Take the installation into service again, then take the proof readings one by one. */
  | {
      readonly kind: 'proof';
      readonly steps: readonly SiteStepView[];
      readonly check: CheckView | undefined;
      /** Proof readings that nobody present may take: they are owed. */
      readonly cannotRead: readonly string[];
      readonly done: readonly JudgedReading[];
      readonly verdict: Verdict;
    }
  | { readonly kind: 'closed'; readonly verdict: Verdict; readonly owed: readonly string[] }
  | { readonly kind: 'stopped'; readonly safeState: readonly string[] }
  | { readonly kind: 'not-this-tool'; readonly exit: string };

export interface CallView {
  readonly contentVersion: string;
  readonly visit: string;
  readonly site: SiteView;
  readonly next: NextStep;
  readonly suspects: readonly Suspect[];
  readonly judged: readonly JudgedReading[];
  readonly windows: Readonly<Record<string, ExpectedWindow>>;
  readonly trail: readonly TrailLine[];
  /** Reading that no suspect explains, to be taken again. */
  readonly surprise: string | undefined;
  /** Facts of the installation that were assumed because they are unknown. */
  readonly assumed: readonly { readonly field: string; readonly value: string }[];
}
