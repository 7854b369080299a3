import { addSheetsTo } from '../../../hosts/file/write/addSheets.ts';
import { nodeDeflater } from '../../../hosts/file/zip/nodeDeflater.ts';
import type { SheetModel } from '../../../sheets/model.ts';
import { resultSheets } from '../../../sheets/resultSheets.ts';
import { checkWritable } from '../../files.ts';
import { UsageRefused } from '../../refused.ts';
import { plain, type Progress } from '../../terminal.ts';
import type { CopySource } from '../auditInput.ts';
import type { OutputKind, WantedOutput } from './wanted.ts';

/** `--out`: a copy of the workbook with the result sheets behind its own. */
export const resultsCopy: OutputKind = {
  check({ inputs, out, force }) {
    if (out === undefined) return;
    const wanted = /\.xlsm$/iu.test(inputs[0] ?? '') ? '.xlsm' : '.xlsx';
    if (!out.toLowerCase().endsWith(wanted)) {
      throw new UsageRefused(`--out ${out}: a copy of ${inputs[0] ?? ''} must be named ${wanted}.`);
    }
    checkWritable(out, inputs, force);
  },
  output({ out }, { report, source }, progress) {
    return out === undefined ? undefined : copyWith(out, source, () => resultSheets(report), progress);
  },
};

/** Sheets named in what the user is told. */
const mostNamed = 10;

/** A copy of a workbook with further sheets, which are made when it is written. */
export function copyWith(
  given: string,
  { original, ownSheets }: CopySource,
  further: () => readonly SheetModel[],
  progress: Progress,
): WantedOutput {
  let said: readonly string[] = [];
  return {
    given,
    write(put) {
      const sheets = further();
      const { sheetNames, notes } = addSheetsTo(original, [...ownSheets, ...sheets], put, {
        deflater: nodeDeflater,
        onProgress: (done, total) => {
          progress.show('writing', done / total);
        },
      });
      const names = sheetNames
        .slice(-sheets.length)
        .map((name) =>
          name.wanted === name.given
            ? `'${name.given}'`
            : `'${name.given}' (there is a '${name.wanted}' already)`,
        );
      const more = names.length - mostNamed;
      const which = names.slice(0, mostNamed).join(', ') + (more > 0 ? ` and ${more} more` : '');
      said = [
        `Written: ${given}, with ${names.length === 1 ? 'the sheet' : 'the sheets'} ${plain(which)}.`,
        ...notes.map((note) => plain(note)),
      ];
    },
    said: () => said,
  };
}
