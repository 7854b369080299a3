import { emptyWorkbook } from '../../../hosts/file/write/newWorkbook.ts';
import { handoverSheets } from '../../../sheets/handover/handoverSheets.ts';
import { checkWritable } from '../../checkWritable.ts';
import { UsageRefused } from '../../refused.ts';
import { filesRead } from './filesRead.ts';
import { copyWith } from './resultsCopy.ts';
import type { OutputKind } from './wanted.ts';

/** `--handover`: a workbook of its own with a list of the machines and a sheet to hand over for each. */
export const handoverBook: OutputKind = {
  check(options) {
    const { handover, force } = options;
    if (handover === undefined) return;
    if (!/\.xlsx$/iu.test(handover)) {
      throw new UsageRefused(`--handover ${handover}: the hand-over workbook must be named .xlsx.`);
    }
    checkWritable(handover, filesRead(options), force);
  },
  output({ handover }, { report }, progress) {
    if (handover === undefined) return undefined;
    const empty = { original: emptyWorkbook(), ownSheets: [] };
    return copyWith(handover, empty, () => handoverSheets(report), progress);
  },
};
