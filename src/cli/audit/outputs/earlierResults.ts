import { ownSheets } from '../../../evidence/ownSheets.ts';
import { readWorkbook } from '../../../hosts/file/read/workbook.ts';
import { referencesTo, type Reference } from '../../../hosts/file/remove/references.ts';
import { removeSheets, sheetsWithMore } from '../../../hosts/file/remove/removeSheets.ts';
import { nodeDeflater } from '../../../hosts/file/zip/nodeDeflater.ts';
import { UsageRefused } from '../../refused.ts';

/** A workbook without the result sheets of earlier audits. */
export interface WithoutResults {
  readonly bytes: Uint8Array;
  readonly removed: readonly string[];
  /** Cells and other places of the user's that refer to one of them by a name that a new sheet will have. */
  readonly referring: readonly Reference[];
}

/** How earlier result sheets are taken away. */
export interface Removing {
  /** The option that asks for it, as people type it. */
  readonly option: string;
  /** Consent to lose edited ones. */
  readonly evenEdited: boolean;
  /** Names that sheets will have that come in their place. */
  readonly coming: readonly string[];
}

/**
 * Takes the result sheets of earlier audits out of a workbook.
 * @throws UsageRefused where one was edited and that was not consented to, or where something refers to one that does not
 * come back; FileRefused where the workbook can't be read or sheets can't be removed.
 */
export function withoutResults(
  original: Uint8Array,
  { option, evenEdited, coming }: Removing,
): WithoutResults {
  const { proven, unproven } = ownSheets(readWorkbook('workbook', original));
  const all = [...proven, ...unproven];
  if (all.length === 0) return { bytes: original, removed: [], referring: [] };
  const edited = [...unproven, ...sheetsWithMore(original, proven)];
  if (edited.length > 0 && !evenEdited) {
    const which = edited.map((name) => `'${name}'`).join(', ');
    const were = edited.length === 1 ? 'is not as its audit wrote it' : 'are not as their audit wrote them';
    throw new UsageRefused(
      `${option}: ${which} ${were}. Give --remove-edited as well to lose ${edited.length === 1 ? 'it' : 'them'}.`,
    );
  }
  const referring = referencesTo(original, all);
  const lost = referring.filter(({ sheet }) => !coming.includes(sheet));
  const [first] = lost;
  if (first) {
    const more = lost.length > 1 ? ` So do ${lost.length - 1} more places.` : '';
    throw new UsageRefused(
      `${option}: ${first.where} refers to the result sheet '${first.sheet}'.${more} Replace it by its value, then try again.`,
    );
  }
  return { bytes: removeSheets(original, all, nodeDeflater), removed: all, referring };
}

/** What was done, one sentence each. */
export function removalNotes({ removed, referring }: WithoutResults, replaced: boolean): readonly string[] {
  if (removed.length === 0) return ['There was no earlier result sheet.'];
  const [first] = referring;
  const more = referring.length > 1 ? ` and ${referring.length - 1} more places refer` : ' refers';
  return [
    `${replaced ? 'Replaced' : 'Removed'}: ${removed.map((name) => `'${name}'`).join(', ')}.`,
    ...(first
      ? [`${first.where}${more} to a result sheet and now to the new one: check what stands there.`]
      : []),
  ];
}
