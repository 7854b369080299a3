import type { Report } from '../../audit/model/report.ts';

/** The report as JSON in pieces, so that one of a hundred thousand channels never stands in memory as one text. */
export function* reportJson(report: Report): Generator<string> {
  const { channels, ...rest } = report;
  const outer = JSON.stringify({ ...rest, channels: [] }, null, 1);
  const mark = outer.lastIndexOf('"channels": []');
  yield outer.slice(0, mark) + '"channels": [';
  let piece = '';
  for (const [index, channel] of channels.entries()) {
    piece += `${index === 0 ? '' : ','}\n${JSON.stringify(channel)}`;
    if (piece.length > 1_000_000) {
      yield piece;
      piece = '';
    }
  }
  yield `${piece}\n]${outer.slice(mark + '"channels": []'.length)}\n`;
}
