import type { Sheet, Workbook } from '../../../../cells/sheet.ts';
import type { Steps } from '../../../model/steps.ts';
import { isResultSheet } from '../../tables/titleWords.ts';
import type { Block } from './block.ts';
import { formBlocks, labelledAreas, type Form } from './columnBlocks.ts';
import { rowBlocks } from './rowBlocks.ts';

/** Every block of a workbook's own sheets, in their order; results of earlier audits are none. */
export function* findBlocks(workbook: Workbook): Steps<void, Block[]> {
  const found: Omit<Block, 'id'>[] = [];
  const forms: Form[] = [];
  for (const sheet of workbook.sheets) {
    if (isResultSheet(sheet)) continue;
    const rows = yield* rowBlocks(sheet);
    yield;
    const { blocks, forms: own } = labelledAreas(sheet, outside(sheet, rows));
    found.push(...rows, ...blocks);
    forms.push(...own);
    yield;
  }
  return [...found, ...formBlocks(forms)].map((block, id) => ({ ...block, id }));
}

/** Whether a row is of no block found so far. */
function outside(sheet: Sheet, blocks: readonly Omit<Block, 'id'>[]): (row: number) => boolean {
  const taken = blocks.map(({ header, span }) => [header[0], span[1]] as const);
  return (row) => !taken.some(([first, last]) => row >= first && row <= last) && row <= sheet.rows.length;
}
