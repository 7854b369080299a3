import { closeSync, openSync, readSync } from 'node:fs';
import type { Policy } from '../../audit/model/policy.ts';
import { parsePolicy } from '../../audit/model/policy.ts';
import type { TrendSource } from '../../audit/model/trend.ts';
import { findTrendHead, headRows } from '../../audit/read/trend/trendHead.ts';
import { csvStream } from '../../hosts/file/read/csvStream.ts';
import { baseName } from '../../hosts/file/read/fileName.ts';
import { FileRefused } from '../../hosts/file/zip/refused.ts';
import { pathOf } from '../files.ts';
import { UsageRefused, inWords } from '../refused.ts';
import { isTextTable } from './input.ts';
import type { Options } from './options.ts';

/** Bytes that are read at a time. */
const pieceSize = 1 << 20;

/**
 * The readings that `--replay` names, read piece by piece; `undefined` where it names none.
 * @throws UsageRefused, FileRefused where the file can't be read or has no column of times.
 */
export function trendFile({ replay }: Options): TrendSource | undefined {
  if (replay === undefined) return undefined;
  if (!isTextTable(replay))
    throw new UsageRefused(
      `--replay ${replay}: recorded readings come as a text table (.csv). A table in the workbook is replayed unasked.`,
    );
  try {
    const { rows, plainText } = csvStream(() => piecesOf(replay));
    const source: TrendSource = { name: baseName(replay), from: 'file', rows, plainText };
    if (!findTrendHead(rows())) throw new FileRefused(noHead(source));
    return source;
  } catch (error) {
    if (error instanceof FileRefused) throw new FileRefused(`--replay ${replay}: ${error.message}`);
    throw error;
  }
}

/** The policy with what `--replay-zone` and `--replay-dates` say of the readings. @throws AuditRefused, UsageRefused */
export function replayPolicy(policy: Policy, options: Options): Policy {
  const { 'replay-zone': zone, 'replay-dates': dates } = options;
  if (zone === undefined && dates === undefined) return policy;
  const order = { dmy: 'day first', mdy: 'month first' }[dates ?? ''];
  if (dates !== undefined && order === undefined)
    throw new UsageRefused(`--replay-dates ${dates}: choose dmy or mdy.`);
  return parsePolicy({
    ...policy,
    replay: { ...policy.replay, ...(zone === undefined ? {} : { zone }), ...(order ? { dates: order } : {}) },
  });
}

function* piecesOf(given: string): Generator<Uint8Array, void, void> {
  let file: number;
  try {
    file = openSync(pathOf(given), 'r');
  } catch (error) {
    throw new UsageRefused(`${given}: ${inWords(error, 'can not be read')}.`);
  }
  try {
    for (;;) {
      const piece = new Uint8Array(pieceSize);
      const read = readPiece(given, file, piece);
      if (read === 0) return;
      yield piece.subarray(0, read);
    }
  } finally {
    closeSync(file);
  }
}

function readPiece(given: string, file: number, piece: Uint8Array): number {
  try {
    return readSync(file, piece);
  } catch (error) {
    throw new UsageRefused(`${given}: ${inWords(error, 'can not be read')}.`);
  }
}

function noHead({ rows }: TrendSource): string {
  const seen: string[] = [];
  for (const cells of rows()) {
    seen.push(
      ...cells.flatMap((cell) =>
        typeof cell === 'string' && cell.trim() !== '' ? [`'${cell.trim().slice(0, 30)}'`] : [],
      ),
    );
    if (seen.length > 0) break;
  }
  return `none of its first ${headRows} rows heads recorded readings: a column 'time', and either 'tag' and 'reading' or a column for each tag. Its first row holds ${seen.slice(0, 8).join(', ')}.`;
}
