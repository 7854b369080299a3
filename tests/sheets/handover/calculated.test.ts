import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { readWorkbook } from '../../../src/hosts/file/read/workbook.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import { describeWithLibreOffice } from '../../libreoffice.ts';
import { plant } from '../plant.ts';
import { compare, typedOver } from '../recalculation.ts';
import { sweep } from '../sweep.ts';
import { recalculated } from '../workbookFiles.ts';
import { reportOf, rowsOf } from './read.ts';

const folder = mkdtempSync(join(tmpdir(), 'handover-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const station = join(import.meta.dirname, '../../../workbooks/harbour-station.xlsx');

// Source: LibreOffice calculates the formulas, without any result to copy; that they agree with the audit checks both.
// Grade: an independent peer.
describeWithLibreOffice('formulas of hand-over sheets, calculated by LibreOffice', () => {
  it.each([
    ['an invented plant with one of everything', () => reportOf(plant)],
    ['sensitivities on and about every limit', () => reportOf(sweep)],
    ['the demo station', () => audit(readWorkbook('station.xlsx', readFileSync(station)))],
  ])('give what the audit says for %s', (_, report) => {
    const models = handoverSheets(report());
    const { formulas, differences } = compare(models, recalculated(models, folder));
    expect(differences).toEqual([]);
    expect(formulas).toBeGreaterThan(100);
  });

  it('and a wrong result beside a formula would be seen', () => {
    const models = handoverSheets(reportOf(plant));
    const wrong = models.map((model) =>
      typedOver(model, ({ formula, value }) =>
        formula !== undefined && typeof value === 'number'
          ? value + 1e-9 * Math.max(1, Math.abs(value))
          : value,
      ),
    );
    const numbers = models
      .flatMap(rowsOf)
      .flat()
      .filter((cell) => cell?.formula !== undefined && typeof cell.value === 'number');
    expect(compare(wrong, recalculated(models, folder)).differences).toHaveLength(numbers.length);
  });
});
