import type { Report } from '../../audit/model/report.ts';
import { finish, type Steps } from '../../audit/model/steps.ts';
import { machinesOf, type Machine } from '../machines.ts';
import type { SheetModel } from '../model.ts';
import { sheetNames } from '../titles.ts';
import { listSheet, type ListedMachine } from './listSheet.ts';
import { machineNeedsAction } from './needsAction.ts';
import { machineSheet } from './machineSheet.ts';
import { machineSheetNames } from './names.ts';

/** Sheets of machines in one workbook; with more, only machines that need action get one. */
const mostSheets = 200;

/**
 * Sheets to hand over to people who decide whether a machine starts: a list of the machines worst first, then a sheet for
 * each. Beyond 200 machines only those that need action get one, the worst 200 of them; the list says so and names all.
 * Numbers in full precision in the report's units; formulas are native ones; all text is plain text.
 */
export function handoverSheets(report: Report): readonly SheetModel[] {
  return finish(handoverSheetsInSteps(report));
}

/** The same a machine at a time: yields the part done, from 0 to 1. */
export function* handoverSheetsInSteps(report: Report): Steps<number, readonly SheetModel[]> {
  const machines = machinesOf(report);
  const chosen = withSheets(machines);
  const names = machineSheetNames(chosen, sheetNames['hand-over']);
  const nameOf = new Map(chosen.map((machine, index) => [machine, names[index] ?? '']));
  const listed = machines.map((machine): ListedMachine => ({ machine, sheet: nameOf.get(machine) ?? null }));
  const sheets = [listSheet(report, listed, aboutSheets(machines, chosen))];
  for (const [index, machine] of chosen.entries()) {
    yield index / chosen.length;
    sheets.push(machineSheet(machine, report, names[index] ?? ''));
  }
  return sheets;
}

/** The sheet of one machine of `machinesOf(report)`. */
export function* handoverSheetInSteps(
  machine: Machine,
  report: Report,
): Steps<number, readonly SheetModel[]> {
  yield 0;
  const [name = ''] = machineSheetNames([machine], sheetNames['hand-over']);
  return [machineSheet(machine, report, name)];
}

function withSheets(machines: readonly Machine[]): readonly Machine[] {
  return machines.length <= mostSheets ? machines : machines.filter(machineNeedsAction).slice(0, mostSheets);
}

function aboutSheets(machines: readonly Machine[], chosen: readonly Machine[]): string {
  if (chosen.length === machines.length) return 'Every machine has a sheet of its own behind this one.';
  const calling = machines.filter(machineNeedsAction).length;
  const only = `Of ${machines.length} machines, only those that need action have a sheet of their own`;
  return calling > chosen.length
    ? `${only}, and of these ${calling} only the worst ${chosen.length}: audit fewer machines at a time for the others.`
    : `${only}: ${chosen.length} of them.`;
}
