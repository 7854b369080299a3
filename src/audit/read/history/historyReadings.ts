import type { Place } from '../../model/findings.ts';
import { isBlank, isoDate } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import { convert } from '../../../units/convert.ts';
import type { Complaint } from '../rows/complaint.ts';
import { placeOf } from '../rows/complaint.ts';
import { rowReader, type Amount, type RowReader } from '../rows/rowReader.ts';
import { asLeft, seriesOf } from '../records/series.ts';
import { historyColumns, type HistoryColumnId } from './historyColumns.ts';
import type { HistoryTable } from './historyTables.ts';
import type { HistoryRemark, TaggedReading } from './reading.ts';

/** Rows that are read in one step. */
const stride = 1_000;

/**
 * The readings of a history, row by row; `today` is the day of the audit, after which none can have been taken. A row
 * that can't be used gives a remark with its cell and the cure.
 */
export function* historyReadings(
  table: HistoryTable,
  today: number,
  remarks: HistoryRemark[],
): Generator<void, TaggedReading[], void> {
  const read = rowReader(table, historyColumns);
  const found: TaggedReading[] = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) {
    if (row % stride === 0) yield;
    if (isEmpty(table, row)) continue;
    read.open(row);
    found.push(...readingsIn(table, row, read, today, remarks));
  }
  return found;
}

/** As found and, where the row has it, as left. */
function readingsIn(
  table: HistoryTable,
  row: number,
  read: RowReader,
  today: number,
  remarks: HistoryRemark[],
): TaggedReading[] {
  const tag = read.text('tag');
  const day = read.day('day');
  const [one, left] = [read.amount('sensitivity'), read.amount('asLeft')];
  const isLeft = seriesOf(read.text('series'), '') === asLeft;
  const uncertainty = read.amount('uncertainty');
  const complaints = read.complaints();
  remarks.push(...complaints.map((complaint) => ofComplaint(table, row, complaint)));
  const leftOut = (id: HistoryColumnId, why: string): void => {
    remarks.push({
      rule: 'history-row-left-out',
      severity: 'warning',
      message: `${why}; this reading of the history was left out.`,
      ...placeIn(table, row, id),
    });
  };
  if (tag === '')
    leftOut('tag', `Row ${row} has a reading but no tag, so it belongs to no channel: enter it`);
  if (day === null && !spoke(complaints, 'day')) leftOut('day', `Row ${row} has no date: enter it`);
  if (!one && !left && !spoke(complaints, 'sensitivity'))
    leftOut('sensitivity', `Row ${row} has no sensitivity: enter it`);
  if (day !== null && day > today) {
    leftOut(
      'day',
      `The date ${isoDate(day)} lies after the day of this audit, ${isoDate(today)}: check the entry`,
    );
  }
  if (tag === '' || day === null || day > today) return [];
  const usable = (amount: Amount | null, id: 'sensitivity' | 'asLeft', after: boolean): TaggedReading[] => {
    if (!amount) return [];
    const header = table.columns.get(id)?.header ?? id;
    if (!amount.unit) {
      leftOut(
        id,
        `'${header}' names no unit: write it in brackets in the header, such as (mV/mil), or in a unit column`,
      );
      return [];
    }
    if (!(amount.value > 0)) {
      leftOut(
        id,
        `'${header}': ${amount.value} ${amount.unit.text} is outside its physical range: it must be above 0`,
      );
      return [];
    }
    const known = {
      tag,
      day,
      value: amount.value,
      unit: amount.unit,
      asLeft: after,
      from: 'history',
    } as const;
    const fraction = uncertainty && fractionOf(uncertainty, amount);
    if (fraction !== null && !(fraction > 0 && fraction < 1)) {
      remarks.push({
        rule: 'history-row-left-out',
        severity: 'warning',
        message: `The uncertainty ${uncertainty?.value ?? ''} can't be one of this reading: it must be above 0 and below 100 %. The uncertainty was left out.`,
        ...placeIn(table, row, 'uncertainty'),
      });
      return [{ ...known, uncertainty: null, ...placeIn(table, row, id) }];
    }
    return [{ ...known, uncertainty: fraction, ...placeIn(table, row, id) }];
  };
  return [...usable(one, 'sensitivity', isLeft), ...usable(left, 'asLeft', true)];
}

/** An uncertainty as a fraction of the reading; `NaN` where the units don't fit. */
function fractionOf(uncertainty: Amount, { value, unit }: Amount): number {
  const absolute = uncertainty.unit && uncertainty.unit.dimension !== 'percent' && unit;
  return absolute ? convert(uncertainty.value, uncertainty.unit, unit) / value : uncertainty.value / 100;
}

function spoke(complaints: readonly Complaint[], column: string): boolean {
  return complaints.some((complaint) => complaint.column === column && complaint.severity !== 'note');
}

/** What the reader of a row complained about: a cell that can't be used leaves its reading out. */
function ofComplaint(table: HistoryTable, row: number, complaint: Complaint): HistoryRemark {
  const { message, column, severity, rule } = complaint;
  const place = placeIn(table, row, column as HistoryColumnId);
  if (severity === 'note') return { rule, severity, message, ...place };
  const effect = column === 'uncertainty' ? 'The uncertainty' : 'This reading of the history';
  return {
    rule: 'history-row-left-out',
    severity: 'warning',
    message: `${message} ${effect} was left out.`,
    ...place,
  };
}

function isEmpty({ sheet, columns }: HistoryTable, row: number): boolean {
  return ['tag', 'day', 'sensitivity', 'asLeft'].every((id) => {
    const column = columns.get(id);
    return !column || isBlank(cellAt(sheet, row, column.column));
  });
}

function placeIn(table: HistoryTable, row: number, id: HistoryColumnId): Place {
  return placeOf(table, row, id);
}
