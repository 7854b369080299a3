import type { ViewRow } from '../../hosts/file/view/types.ts';
import type { OpenedFile } from '../open/openFile.ts';
import { inWorker } from './inWorker.ts';
import { gatheredRows } from './rowPieces.ts';

/** As `openFile`, while the page stays alive. */
export async function openInWorker(name: string, bytes: Uint8Array): Promise<OpenedFile> {
  const rows = gatheredRows<ViewRow>();
  const { view, isWorkbook, ...rest } = await inWorker('opened', [{ kind: 'open', name, bytes }], rows.take);
  const sheets = view.sheets.map((sheet, index) => ({ ...sheet, rows: rows.of(index) }));
  return { ...rest, view: { ...view, sheets }, original: isWorkbook ? bytes : null };
}
