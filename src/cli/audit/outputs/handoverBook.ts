import { emptyWorkbook } from '../../../hosts/file/write/newWorkbook.ts';
import { handoverSheets } from '../../../sheets/handover/handoverSheets.ts';
import { checkWritable } from '../../files.ts';
import { UsageRefused } from '../../refused.ts';
import { copyWith } from './resultsCopy.ts';
import type { OutputKind } from './wanted.ts';

/** `--handover`: a workbook of its own with a list of the machines and a sheet to hand over for each. */
export const handoverBook: OutputKind = {
  check({ inputs, handover, force }) {
    if (handover === undefined) return;
    if (!/\.xlsx$/iu.test(handover)) {
      throw new UsageRefused(`--handover ${handover}: the hand-over workbook must be named .xlsx.`);
    }
    checkWritable(handover, inputs, force);
  },
  output({ handover }, { report }, progress) {
    if (handover === undefined) return undefined;
    const empty = { original: emptyWorkbook(), ownSheets: [] };
    return copyWith(handover, empty, () => handoverSheets(report), progress);
  },
};
