import type { ColumnMap } from '../../audit/model/columnMap.ts';
import type { Workbook } from '../../cells/sheet.ts';
import { defaultPolicy, type Policy } from '../../audit/model/policy.ts';
import type { Report } from '../../audit/model/report.ts';
import type { Asked } from './asking/asked.ts';

type Work = { readonly step: 'reading' | 'understanding' | 'auditing'; readonly part: number };

export interface AuditState {
  /** What the user answered about the workbook, as it is kept in it. */
  readonly map: ColumnMap;
  readonly policy: Policy;
  /** Both were looked up in the workbook. */
  readonly known: boolean;
  /** The workbook as it was last read. */
  readonly workbook: Workbook | null;
  /** What there is to ask about it; `null` where that is not known, or nothing is asked. */
  readonly asked: Asked | null;
  readonly work: Work | null;
  readonly report: Report | null;
  /** The sheet of earlier results with which `report` is compared, or the next one will be. */
  readonly earlier: string | null;
  /** Answers or policy are no longer those of `report`. */
  readonly unsettled: boolean;
  /** The workbook changed after it was read for `report`. */
  readonly stale: boolean;
  /** It changed after it was read for the audit that is under way. */
  readonly changed: boolean;
  readonly cancelled: boolean;
  /** Why the audit can't be done. */
  readonly refusal: string | null;
}

export type AuditAction =
  | { readonly type: 'kept'; readonly map: ColumnMap; readonly policy: Policy }
  | { readonly type: 'map'; readonly map: ColumnMap }
  | { readonly type: 'policy'; readonly policy: Policy }
  | { readonly type: 'started' }
  /** The workbook as it was last read is audited once more, compared with this sheet. */
  | { readonly type: 'again'; readonly earlier: string | null }
  | { readonly type: 'progress'; readonly work: Work }
  | { readonly type: 'read'; readonly workbook: Workbook }
  | { readonly type: 'audited'; readonly report: Report }
  | { readonly type: 'asked'; readonly asked: Asked }
  | { readonly type: 'shown' }
  | { readonly type: 'refused'; readonly message: string }
  | { readonly type: 'cancelled' }
  | { readonly type: 'workbook changed' };

export const firstAuditState: AuditState = {
  map: {},
  policy: defaultPolicy,
  known: false,
  workbook: null,
  asked: null,
  work: null,
  report: null,
  earlier: null,
  unsettled: false,
  stale: false,
  changed: false,
  cancelled: false,
  refusal: null,
};

/** The next state of the audit view. A run that fails or is cancelled leaves the result of the last one. */
export function auditReducer(state: AuditState, action: AuditAction): AuditState {
  switch (action.type) {
    case 'kept':
      return { ...state, map: action.map, policy: action.policy, known: true };
    case 'map':
      return { ...state, map: action.map, unsettled: state.report !== null };
    case 'policy':
      return { ...state, policy: action.policy, unsettled: state.report !== null };
    case 'started':
      return {
        ...state,
        work: { step: 'reading', part: 0 },
        asked: null,
        changed: false,
        cancelled: false,
        refusal: null,
      };
    case 'again':
      return {
        ...state,
        earlier: action.earlier,
        work: { step: 'auditing', part: 0 },
        asked: null,
        cancelled: false,
        refusal: null,
      };
    case 'progress':
      return { ...state, work: state.work && action.work };
    case 'read': {
      const still = action.workbook.sheets.some(({ name }) => name === state.earlier);
      return { ...state, workbook: action.workbook, earlier: still ? state.earlier : null };
    }
    case 'asked':
      return { ...state, asked: action.asked };
    case 'audited':
      return { ...state, work: null, report: action.report, unsettled: false, stale: state.changed };
    case 'shown':
      return { ...state, work: null };
    case 'refused':
      return { ...state, work: null, refusal: action.message };
    case 'cancelled':
      return { ...state, work: null, cancelled: true };
    case 'workbook changed':
      return { ...state, changed: true, stale: state.report !== null };
  }
}
