import { checkWritable } from '../../checkWritable.ts';
import { isOwnReport } from '../../files.ts';
import { inPieces } from '../../writeAll.ts';
import { reportJson } from '../reportJson.ts';
import { filesRead } from './filesRead.ts';
import type { OutputKind } from './wanted.ts';

/** `--json FILE`: the report as JSON. An earlier report of ours is written anew without being asked. */
export const jsonReport: OutputKind = {
  check(options) {
    const { json, force } = options;
    if (json === undefined || json === '-') return;
    checkWritable(json, filesRead(options), force || isOwnReport(json));
  },
  output({ json }, { report }) {
    if (json === undefined || json === '-') return undefined;
    return { ...inPieces(json, reportJson(report)), said: () => [`Written: ${json}.`] };
  },
};
