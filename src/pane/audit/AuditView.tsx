import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Notice } from '../parts/Notice.tsx';
import { Progress } from '../parts/LongDeedPart.tsx';
import { Said } from '../parts/Said.tsx';
import { AskingPart } from './asking/AskingPart.tsx';
import { KeptAnswers } from './asking/KeptAnswers.tsx';
import { auditWords } from './auditWords.ts';
import { CheckResults } from './check/CheckResults.tsx';
import { PolicyForm } from './policy/PolicyForm.tsx';
import { Results } from './results/Results.tsx';
import { ComparePart } from './since/ComparePart.tsx';
import { useAudit } from './useAudit.ts';

/** The audit of the whole workbook. `asked`: how often a button outside the pane has asked for one. */
export function AuditView({ asked }: { asked: number }): JSX.Element {
  const { state, remarks, start, answer, forget, cancel, compare, setMap, setPolicy, setWriting } =
    useAudit();
  useEffect(() => {
    if (asked > 0) start('report');
  }, [asked]);
  const { work, report, asked: asks, workbook, refusal, stale, unsettled, cancelled } = state;
  const view = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The button that began the work is gone: who used it by keys goes on at what came of it.
    const page = view.current?.ownerDocument;
    if (work || !page?.hasFocus() || page.activeElement !== page.body) return;
    const heads = view.current?.querySelectorAll<HTMLElement>('.outcome') ?? [];
    (refusal === null ? heads[heads.length - 1] : heads[0])?.focus();
  }, [work]);
  return (
    <div ref={view}>
      <h2>{auditWords.title}</h2>
      <p class="quiet">{auditWords.intro}</p>
      {work ? (
        <Progress
          label={auditWords.steps[work.step]}
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
      {refusal !== null && !asks?.tables.length && (
        <Notice tone="problem">
          <Said text={refusal} most={1500} />
        </Notice>
      )}
      {cancelled && <Notice tone="note">{auditWords.cancelled}</Notice>}
      {stale && <Notice tone="warning">{auditWords.stale}</Notice>}
      {unsettled && <Notice tone="warning">{auditWords.unsettled}</Notice>}
      {!work && asks && (
        <AskingPart asked={asks} hasReport={report !== null && !asks.refused} onAnswer={answer} />
      )}
      {!work && <KeptAnswers map={state.map} onForget={forget} />}
      <PolicyForm key={String(state.known)} policy={state.policy} onPolicy={setPolicy} />
      {report && workbook && (
        <ComparePart workbook={workbook} earlier={state.earlier} since={report.since} onEarlier={compare} />
      )}
      {report && workbook && (
        <Results
          key={report.generated}
          report={report}
          workbook={workbook}
          map={state.map}
          onMap={setMap}
          onWriting={setWriting}
        />
      )}
      {!work && <CheckResults />}
    </div>
  );
}
