import { patchWorkbook } from '../../hosts/file/patch/patchWorkbook.ts';
import type { SheetEdits } from '../../hosts/file/patch/types.ts';
import { emptyWorkbook } from '../../hosts/file/write/newWorkbook.ts';
import { collect } from '../../hosts/file/zip/collect.ts';
import { shareWorkbook } from '../../share/shareWorkbook.ts';
import type { ShareOptions } from '../../share/types.ts';
import type { NewSheet } from '../save/newSheets.ts';
import type { Copied } from './messages.ts';

/** What makes a copy another than its original. */
export interface CopyOrder {
  /** `null` for a new workbook. */
  readonly original: Uint8Array | null;
  readonly edits: readonly SheetEdits[];
  readonly added: readonly NewSheet[];
  /** The copy is for people without our functions. */
  readonly share?: ShareOptions;
}

/** The bytes of a copy with its edits and added sheets. Throws FileRefused where a change cannot be kept, or it cannot be shared. */
export function patchedCopy(order: CopyOrder): Copied {
  const whole = edited(order);
  if (!order.share) return whole;
  const { bytes, notes } = shareWorkbook(whole.bytes, order.share);
  return { bytes, notes: [...notes, ...whole.notes] };
}

function edited({ original, edits, added }: CopyOrder): Copied {
  const first = collect();
  const { sheetNames, notes } = patchWorkbook(
    original ?? emptyWorkbook(),
    edits,
    added.map(({ model }) => model),
    first.sink,
  );
  const later = added.flatMap(({ beyondModel: cells }, index) =>
    cells.length === 0 ? [] : [{ sheet: sheetNames[index]?.given ?? '', cells }],
  );
  if (later.length === 0) return { bytes: first.bytes(), notes };
  const second = collect();
  patchWorkbook(first.bytes(), later, [], second.sink);
  return { bytes: second.bytes(), notes };
}
