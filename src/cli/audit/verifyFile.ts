import { finish } from '../../audit/model/steps.ts';
import {
  isClean,
  coverage,
  type AuditRun,
  type PartCheck,
  type Verification,
} from '../../evidence/verification.ts';
import { verifyInSteps } from '../../evidence/verify.ts';
import { UsageRefused } from '../refused.ts';
import { plain, progressOn, wrapped } from '../terminal.ts';
import { readInput } from './input.ts';
import { optionList } from './optionList.ts';
import type { Options } from './options.ts';
import type { FileFormulas } from '../../evidence/formulas.ts';
import { viewWorkbook } from '../../hosts/file/view/viewWorkbook.ts';
import { openWorkbook } from '../../hosts/file/write/package/openWorkbook.ts';
import { attribute, child } from '../../hosts/file/write/xml/outline.ts';
import { formulaTokens } from '../../hosts/formats/formulaTokens.ts';
import { rowFormula } from '../../hosts/formats/rowFormula.ts';

const width = 110;

const others = (Object.keys(optionList) as (keyof typeof optionList)[]).filter((name) => name !== 'verify');

/**
 * `--verify`: checks a workbook with result sheets and says what was edited. Returns 0 where nothing was, 1 otherwise.
 * @throws UsageRefused, FileRefused where the workbook can't be read or holds no results.
 */
export function verifyFile(options: Options): number {
  const other = others.find((name) => options[name] !== undefined && options[name] !== false);
  if (other !== undefined)
    throw new UsageRefused(
      `--verify goes without --${other}: it writes nothing, and goes by the policy and column map of the audit.`,
    );
  const progress = progressOn(process.stderr);
  try {
    const { workbook, original } = readInput(options.inputs, (part) => {
      progress.show('reading', part);
    });
    if (!original) throw new UsageRefused('--verify takes a workbook with result sheets, not text tables.');
    const verification = finish(verifyInSteps(workbook, fileFormulas(workbook.name, original)), (part) => {
      progress.show('checking', part);
    });
    progress.clear();
    if (!verification.checked) throw new UsageRefused(nothingToCheck(workbook.name, verification.without));
    process.stdout.write(verificationText(workbook.name, verification));
    return isClean(verification) ? 0 : 1;
  } finally {
    progress.clear();
  }
}

function nothingToCheck(name: string, without: readonly string[]): string {
  if (without.length === 0) return `${plain(name)} holds no result sheets, so there is nothing to check.`;
  const sheets = plain(without.map((sheet) => `'${sheet}'`).join(', '));
  return `${plain(name)} holds result sheets without evidence (${sheets}): sheets to hand over alone, or from a version that kept none. They can't be checked: check the workbook of --out.`;
}

/** The formulas of a workbook's file. @throws FileRefused where it can't be read. */
export function fileFormulas(name: string, original: Uint8Array): FileFormulas {
  const sheets = new Map(
    viewWorkbook(name, original).sheets.map((sheet) => [
      sheet.name,
      new Map(
        sheet.rows.flatMap(({ row, cells }) =>
          cells.flatMap(({ column, formula }) =>
            formula === undefined ? [] : [[`${row} ${column}`, formula] as const],
          ),
        ),
      ),
    ]),
  );
  const { root } = openWorkbook(original, false).workbook;
  const settings = child(root, 'calcPr');
  const asked = settings && attribute(settings, 'fullCalcOnLoad');
  return {
    calculatedOnOpening: asked === '1' || asked === 'true',
    at: (sheet, row, column) => sheets.get(sheet)?.get(`${row} ${column}`),
    written: (template, row, names) => rowFormula(template, names).at(row),
    same: (one, other) => one === other || spelledAlike(one) === spelledAlike(other),
  };
}

/**
 * A formula without what programs spell in their own way: white space, case, numbers such as 1E-12, `TRUE()` for `TRUE`,
 * and quotes around names of sheets.
 */
function spelledAlike(formula: string): string {
  const parts = formulaTokens(formula)
    .filter(({ kind, text }) => kind === 'text' || text.trim() !== '')
    .map(({ kind, text }) => {
      if (kind === 'text') return text;
      if (kind === 'number') return String(Number(text));
      return (kind === 'sheet' ? text.slice(1, -1).replaceAll("''", "'") : text).toUpperCase();
    });
  return parts
    .filter((part, index) => {
      const [two, one, next] = [parts[index - 2] ?? '', parts[index - 1] ?? '', parts[index + 1] ?? ''];
      const opens = part === '(' && next === ')' && isTruth(one);
      const closes = part === ')' && one === '(' && isTruth(two);
      return !opens && !closes;
    })
    .join(' ');
}

function isTruth(word: string): boolean {
  return word === 'TRUE' || word === 'FALSE';
}

/** What a check found, for someone at a terminal. */
function verificationText(name: string, verification: Verification): string {
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
