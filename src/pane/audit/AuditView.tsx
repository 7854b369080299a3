import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { Notice } from '../parts/Notice.tsx';
import { Progress } from '../parts/Progress.tsx';
import { Said } from '../parts/Said.tsx';
import { auditWords } from './auditWords.ts';
import { CheckResults } from './check/CheckResults.tsx';
import { ColumnsPart } from './columns/ColumnsPart.tsx';
import { PolicyForm } from './policy/PolicyForm.tsx';
import { Results } from './results/Results.tsx';
import { ComparePart } from './since/ComparePart.tsx';
import { useAudit } from './useAudit.ts';

/** The audit of the whole workbook. `asked`: how often a button outside the pane has asked for one. */
export function AuditView({ asked }: { asked: number }): JSX.Element {
  const { state, remarks, start, cancel, compare, setMap, setPolicy, setWriting } = useAudit();
  useEffect(() => {
    if (asked > 0) start('report');
  }, [asked]);
  const { work, report, understood, workbook, refusal, stale, unsettled, cancelled } = state;
  return (
    <>
      <h2>{auditWords.title}</h2>
      <p class="quiet">{auditWords.intro}</p>
      {work ? (
        <Progress
          label={work.step === 'reading' ? auditWords.reading : auditWords.auditing}
          part={work.part}
          cancelText={auditWords.cancel}
          onCancel={cancel}
        />
      ) : (
        <div class="button-row">
          <button
            type="button"
            class="button button-first"
            onClick={() => {
              start('report');
            }}
          >
            {report ? auditWords.runAgain : auditWords.run}
          </button>
          <button
            type="button"
            class="button"
            onClick={() => {
              start('columns');
            }}
          >
            {auditWords.show}
          </button>
        </div>
      )}
      {remarks.map((text) => (
        <Notice key={text} tone="warning">
          <Said text={text} />
        </Notice>
      ))}
      {refusal !== null && (
        <Notice tone="problem">
          <Said text={refusal} most={1500} />
        </Notice>
      )}
      {cancelled && <Notice tone="note">{auditWords.cancelled}</Notice>}
      {stale && <Notice tone="warning">{auditWords.stale}</Notice>}
      {unsettled && <Notice tone="warning">{auditWords.unsettled}</Notice>}
      {understood && workbook && (
        <ColumnsPart
          understood={understood}
          sheetNames={workbook.sheets.map((sheet) => sheet.name)}
          map={state.map}
          onMap={setMap}
        />
      )}
      <PolicyForm key={String(state.known)} policy={state.policy} onPolicy={setPolicy} />
      {report && workbook && (
        <ComparePart workbook={workbook} earlier={state.earlier} since={report.since} onEarlier={compare} />
      )}
      {report && (
        <Results
          key={report.generated}
          report={report}
          map={state.map}
          onMap={setMap}
          onWriting={setWriting}
        />
      )}
      {!work && <CheckResults />}
    </>
  );
}
