import { parseColumnMap, type ColumnMap } from '../../audit/model/columnMap.ts';
import { parsePolicy, defaultPolicy, type Policy } from '../../audit/model/policy.ts';
import { AuditRefused } from '../../audit/model/refused.ts';
import type { WorkbookPort } from '../../hosts/port/port.ts';
import { auditMessages } from './auditMessages.ts';

/** Keys of the documents that travel with the workbook. */
const keys = { map: 'tripdrift.columns', policy: 'tripdrift.policy' } as const;

export interface Kept {
  readonly map: ColumnMap;
  readonly policy: Policy;
  /** What was kept but can't be used, in words. */
  readonly remarks: readonly string[];
}

/** Answers and policy kept in the workbook; what can't be used is left out and said. */
export async function readKept(port: WorkbookPort): Promise<Kept> {
  const remarks: string[] = [];
  const use = <T>(
    value: unknown,
    parse: (json: unknown) => T,
    otherwise: T,
    remark: (why: string) => string,
  ): T => {
    if (value === null || value === undefined) return otherwise;
    try {
      return parse(value);
    } catch (error) {
      if (!(error instanceof AuditRefused)) throw error;
      remarks.push(remark(error.message));
      return otherwise;
    }
  };
  return {
    map: use(await port.readSetting(keys.map), parseColumnMap, {}, () => auditMessages.answersLost),
    policy: use(await port.readSetting(keys.policy), parsePolicy, defaultPolicy, auditMessages.policyLost),
    remarks,
  };
}

/** Keeps the answers in the workbook. */
export async function keepMap(port: WorkbookPort, map: ColumnMap): Promise<void> {
  await port.writeSetting(keys.map, map);
}

/** Keeps the policy in the workbook. */
export async function keepPolicy(port: WorkbookPort, policy: Policy): Promise<void> {
  await port.writeSetting(keys.policy, policy);
}
