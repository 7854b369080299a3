import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { heightOf } from '../look/lines.ts';
import { footerOf, leftOut, roomFor } from '../look/print.ts';
import { shadesFor, verdictShades } from '../look/shades.ts';
import { timeText } from '../auditedLine.ts';
import type { ModelRow, SheetModel } from '../model.ts';
import { headline } from '../summary/counts.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { clipped } from './clipped.ts';
import { machineName, type Machine } from '../machines.ts';
import { standing } from './machineSheet.ts';
import { styles } from './styles.ts';

/** A machine with the name of its sheet; `null` where it has none. */
export interface ListedMachine {
  readonly machine: Machine;
  readonly sheet: string | null;
}

const headerRow = 6;
const widths = [30, 26, 13, 11, 54] as const;
const headers = ['Machine', 'Its sheet', 'Worst channel', 'Channels', 'How things stand'] as const;
const worstColumn = 3;

/** The list of machines, worst first, with the sheet of each and one sentence of how it stands. */
export function listSheet(report: Report, machines: readonly ListedMachine[], about: string): SheetModel {
  const shown = roomFor(machines.length, headerRow);
  const lastRow = headerRow + Math.max(1, shown);
  const across = widths.reduce((sum, width) => sum + width, 0) * 0.85;
  const wrapped = (words: string, style: string): ModelRow => ({
    height: heightOf([words], [across], 20),
    cells: [cell(words, style), ...widths.slice(1).map(() => ({ value: null, style }))],
  });
  const made = `Made by Tripdrift, rules version ${report.version}, on ${timeText(report.generated)}, from ${clipped(report.input, 200)}.`;
  return {
    name: sheetNames['hand-over'],
    widths,
    styles,
    formulas: [],
    rowCount: lastRow,
    *rows() {
      yield { height: 26, cells: [cell(titleOf('hand-over', report), 'title')] };
      yield wrapped(`${made}${leftOut(machines.length, shown)}`, 'remark');
      yield wrapped(report.caution, 'caution');
      yield wrapped(headline(report.summary), 'standing');
      yield wrapped(about, 'remark');
      yield {
        height: 20,
        cells: headers.map((header) => cell(header, header === 'Channels' ? 'headerCentred' : 'header')),
      };
      if (machines.length === 0) yield { cells: [cell('No channel was found.', 'remark')] };
      for (const one of machines.slice(0, shown)) yield machineRow(one);
    },
    freeze: { rows: headerRow, columns: 0 },
    merges: [2, 3, 4, 5].map((row) => ({ top: row, left: 1, bottom: row, right: widths.length })),
    shades: shadesFor(
      { top: headerRow + 1, left: worstColumn, bottom: lastRow, right: worstColumn },
      verdictShades,
    ),
    print: { landscape: false, repeatRows: { from: headerRow, to: headerRow }, footer: footerOf(report) },
  };
}

function machineRow({ machine, sheet }: ListedMachine): ModelRow {
  const name = clipped(machineName(machine));
  const stands = standing(machine);
  return {
    height: heightOf([name, sheet ?? '', stands], [widths[0] * 0.8, widths[1] * 0.85, widths[4] * 0.88], 20),
    cells: [
      cell(name, 'name'),
      cell(sheet ?? 'none', 'wrapped'),
      cell(machine.channels[0]?.verdict ?? null, 'centred'),
      cell(machine.channels.length, 'count'),
      cell(stands, 'wrapped'),
    ],
  };
}
