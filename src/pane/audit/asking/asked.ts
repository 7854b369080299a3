import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import { asPart } from '../../../audit/model/steps.ts';
import type { Understand, Understanding } from '../../../audit/read/understand/understand.ts';
import type { Question } from '../../../audit/read/understand/questions/question.ts';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import type { Cancel, OnProgress } from '../../../hosts/port/port.ts';
import { inSlices } from '../run/inSlices.ts';

/** What there is to ask about a workbook, and what was understood of it. */
export interface Asked {
  readonly questions: readonly Question[];
  readonly tables: readonly TableRead[];
  /** Nothing could be judged without answers. */
  readonly refused: boolean;
  /** The user asked to see what was understood. */
  readonly wanted: boolean;
}

/** Understands a workbook by `understand` in slices, so that the pane stays alive; `null` where it was cancelled between two of them. */
export function understandRun(
  workbook: Workbook,
  map: ColumnMap,
  understand: Understand,
  onProgress: OnProgress,
  cancel: Cancel,
): Promise<Understanding | null> {
  return inSlices(
    asPart(understand(workbook, map), () => 0),
    onProgress,
    cancel,
  );
}
