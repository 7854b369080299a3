import { closeSync, openSync, readSync } from 'node:fs';
import type { Fleet } from '../../sheets/fleet/types.ts';

const chunk = 1 << 20;

/**
 * A fleet as JSON in pieces, each report as it lies in a file of its own (`reportOf` a workbook); none stands in memory
 * whole.
 */
export function* fleetJson(
  fleet: Pick<Fleet, 'generated' | 'files' | 'leftOut'>,
  reportOf: (index: number) => string,
): Generator<string | Uint8Array> {
  const { generated, files, leftOut } = fleet;
  yield `{\n "schema": "tripdrift-fleet/1",\n "generated": ${JSON.stringify(generated)},\n "files": [`;
  for (const [index, { file, refused }] of files.entries()) {
    yield `${index === 0 ? '' : ','}\n{"file": ${JSON.stringify(file)}, "refused": ${JSON.stringify(refused)}, "report": `;
    if (refused === null) yield* contentOf(reportOf(index));
    else yield 'null';
    yield '}';
  }
  yield `\n],\n "leftOut": ${JSON.stringify(leftOut)}\n}\n`;
}

function* contentOf(path: string): Generator<Uint8Array> {
  const file = openSync(path, 'r');
  try {
    for (;;) {
      const piece = new Uint8Array(chunk);
      const length = readSync(file, piece);
      if (length === 0) return;
      yield piece.subarray(0, length);
    }
  } finally {
    closeSync(file);
  }
}
