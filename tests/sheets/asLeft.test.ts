import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { verdictWords } from '../../src/audit/model/wording.ts';
import { isResultSheet } from '../../src/audit/read/tables/titleWords.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import type { SheetModel } from '../../src/sheets/model.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { objections } from '../hosts/file/write/validator.ts';
import { plant, plantAsLeft } from './plant.ts';
import { workbookOf, type Listed } from './tables.ts';

const now = new Date('2025-03-14T08:05:00Z');
const name = 'As found and as left';
const report = audit(workbookOf(plantAsLeft), { now });

const sheetsOf = (listed: readonly Listed[]): readonly SheetModel[] =>
  resultSheets(audit(workbookOf(listed), { now }));

function table(models: readonly SheetModel[]): Record<string, unknown>[] {
  const model = models.find((one) => one.name === name)!;
  const [header, ...lines] = [...model.rows()].slice(3).map(({ cells }) => cells);
  return lines.map((cells) =>
    Object.fromEntries(header!.map((head, index) => [String(head?.value), cells[index]?.value ?? null])),
  );
}

it('stands only where a channel was judged as left', () => {
  expect(sheetsOf(plant).map((model) => model.name)).not.toContain(name);
  expect(sheetsOf(plantAsLeft).map((model) => model.name)).toContain(name);
});

it('is known again as no input, and satisfies the validator', () => {
  const bytes = newWorkbook(sheetsOf(plantAsLeft));
  const sheet = readWorkbook('again.xlsx', bytes).sheets.find((one) => one.name === name)!;
  expect(isResultSheet(sheet)).toBe(true);
  expect(objections(bytes)).toEqual([]);
});

it('has each threshold that was judged twice once, with what the report says of it', () => {
  const rows = table(sheetsOf(plantAsLeft));
  const wanted = report.channels.flatMap(({ tag, thresholds, asFound }) =>
    (asFound?.thresholds ?? []).flatMap((found, index) => {
      const left = thresholds[index]!;
      const times = left.multiplier === 1 ? left.name : `${left.name} × ${left.multiplier}`;
      const change = left.change!.replace('undetermined', 'uncertain').replace('unreachable', 'cannot act');
      const [was, is] = [verdictWords[found.verdict], verdictWords[left.verdict]];
      const words = [tag, times, found.effective, was, left.effective, is, change];
      return left.setpoint === null ? [] : [words.join(' | ')];
    }),
  );
  const columns = [
    'Tag',
    'Threshold',
    'Really acted at, as found',
    'Verdict as found',
    'Really acts at, as left',
    'Verdict as left',
    'What changed',
  ];
  expect(rows.map((row) => columns.map((column) => row[column]).join(' | ')).toSorted()).toEqual(
    wanted.toSorted(),
  );
  expect(wanted.length).toBeGreaterThan(20);
});

it('begins with what is late, unreachable or undetermined as left, what trips before what warns', () => {
  const rows = table(sheetsOf(plantAsLeft));
  const late = rows.map((row) =>
    ['late', 'cannot act', 'uncertain'].includes(String(row['Verdict as left'])),
  );
  const count = late.filter(Boolean).length;
  expect(count).toBeGreaterThan(3);
  expect(late.slice(0, count).every(Boolean)).toBe(true);
  const trips = rows.slice(0, count).map((row) => String(row['Threshold']).includes('danger'));
  expect(trips).toEqual(trips.toSorted((one, other) => Number(other) - Number(one)));
});

// By the calendar: 2023-05-01 to 2024-05-01 is a leap year's 366 days, 2024-01-01 to 2024-02-29 are 30 + 29 = 59.
it('says how long what was found late may have been so, and what is not known', () => {
  const rows = table(sheetsOf(plantAsLeft));
  const exposed = (tag: string) => {
    const row = rows.find((one) => one['Tag'] === tag && one['Threshold'] === 'danger')!;
    return ['May have been late from', 'Until it was found on', 'Days', 'Still so today'].map(
      (one) => row[one],
    );
  };
  expect(exposed('31-VT-4101X')).toEqual(['2023-05-01', '2024-05-01', 366, 'no']);
  expect(exposed('31-VT-4102Z')).toEqual(['2024-01-01', '2024-02-29', 59, 'yes']);
  // Its zero was not measured again, so that nothing is known of it as left.
  expect(exposed('31-ZT-4111')).toEqual(['not known', 'not known', null, 'not known']);
  expect(exposed('31-VT-4130X')).toEqual([null, null, null, null]);
});
