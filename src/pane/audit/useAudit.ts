import { useEffect, useReducer, useRef, useState } from 'preact/hooks';
import type { Policy } from '../../audit/policy/policy.ts';
import type { ColumnMap } from '../../audit/tables/columnMap.ts';
import { usePort } from '../app/paneContext.ts';
import { plainMessage } from '../parts/plainMessage.ts';
import { auditReducer, firstAuditState, type AuditState } from './auditState.ts';
import { keepMap, keepPolicy, readKept } from './kept.ts';
import { auditRun } from './run/auditRun.ts';

export interface Audit {
  readonly state: AuditState;
  /** What was kept in the workbook and can't be used, or could not be kept. */
  readonly remarks: readonly string[];
  /** Reads the workbook anew; audits it too unless only its columns are wanted. */
  readonly start: (upTo: 'columns' | 'report') => void;
  readonly cancel: () => void;
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
  asked.current = { map: state.map, policy: state.policy };

  useEffect(() => {
    let stop: (() => void) | null = null;
    let gone = false;
    const remark = (error: unknown): void => {
      setRemarks((before) => [...before, plainMessage(error)]);
    };
    readKept(port).then((kept) => {
      dispatch({ type: 'kept', map: kept.map, policy: kept.policy });
      setRemarks(kept.remarks);
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

  const run = async (upTo: 'columns' | 'report', own: { cancelled: boolean }): Promise<void> => {
    dispatch({ type: 'started' });
    try {
      const workbook = await port.readWorkbook((part) => {
        dispatch({ type: 'progress', work: { step: 'reading', part } });
      }, own);
      if (own.cancelled) return;
      dispatch({ type: 'read', workbook });
      if (upTo === 'columns') {
        dispatch({ type: 'shown' });
        return;
      }
      const onProgress = (part: number): void => {
        dispatch({ type: 'progress', work: { step: 'auditing', part } });
      };
      const report = await auditRun(workbook, asked.current, onProgress, own);
      if (report) dispatch({ type: 'audited', report });
    } catch (error) {
      if (!own.cancelled) dispatch({ type: 'refused', message: plainMessage(error) });
    } finally {
      if (own.cancelled) dispatch({ type: 'cancelled' });
    }
  };
  const keep = (saved: Promise<void>): void => {
    saved.catch((error: unknown) => {
      setRemarks([plainMessage(error)]);
    });
  };

  return {
    state,
    remarks,
    start(upTo) {
      if (state.work) return;
      cancel.current = { cancelled: false };
      void run(upTo, cancel.current);
    },
    cancel() {
      cancel.current.cancelled = true;
    },
    setMap(map) {
      dispatch({ type: 'map', map });
      keep(keepMap(port, map));
    },
    setPolicy(policy) {
      dispatch({ type: 'policy', policy });
      keep(keepPolicy(port, policy));
    },
    setWriting(under) {
      writing.current = under;
    },
  };
}
