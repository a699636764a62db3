import { reportVerdict } from '../hooks/report-data.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';
import { Frame } from './frame.tsx';
import { ReportSheet } from './report-sheet.tsx';
import { SaveKey } from './save-key.tsx';
import { SiteStrip } from './site-strip.tsx';
import type { To } from './step-screen.tsx';

/** The report as it prints: one letter sheet, black and white; the keys stay on the screen. */
export function ReportScreen({ open, to }: { open: OpenCase; to: To }) {
  const { say } = useTexts();
  if (open.state === undefined) return null;
  return (
    <Frame
      name="report"
      strip={<SiteStrip open={open} />}
      title={say('report-title')}
      answer={<ReportSheet open={open} verdict={reportVerdict(open.view)} />}
      keys={
        <>
          <SaveKey caseId={open.id} />
          <Key onPress={() => window.print()}>{say('report-print')}</Key>
          <Key main onPress={() => to('step')}>
            {say('to-step')}
          </Key>
        </>
      }
    />
  );
}
