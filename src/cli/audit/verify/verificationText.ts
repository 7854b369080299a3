import {
  coverage,
  isClean,
  type AuditRun,
  type PartCheck,
  type Verification,
} from '../../../evidence/verification.ts';
import { plain, wrapped } from '../../terminal.ts';

const width = 110;

/** What a check found, for someone at a terminal. */
export function verificationText(name: string, verification: Verification): string {
  const { checked, inputs, policy, results, older, without } = verification;
  const lines = [
    `Check of ${plain(name)}`,
    '',
    ...(checked ? [`Audit ${runText(checked)}`] : []),
    ...partLines('Inputs', inputs, 'was'),
    ...partLines('Policy', policy, 'was'),
    ...partLines('Results', results, 'should be'),
    '',
    isClean(verification) ? 'Nothing was edited since the audit.' : 'This is not as the audit left it.',
  ];
  if (older.length > 0)
    lines.push('', 'Other audits in this workbook, not checked', ...older.map((run) => `  ${runText(run)}`));
  if (without.length > 0)
    lines.push(
      '',
      wrapped(`Result sheets without an id, not checked: ${plain(without.join(', '))}.`, width, '  '),
    );
  lines.push('', wrapped(coverage, width, ''));
  return `${lines.join('\n')}\n`;
}

function runText({ id, generated, version, input, sheets }: AuditRun): string {
  const when = generated === '' ? 'at a time not known' : `of ${plain(generated, 40)}`;
  const from = input === '' ? '' : `, ${plain(input, 80)}`;
  const rules = version === '' ? '' : `, rules version ${plain(version, 20)}`;
  return wrapped(`${id} ${when}${from}${rules} (${plain(sheets.join(', '))})`, width, '  ');
}

function partLines(what: string, { state, said, cells, more }: PartCheck, wanted: string): string[] {
  return [
    `  ${what.padEnd(8)} ${state}`,
    ...said.map((text) => wrapped(`    ${plain(text, 600)}`, width, '    ')),
    ...cells.map(({ sheet, row, column, stands, should }) =>
      wrapped(
        `    ${plain(sheet, 31)}!${column}${row}: ${quote(stands)}, ${wanted} ${quote(should)}`,
        width,
        '      ',
      ),
    ),
    ...(more > 0 ? [`    and ${more} more cells.`] : []),
  ];
}

function quote(text: string): string {
  return text === '' ? 'empty' : `“${plain(text, 60)}”`;
}
