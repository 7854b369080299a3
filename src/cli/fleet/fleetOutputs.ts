import { join } from 'node:path';
import { addSheetsTo } from '../../hosts/file/write/addSheets.ts';
import { emptyWorkbook } from '../../hosts/file/write/newWorkbook.ts';
import { nodeDeflater } from '../../hosts/file/zip/nodeDeflater.ts';
import { fleetSheet } from '../../sheets/fleet/fleetSheet.ts';
import type { Fleet } from '../../sheets/fleet/types.ts';
import { sheetNames } from '../../sheets/titles.ts';
import { inPieces, writeAll, type Output } from '../writeAll.ts';
import type { Targets } from './targets.ts';

/**
 * Writes the workbook over all others, and the JSON where `json` names a file for it, all or none; what to tell the user.
 * Rejects with the reason of `signal` once that is aborted.
 * @throws UsageRefused where one can't be written.
 */
export async function writeFleet(
  fleet: Fleet,
  targets: Targets | undefined,
  json: string | undefined,
  pieces: Iterable<string | Uint8Array> | undefined,
  signal: AbortSignal,
): Promise<readonly string[]> {
  const outputs: Output[] = [];
  const said: string[] = [];
  if (targets) {
    const copies = fleet.files.filter(({ refused }) => refused === null).length;
    outputs.push({
      given: join(targets.folder, targets.summary),
      write(put) {
        addSheetsTo(emptyWorkbook(), [fleetSheet(fleet)], put, { deflater: nodeDeflater });
      },
    });
    const renamed =
      targets.summary === `${sheetNames.fleet}.xlsx`
        ? ''
        : ` (one of the inputs is named '${sheetNames.fleet}.xlsx')`;
    const workbooks = copies === 1 ? '1 copy' : `${copies} copies`;
    said.push(
      `Written: ${workbooks} with result sheets and '${targets.summary}'${renamed} in ${targets.folder}.`,
    );
  }
  if (json !== undefined && pieces) {
    outputs.push(inPieces(json, pieces));
    said.push(`Written: ${json}.`);
  }
  await writeAll(outputs, { signal });
  return said;
}
