import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Notice } from '../parts/Notice.tsx';
import { Progress } from '../parts/LongActionPart.tsx';
import { Said } from '../parts/Said.tsx';
import { AskingPart } from './asking/AskingPart.tsx';
import { KeptAnswers } from './asking/KeptAnswers.tsx';
import { auditMessages } from './auditMessages.ts';
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
    view.current?.querySelector<HTMLElement>('.asked-first summary, .outcome')?.focus();
  }, [work]);

  const answered = report && workbook;
  /** Questions come first where there is no answer without them, or where the user asked what is understood. */
  const asksFirst = asks !== null && (!report || asks.refused || asks.wanted);
  const asking = !work && asks && (
    <div class={asks.wanted ? 'asked-first' : undefined}>
      <AskingPart asked={asks} hasReport={report !== null && !asks.refused} onAnswer={answer} />
    </div>
  );
  const progress = work && (
    <Progress
      label={auditMessages.steps[work.step]}
      part={work.part}
      cancelText={auditMessages.cancel}
      onCancel={cancel}
    />
  );
  const show = (
    <button
      type="button"
      class="button"
      onClick={() => {
        start('columns');
      }}
    >
      {auditMessages.show}
    </button>
  );
  const further = (
    <>
      {!work && <CheckResults stale={stale} />}
      {!work && answered && <div class="button-row">{show}</div>}
      {!work && <KeptAnswers map={state.map} onForget={forget} />}
      <PolicyForm key={String(state.known)} policy={state.policy} onPolicy={setPolicy} />
      {answered && (
        <ComparePart workbook={workbook} earlier={state.earlier} since={report.since} onEarlier={compare} />
      )}
    </>
  );
  return (
    <div ref={view}>
      {(!answered || asksFirst) && <h2>{auditMessages.title}</h2>}
      {!answered && (
        <>
          <p class="quiet">{auditMessages.intro}</p>
          {progress ?? (
            <div class="button-row">
              <button
                type="button"
                class="button button-first"
                onClick={() => {
                  start('report');
                }}
              >
                {auditMessages.run}
              </button>
              {show}
            </div>
          )}
        </>
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
      {cancelled && <Notice tone="note">{auditMessages.cancelled}</Notice>}
      {asksFirst && asking}
      {answered ? (
        <Results
          report={report}
          workbook={workbook}
          map={state.map}
          onMap={setMap}
          outOfDate={[
            ...(stale ? [auditMessages.stale] : []),
            ...(unsettled ? [auditMessages.unsettled] : []),
          ]}
          onAgain={
            work
              ? null
              : () => {
                  start('report');
                }
          }
          onWriting={setWriting}
          progress={progress}
          asking={!asksFirst && asking}
        >
          {further}
        </Results>
      ) : (
        further
      )}
    </div>
  );
}
