import type { Person } from './basics.ts';
import type { NotTakenReason, Reading, SiteEvent } from './case.ts';
import type { Installation } from './installation.ts';

/** A reading that stands now: not corrected away, not undone. */
export interface StandingAnswer {
  readonly event: string;
  readonly check: string;
  readonly reading: Reading;
  readonly at: string | undefined;
  readonly by: Person;
  /** Events that this reading replaced, oldest first. */
  readonly corrects: readonly string[];
}

/** A claim about the site that was said by a person at a time. */
export interface StandingSiteEvent {
  readonly event: string;
  readonly at: string | undefined;
  readonly said: SiteEvent;
}

/** One line of the trail: all that happened, corrected readings included, in order. */
export interface TrailLine {
  readonly event: string;
  readonly at: string | undefined;
  readonly kind: 'answer' | 'site' | 'visit' | 'installation' | 'person' | 'kit' | 'circumstances' | 'opened';
  readonly check?: string;
  readonly reading?: Reading;
  readonly correctedBy?: string;
  readonly asLeft?: boolean;
  readonly text?: string;
}

/** A fact of the visit; `repaired` notes the repair action that was made. */
export interface VisitFact {
  readonly event: string;
  readonly type: string;
  readonly note?: string | undefined;
}

/** What the events of a case add up to. No snapshot of it is ever stored. */
export interface CaseState {
  readonly case: string;
  readonly site: string | undefined;
  readonly person: Person;
  readonly meter: 'ordinary' | 'bench';
  readonly instruments: readonly string[];
  readonly installation: Installation;
  readonly circumstances: readonly string[];
  readonly answers: readonly StandingAnswer[];
  readonly asLeft: readonly StandingAnswer[];
  /** Claims in the order said; a lapse is one of them. */
  readonly siteEvents: readonly StandingSiteEvent[];
  readonly visitEvents: readonly VisitFact[];
  readonly trail: readonly TrailLine[];
  readonly lastSequence: number;
}

export type { NotTakenReason };
