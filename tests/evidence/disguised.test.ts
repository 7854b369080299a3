import { expect, it } from 'vitest';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { Sheet, Workbook } from '../../src/cells/sheet.ts';
import { fileFormulas } from '../../src/cli/audit/verifyFile.ts';
import { isClean, type Verification } from '../../src/evidence/verification.ts';
import { titleOfSheet } from '../../src/evidence/runs.ts';
import { verify } from '../../src/evidence/verify.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { demoBytes, withResults } from './written.ts';

const bytes = withResults(demoBytes);
const written = readWorkbook('out.xlsx', bytes);

function changed(change: (sheet: Sheet) => Sheet, book: Workbook = written): Workbook {
  return { ...book, sheets: book.sheets.map(change) };
}

/** Checks a file with one part changed. */
function verified(part: RegExp, change: (text: string) => string): Verification {
  const parts = unzipSync(bytes);
  const name = Object.keys(parts).findLast(
    (each) => part.test(each) && change(strFromU8(parts[each]!)) !== strFromU8(parts[each]!),
  )!;
  const file = zipSync({ ...parts, [name]: strToU8(change(strFromU8(parts[name]!))) });
  return verify(readWorkbook('out.xlsx', file), fileFormulas('out.xlsx', file));
}

it('a workbook as the audit wrote it is clean with its formulas', () => {
  expect(verify(written, fileFormulas('out.xlsx', bytes))).toMatchObject({
    inputs: { state: 'as audited', said: [] },
    results: { state: 'as audited', said: [], cells: [] },
  });
});

it('a result sheet that is hidden is found', () => {
  const hidden = (sheet: Sheet): Sheet =>
    sheet.name === 'Audit summary' ? { ...sheet, hidden: true } : sheet;
  const { results } = verify(changed(hidden));
  expect(results.state).toBe('edited');
  expect(results.said).toEqual(["Result sheet 'Audit summary' is hidden; the audit wrote it to be seen."]);
});

it.each(['hidden', 'veryHidden'])(
  'a sheet of results and one of the input that are %s in the file are found',
  (state) => {
    for (const [name, part] of [
      ['Audit results', 'results'],
      ['Channels', 'inputs'],
    ] as const) {
      const found = verified(/^xl\/workbook\.xml$/, (text) =>
        text.replace(`<sheet name="${name}"`, `<sheet name="${name}" state="${state}"`),
      );
      expect(found[part].state).toBe('edited');
      expect(found[part].said.join()).toContain(`'${name}'`);
      expect(isClean(found)).toBe(false);
    }
  },
);

it('names of result sheets, and of input sheets, that were swapped are found', () => {
  const swap =
    (one: string, other: string) =>
    (sheet: Sheet): Sheet => ({
      ...sheet,
      name: sheet.name === one ? other : sheet.name === other ? one : sheet.name,
    });
  const { results } = verify(changed(swap('Audit results', 'Audit groups')));
  expect(results.state).toBe('edited');
  expect(results.said.join()).toContain("Sheet 'Audit groups' has the name of another result sheet");
  expect(verify(changed(swap('Channels', 'Monitor settings'))).inputs.state).toBe('edited');
});

it('a copy of the summary without its id is found', () => {
  const summary = written.sheets.find(({ name }) => name === 'Audit summary')!;
  const [[, ...more] = [], ...rows] = summary.rows;
  const copy: Sheet = {
    ...summary,
    name: 'Summary',
    rows: [[titleOfSheet(summary).replace(/ · [0-9a-f]{4}-[0-9a-f]{4}$/u, ''), ...more], ...rows],
  };
  const { results } = verify({ ...written, sheets: [copy, ...written.sheets] });
  expect(results.state).toBe('edited');
  expect(results.said.join()).toMatch(/Sheet 'Summary' has the title of a result sheet .* without its id/);
});

it.each([
  ['a formula of its own', /<f>([^<]*)<\/f>/, '<f>($1)*0+1</f>'],
  ['one that the cells below share', /(<f t="shared" ref="[^"]*" si="0">)([^<]*)<\/f>/, '$1($2)*0+1</f>'],
])('%s that calculates another thing is found, though its stored result is right', (_, formula, other) => {
  const { inputs, results } = verified(/^xl\/worksheets\/sheet\d+\.xml$/, (text) =>
    text.replace(formula, other),
  );
  expect(inputs.state).toBe('as audited');
  expect(results.state).toBe('edited');
  expect(results.said).toEqual([]);
  expect(results.cells[0]?.stands).toMatch(/^=\(.*\)\*0\+1$/);
});

it('results that programs calculate anew on opening are compared as calculated', () => {
  const parts = unzipSync(bytes);
  const sheets = Object.keys(parts).filter((name) => /^xl\/worksheets\/sheet\d+\.xml$/.test(name));
  const stale = Object.fromEntries(
    sheets.map((name) => [
      name,
      strToU8(strFromU8(parts[name]!).replace(/(<c [^>]*><f>[^<]*<\/f><v>)-?\d[^<]*(<\/v>)/g, '$19.75$2')),
    ]),
  );
  const book = strFromU8(parts['xl/workbook.xml']!);
  const asks = book.includes('<calcPr')
    ? book.replace('<calcPr', '<calcPr fullCalcOnLoad="1"')
    : book.replace('</workbook>', '<calcPr fullCalcOnLoad="1"/></workbook>');
  const check = (workbook: string): Verification => {
    const file = zipSync({ ...parts, ...stale, 'xl/workbook.xml': strToU8(workbook) });
    return verify(readWorkbook('out.xlsx', file), fileFormulas('out.xlsx', file));
  };
  expect(check(book).results.state).toBe('edited');
  expect(check(asks).results).toMatchObject({ state: 'as audited', cells: [] });
});
