import { changeKinds, changeWords, type Change, type SinceResult } from '../../audit/model/since.ts';
import { plain, wrapped } from '../terminal.ts';

/** Characters before a change's words. */
const indent = 23;

/** What changed since an earlier audit, for someone at a terminal: counts, then the worst changes. */
export function sinceLines(
  { before, counts, changes, remarks }: SinceResult,
  width: number,
  most: number,
): string[] {
  const when = before.audited === null ? '' : `, ${before.audited.slice(0, 10)}`;
  const source = {
    tables: '',
    report: ` (report${when})`,
    'result sheet': ` (sheet '${plain(before.sheet ?? '', 31)}'${when})`,
  }[before.from];
  const told = changeKinds
    .filter((kind) => counts[kind] > 0)
    .map((kind) => `${counts[kind]} ${changeWords[kind]}`);
  return [
    '',
    `Since ${plain(before.input)}${source}`,
    wrapped(`  ${told.length === 0 ? 'Nothing changed' : told.join(', ')}.`, width, '  '),
    ...changes.slice(0, most).map((change) => changeLine(change, width)),
    ...(changes.length > most ? [`  and ${changes.length - most} more.`] : []),
    ...remarks
      .slice(0, most)
      .map(({ sheet, row, column, message }) =>
        wrapped(
          `  ${sheet === '' ? '' : `${plain(sheet, 31)}!${column}${row}: `}${plain(message)}`,
          width,
          '    ',
        ),
      ),
    ...(remarks.length > most ? [`  and ${remarks.length - most} remarks more.`] : []),
  ];
}

function changeLine({ kind, tag, machine, location, message }: Change, width: number): string {
  const where = [machine, location].filter((text) => text !== '').map((text) => plain(text, 40));
  const of = `${plain(tag, 40)}${where.length > 0 ? ` (${where.join(', ')})` : ''}`;
  return wrapped(
    `  ${changeWords[kind].padEnd(indent - 3)} ${of}: ${plain(message)}`,
    width,
    ' '.repeat(indent),
  );
}
