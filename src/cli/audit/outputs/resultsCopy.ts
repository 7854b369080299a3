import { addSheetsTo } from '../../../hosts/file/write/addSheets.ts';
import { nodeDeflater } from '../../../hosts/file/zip/nodeDeflater.ts';
import type { SheetModel } from '../../../sheets/model.ts';
import { resultSheets } from '../../../sheets/resultSheets.ts';
import { checkWritable } from '../../checkWritable.ts';
import { plain, type Progress } from '../../terminal.ts';
import type { AuditedInput, CopySource } from '../auditInput.ts';
import { removalNotes, withoutResults } from './earlierResults.ts';
import { type OutputKind, type WantedOutput, filesRead, checkCopyName } from './wanted.ts';

/** `--out`: a copy of the workbook with the result sheets behind its own. */
export const resultsCopy: OutputKind = {
  check(options) {
    const { inputs, out, force } = options;
    if (out === undefined) return;
    checkCopyName('--out', out, inputs[0]);
    checkWritable(out, filesRead(options), force);
  },
  output(options, { report, source }, progress) {
    const { out, 'replace-results': replacing } = options;
    if (out === undefined) return undefined;
    return replacing
      ? replaced(out, { report, source }, options['remove-edited'], progress)
      : copyWith(out, source, () => resultSheets(report), progress);
  },
};

/** The copy in which the result sheets stand in place of those of earlier audits. */
function replaced(
  given: string,
  { report, source }: AuditedInput,
  evenEdited: boolean,
  progress: Progress,
): WantedOutput {
  let notes: readonly string[] = [];
  let copy: WantedOutput | undefined;
  return {
    given,
    write(put) {
      const sheets = resultSheets(report);
      const without = withoutResults(source.original, {
        option: '--replace-results',
        evenEdited,
        coming: sheets.map(({ name }) => name),
      });
      copy = copyWith(given, { ...source, original: without.bytes }, () => sheets, progress);
      copy.write(put);
      notes = removalNotes(without, true).map((note) => plain(note));
    },
    said: () => [...(copy?.said() ?? []), ...notes],
  };
}

/** A copy of a workbook, once it is written. */
export interface WrittenCopy extends WantedOutput {
  /** What else a person should know of it, one sentence a line; sheets that had to be named otherwise among it. */
  readonly notes: () => readonly string[];
}

/** A copy of a workbook with further sheets, which are made when it is written. */
export function copyWith(
  given: string,
  { original, ownSheets }: CopySource,
  further: () => readonly SheetModel[],
  progress: Progress,
): WrittenCopy {
  let said: readonly string[] = [];
  let known: readonly string[] = [];
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
      const added = sheetNames.slice(-sheets.length);
      const names = added.map((name) => (isRenamed(name) ? renamed(name) : `'${name.given}'`));
      const more = notes.map((note) => plain(note));
      said = [`Written: ${given}, with ${sheetList(names)}.`, ...more];
      known = [...added.filter(isRenamed).map((name) => plain(`New sheet ${renamed(name)}.`)), ...more];
    },
    said: () => said,
    notes: () => known,
  };
}

/** Sheets named in what the user is told. */
const mostNamed = 10;

function sheetList(names: readonly string[]): string {
  const more = names.length - mostNamed;
  const which = plain(names.slice(0, mostNamed).join(', '));
  return `${names.length === 1 ? 'the sheet' : 'the sheets'} ${which}${more > 0 ? ` and ${more} more` : ''}`;
}

interface SheetName {
  readonly wanted: string;
  readonly given: string;
}

function isRenamed({ wanted, given }: SheetName): boolean {
  return wanted !== given;
}

function renamed({ wanted, given }: SheetName): string {
  return `'${given}' (there is a '${wanted}' already)`;
}
