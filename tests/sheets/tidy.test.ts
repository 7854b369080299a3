import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import type { ColumnMap } from '../../src/audit/model/columnMap.ts';
import { finish } from '../../src/audit/model/steps.ts';
import { understand } from '../../src/audit/read/understand/understand.ts';
import { DateCell, PercentCell, type Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import type { ModelCell, SheetModel } from '../../src/sheets/model.ts';
import { tidySheetsInSteps } from '../../src/sheets/tidySheets.ts';
import { sheetOf } from '../hosts/file/write/model.ts';
import { describeWithLibreOffice } from '../libreoffice.ts';
import { foreignWorkbook } from '../pane/pages/workbooks.ts';
import { compare } from './recalculation.ts';
import { recalculated } from './workbookFiles.ts';

const folder = mkdtempSync(join(tmpdir(), 'tidy-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const foreign = foreignWorkbook().workbook;
const untidy = join(import.meta.dirname, '..', 'untidy', 'workbooks');

function accepted(workbook: Workbook): ColumnMap {
  return finish(understand(workbook)).proposal;
}

function tidy(workbook: Workbook, map = accepted(workbook)): readonly SheetModel[] {
  return finish(tidySheetsInSteps(workbook, map));
}

/** What a row of a sheet holds: a link as its formula, else its value. */
function shown(model: SheetModel, row: number): unknown[] {
  const cells = [...model.rows()][row - 1]?.cells ?? [];
  return cells.map((cell: ModelCell | undefined) =>
    cell?.formula === undefined ? (cell?.value ?? null) : `=${model.formulas[cell.formula] ?? ''}`,
  );
}

describe('a list brought into the standard shape', () => {
  it('has one row a channel, units in its headers, and links to the user’s own cells', () => {
    const [channels, settings] = tidy(foreign);
    expect(shown(channels!, 5)).toEqual([
      'Tag',
      'Measured sensitivity [mV/mil]',
      'Gap voltage [V]',
      'Not linked',
    ]);
    expect(shown(channels!, 6)).toEqual(["='Sonden'!A4", "='Sonden'!B4", "='Sonden'!D4", null]);
    expect(shown(settings!, 5)).toEqual([
      'Tag',
      'Configured sensitivity [mV/mil]',
      'Alert [mil]',
      'Danger [mil]',
      'Not linked',
    ]);
    expect(shown(settings!, 11)).toEqual(["='Tafel'!A7", "='Tafel'!B7", "='Tafel'!C7", "='Tafel'!D7", null]);
  });

  it('names the cell of what can’t be linked, and writes its value', () => {
    const sheets = foreign.sheets.map((sheet) =>
      sheet.name === 'Tafel'
        ? {
            ...sheet,
            rows: sheet.rows.map((cells, row) => (row === 1 ? ['K-101A', 200, 3, '5 mil'] : cells)),
          }
        : sheet,
    );
    const [, settings] = tidy({ ...foreign, sheets });
    expect(shown(settings!, 6).slice(3)).toEqual([5, 'Danger [mil]: Tafel!D2']);
  });

  it('quotes names of sheets, and links to none that a formula can’t name', () => {
    const renamed = (name: string): Workbook => ({
      ...foreign,
      sheets: foreign.sheets.map((sheet) => (sheet.name === 'Tafel' ? { ...sheet, name } : sheet)),
    });
    expect(shown(tidy(renamed("Tom's rack"))[1]!, 6)[1]).toBe("='Tom''s rack'!B2");
    expect(shown(tidy(renamed('rack {r}'))[1]!, 6)[1]).toBe(200);
  });

  it('is no input of a later audit', () => {
    const map = accepted(foreign);
    const now = new Date('2026-01-10T08:00:00Z');
    const before = audit(foreign, { map, now });
    const added = tidy(foreign).map((model) => ({
      name: model.name,
      hidden: false,
      hiddenRows: new Set<number>(),
      tables: [],
      rows: [...model.rows()].map(({ cells }) => cells.map((cell) => cell?.value ?? null)),
    }));
    const after = audit({ ...foreign, sheets: [...foreign.sheets, ...added] }, { map, now });
    expect(after.channels).toEqual(before.channels);
    expect(after.notRead).toEqual(before.notRead);
  });
});

/** A sheet of the user's as a model, to be written beside the tidy ones. */
function copied(cell: Cell): string | number | boolean | null {
  if (cell instanceof DateCell) return cell.day + 25_569;
  if (cell instanceof PercentCell) return cell.percent / 100;
  return typeof cell === 'object' ? null : cell;
}

// Source: LibreOffice follows the links into the sheets of the user.
describeWithLibreOffice('links of tidy sheets, followed by LibreOffice', () => {
  it.each(['foreign', '03-dos-listas.xlsx', '12-labels-down-units-beside.xlsx'])(
    'lead to the values that were read, %s',
    (name) => {
      const workbook = name === 'foreign' ? foreign : readWorkbook(name, readFileSync(join(untidy, name)));
      const models = tidy(workbook);
      const own = workbook.sheets.map((sheet) =>
        sheetOf(sheet.name, sheet.rows.map((cells) => cells.map(copied)) as never),
      );
      const undated = models.map((model) => ({
        ...model,
        styles: Object.fromEntries(Object.keys(models[0]!.styles).map((style) => [style, {}])),
      }));
      const { formulas, differences } = compare(undated, recalculated([...own, ...undated], folder));
      expect(differences).toEqual([]);
      expect(formulas).toBeGreaterThan(3 * models[0]!.rowCount - 20);
    },
    60_000,
  );
});
