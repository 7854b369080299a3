import { checkWritable, inPieces, isOwnReport } from '../../files.ts';
import { reportJson } from '../reportJson.ts';
import type { OutputKind } from './wanted.ts';

/** `--json FILE`: the report as JSON. An earlier report of ours is written anew without being asked. */
export const jsonReport: OutputKind = {
  check({ inputs, json, force }) {
    if (json === undefined || json === '-') return;
    checkWritable(json, inputs, force || isOwnReport(json));
  },
  output({ json }, { report }) {
    if (json === undefined || json === '-') return undefined;
    return { ...inPieces(json, reportJson(report)), said: () => [`Written: ${json}.`] };
  },
};
