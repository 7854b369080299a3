import type { ColumnMap } from '../../audit/model/columnMap.ts';
import { useEffect, useReducer, useRef, useState } from 'preact/hooks';
import type { Policy } from '../../audit/model/policy.ts';
import { sameWorkbook } from '../../cells/sameWorkbook.ts';
import type { Workbook } from '../../cells/sheet.ts';
import { usePort } from '../app/paneContext.ts';
import { plainMessage } from '../parts/shownText.ts';
import { type Understanding, NotUnderstood } from '../../audit/read/understand/understand.ts';
import { AuditRefused } from '../../audit/model/refused.ts';
import { mergeMaps } from '../../audit/read/understand/answers/merge.ts';
import { withoutAnswers } from './asking/answers.ts';
import { understandRun } from './asking/asked.ts';
import { auditMessages } from './auditMessages.ts';
import { auditReducer, firstAuditState, type AuditState } from './auditState.ts';
import { keepMap, keepPolicy, readKept } from './kept.ts';
import { earlierIn } from './since/earlierIn.ts';
import { auditRun } from './run/auditRun.ts';
import { rememberedUnderstanding } from './run/rememberedUnderstanding.ts';

export interface Audit {
  readonly state: AuditState;
  /** What was kept in the workbook and can't be used, or could not be kept. */
  readonly remarks: readonly string[];
  /** Reads the workbook anew; audits it too unless only what its columns mean is wanted. */
  readonly start: (upTo: 'columns' | 'report') => void;
  /** Keeps what the user said about the workbook, beside what was said before, and audits with it. */
  readonly answer: (said: ColumnMap) => void;
  /** Forgets everything that was answered, and audits without it. */
  readonly forget: () => void;
  readonly cancel: () => void;
  /** Audits the workbook as it was last read once more, compared with a sheet of earlier results or with none. */
  readonly compare: (earlier: string | null) => void;
  readonly setMap: (map: ColumnMap) => void;
  readonly setPolicy: (policy: Policy) => void;
  /** Changes of the workbook don't count while the pane itself writes. */
  readonly setWriting: (under: boolean) => void;
}

/** The audit of the workbook behind the port: what the view shows, and what it can ask for. */
export function useAudit(): Audit {
  const port = usePort();
  const [state, dispatch] = useReducer(auditReducer, firstAuditState);
  const [remarks, setRemarks] = useState<readonly string[]>([]);
  const cancel = useRef({ cancelled: false });
  const writing = useRef(false);
  const asked = useRef({ map: state.map, policy: state.policy });
  const earlier = useRef<string | null>(null);
  const understandBy = useRef(rememberedUnderstanding());
  const lastRead = useRef<Workbook | null>(null);
  const kept = useRef<Promise<void>>(Promise.resolve());

  useEffect(() => {
    let stop: (() => void) | null = null;
    let gone = false;
    const remark = (error: unknown): void => {
      setRemarks((before) => [...before, plainMessage(error)]);
    };
    kept.current = readKept(port).then(({ map, policy, remarks: left }) => {
      asked.current = { map, policy };
      dispatch({ type: 'kept', map, policy });
      setRemarks(left);
    }, remark);
    port
      .onChange(() => {
        if (!writing.current) dispatch({ type: 'workbook changed' });
      })
      .then((off) => {
        if (gone) off();
        else stop = off;
      }, remark);
    return () => {
      gone = true;
      stop?.();
    };
  }, [port]);

  /** Does a piece of work that comes to its end or not; what goes wrong with it is shown. */
  const guarded = async (own: { cancelled: boolean }, job: () => Promise<boolean>): Promise<void> => {
    let done = false;
    try {
      done = await job();
    } catch (error) {
      if (!own.cancelled) dispatch({ type: 'refused', message: plainMessage(error) });
    } finally {
      if (own.cancelled && !done) dispatch({ type: 'cancelled' });
    }
  };
  const progressOf =
    (step: 'understanding' | 'auditing') =>
    (part: number): void => {
      dispatch({ type: 'progress', work: { step, part } });
    };
  const understood = (workbook: Workbook, own: { cancelled: boolean }): Promise<Understanding | null> =>
    understandRun(workbook, asked.current.map, understandBy.current, progressOf('understanding'), own);
  const auditOf = async (workbook: Workbook, own: { cancelled: boolean }): Promise<boolean> => {
    const before = earlierIn(workbook, earlier.current);
    const options = {
      ...asked.current,
      ...(before && { before }),
      understandBy: understandBy.current,
    };
    try {
      const report = await auditRun(workbook, options, progressOf('auditing'), own);
      if (!report) return false;
      if (report.questions.length > 0) {
        const found = await understood(workbook, own);
        if (!found) return false;
        const asks = { questions: report.questions, tables: found.tables, refused: false, wanted: false };
        dispatch({ type: 'asked', asked: asks });
      }
      dispatch({ type: 'audited', report });
      return true;
    } catch (error) {
      if (!(error instanceof AuditRefused) || own.cancelled) throw error;
      const found = error instanceof NotUnderstood ? error.understanding : await understood(workbook, own);
      if (!found) return false;
      const { questions, tables } = found;
      dispatch({ type: 'asked', asked: { questions, tables, refused: true, wanted: false } });
      throw error;
    }
  };
  const run = async (upTo: 'columns' | 'report', own: { cancelled: boolean }): Promise<boolean> => {
    dispatch({ type: 'started' });
    await kept.current;
    const read = await port.readWorkbook((part) => {
      dispatch({ type: 'progress', work: { step: 'reading', part } });
    }, own);
    if (own.cancelled) return false;
    // What was understood of cells that are as they were holds.
    const workbook = lastRead.current && sameWorkbook(lastRead.current, read) ? lastRead.current : read;
    lastRead.current = workbook;
    dispatch({ type: 'read', workbook });
    if (upTo === 'report') return auditOf(workbook, own);
    const found = await understood(workbook, own);
    if (!found) return false;
    const { questions, tables } = found;
    dispatch({ type: 'asked', asked: { questions, tables, refused: false, wanted: true } });
    dispatch({ type: 'shown' });
    return true;
  };
  const keep = (saved: Promise<void>): void => {
    saved.catch((error: unknown) => {
      setRemarks([`${auditMessages.notKept} ${plainMessage(error)}`]);
    });
  };
  const setMap = (map: ColumnMap): void => {
    asked.current = { ...asked.current, map };
    dispatch({ type: 'map', map });
    keep(keepMap(port, map));
  };
  const start = (upTo: 'columns' | 'report'): void => {
    if (state.work) return;
    const own = { cancelled: false };
    cancel.current = own;
    void guarded(own, () => run(upTo, own));
  };
  /** Audits the workbook as it was last read once more, with what the user said since. */
  const again = (workbook: Workbook): void => {
    const own = { cancelled: false };
    cancel.current = own;
    dispatch({ type: 'again', earlier: earlier.current });
    void guarded(own, () => auditOf(workbook, own));
  };
  /** Audits with another map: the workbook as it was read, unless it changed since. */
  const auditWith = (map: ColumnMap): void => {
    if (state.work) return;
    setMap(map);
    if (state.workbook && !state.changed) again(state.workbook);
    else start('report');
  };

  return {
    state,
    remarks,
    start,
    answer(said) {
      auditWith(mergeMaps(asked.current.map, said));
    },
    forget() {
      auditWith(withoutAnswers(asked.current.map));
    },
    compare(sheet) {
      if (state.work || !state.workbook) return;
      earlier.current = sheet;
      again(state.workbook);
    },
    cancel() {
      cancel.current.cancelled = true;
    },
    setMap,
    setPolicy(policy) {
      asked.current = { ...asked.current, policy };
      dispatch({ type: 'policy', policy });
      keep(keepPolicy(port, policy));
    },
    setWriting(under) {
      writing.current = under;
    },
  };
}
