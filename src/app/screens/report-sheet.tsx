import type { Verdict } from '../../diagnosis/types.ts';
import type { CaseState } from '../../schema/case-state.ts';
import { formatDayAndTime } from '../format/time.ts';
import { knownValue } from '../hooks/known-lines.ts';
import { asFoundRows, asLeftRows } from '../hooks/report-data.ts';
import { useServices } from '../hooks/services.tsx';
import type { OpenCase } from '../hooks/use-case.ts';
import { reportHeading } from '../hooks/verdict-words.ts';
import { useTexts } from '../words/use-texts.tsx';
import { ReportTable } from './report-table.tsx';
import './report.css';

/** One sheet: title block, what proves it, repair, as left, safety. No probabilities. */
export function ReportSheet({ open, verdict }: { open: OpenCase; verdict: Verdict | undefined }) {
  const texts = useTexts();
  const { say } = texts;
  const { state, view } = open;
  if (state === undefined) return null;
  const heading =
    verdict === undefined ? { title: say('report-no-verdict'), lead: '' } : reportHeading(texts, verdict);
  const { proving, others } = asFoundRows(state, view, verdict);
  const asLeft = asLeftRows(state, view);
  return (
    <article className="sheet">
      <header className="sheet-head">
        <div>
          <h2 className="sheet-title">{heading.title}</h2>
          <p>{heading.lead}</p>
        </div>
        <p className="sheet-of">
          {say('report-of')}
          <br />
          <strong>{say('report-case', { case: open.id })}</strong>
        </p>
      </header>
      <TitleBlock state={state} />
      {proving.length > 0 && <ReportTable heading={say('report-evidence')} rows={proving} withParts />}
      {others.length > 0 && <ReportTable heading={say('report-others')} rows={others} withParts={false} />}
      <p className="sheet-note">{say('report-memory')}</p>
      <div className="sheet-columns">
        {verdict !== undefined && <RepairOf verdict={verdict} />}
        <section>
          {asLeft.length > 0 ? (
            <ReportTable heading={say('report-as-left')} rows={asLeft} withParts={false} />
          ) : (
            <>
              <h3>{say('report-as-left')}</h3>
              <p>{say('report-as-left-none')}</p>
            </>
          )}
        </section>
      </div>
      <SheetFoot open={open} verdict={verdict} />
    </article>
  );
}

function TitleBlock({ state }: { state: CaseState }) {
  const texts = useTexts();
  const { catalog } = useServices();
  const { say, language } = texts;
  const value = (question: 'motor' | 'box' | 'buried' | 'drop'): string =>
    knownValue(texts, catalog, { state, question }) ?? say('unknown');
  const cells = [
    [say('block-site'), state.site ?? say('no-name')],
    [say('block-motor'), value('motor')],
    [say('block-box'), value('box')],
    [say('block-cable'), `${value('buried')} + ${value('drop')}`],
    [say('block-date'), formatDayAndTime(language, state.trail[0]?.at)],
  ] as const;
  return (
    <dl className="sheet-block">
      {cells.map(([name, text]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}

function RepairOf({ verdict }: { verdict: Verdict }) {
  const texts = useTexts();
  const words = texts.action(verdict.action);
  const fault = verdict.faults[0] === undefined ? undefined : texts.fault(verdict.faults[0].fault);
  return (
    <section>
      <h3>
        {texts.say('report-repair')}: {words.name}
      </h3>
      <p>{words.steps.join(' ')}</p>
      {fault !== undefined && (
        <>
          <p>{fault.customer}</p>
          <h3>{texts.say('report-why')}</h3>
          <p>{fault.rootCauses.join(' · ')}</p>
        </>
      )}
    </section>
  );
}

function SheetFoot({ open, verdict }: { open: OpenCase; verdict: Verdict | undefined }) {
  const texts = useTexts();
  const { say } = texts;
  const disinfection = open.view?.site.disinfection ?? 'none';
  const owed = verdict?.owed ?? [];
  return (
    <footer className="sheet-foot">
      <dl className="sheet-block">
        <div>
          <dt>{say('report-disinfection')}</dt>
          <dd>{say(`disinfection-${disinfection}`)}</dd>
        </div>
        <div>
          <dt>{say('report-safety')}</dt>
          <dd>{say('safety-line')}</dd>
        </div>
        <div>
          <dt>{say('report-open')}</dt>
          <dd>
            {owed.length === 0
              ? say('report-open-none')
              : owed.map((rule) => texts.name('rules', rule)).join(' · ')}
          </dd>
        </div>
      </dl>
      <p className="sheet-note">{say('report-foot')}</p>
    </footer>
  );
}
