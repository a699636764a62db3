import { viewCall } from '../../../machines/call/call.ts';
import type { CallView, ProposedBy } from '../../../machines/call/types.ts';
import type { Catalog } from '../../catalog/catalog.ts';
import { answerFits } from '../../records/fits.ts';
import { foldCase } from '../../records/fold.ts';
import type { EventDraft, RecordedEvent } from '../../records/recorded.ts';
import type { CaseState } from '../../schema/case-state.ts';

/**
 * The case of one simulated call: events are appended and the engine is asked, as on a screen.
 */
export class CaseLog {
  private readonly events: RecordedEvent[] = [];

  constructor(
    private readonly catalog: Catalog,
    private readonly proposedBy: ProposedBy,
  ) {}

  /** @throws when an answer does not fit its check: the engine would leave it out without a word */
  say(event: EventDraft): void {
    const sequence = String(this.events.length + 1).padStart(6, '0');
    const recorded: RecordedEvent = { id: `${CASE}:${sequence}:sweep`, ...event };
    if (recorded.kind === 'answer') {
      const [problem] = answerFits(recorded, this.catalog.checks, recorded.check);
      if (problem !== undefined) throw new Error(`prove: ${problem.at}: ${problem.message}`);
    }
    this.events.push(recorded);
  }

  state(): CaseState {
    return foldCase(CASE, this.events, this.catalog.checks);
  }

  view(state: CaseState): CallView {
    return viewCall(this.catalog, state, this.proposedBy);
  }
}

const CASE = 'larch-hollow-sweep';
