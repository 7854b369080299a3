import type { Report } from '../../audit/model/report.ts';
import { finish, type Steps } from '../../audit/model/steps.ts';
import { machinesOf, type Machine } from '../machines.ts';
import type { SheetModel } from '../model.ts';
import { sheetNames } from '../titles.ts';
import { annexOf } from './annex.ts';
import { controlRoomPage } from './controlRoomPage.ts';
import { listSheet, type ListedMachine } from './listSheet.ts';
import { machineSheetNames, type MachineSheetNames } from './names.ts';

/** Machines with sheets in one workbook; with more, only machines that need action get theirs. */
const mostMachines = 200;

/**
 * Sheets to hand over to people who decide whether a machine starts: a list of the machines worst first, then for each a
 * page for the control room and its annex. Beyond 200 machines only those that need action get them, the worst 200 of them;
 * the list says so and names all. Numbers in full precision in the report's units; formulas are native ones; all text is
 * plain text.
 */
export function handoverSheets(report: Report): readonly SheetModel[] {
  return finish(handoverSheetsInSteps(report));
}

/** The same a machine at a time: yields the part done, from 0 to 1. */
export function* handoverSheetsInSteps(report: Report): Steps<number, readonly SheetModel[]> {
  const machines = machinesOf(report);
  const chosen = withSheets(machines);
  const names = machineSheetNames(chosen, sheetNames['hand-over']);
  const namesOf = new Map(chosen.map((machine, index) => [machine, names[index] ?? null]));
  const listed = machines.map((machine): ListedMachine => ({
    machine,
    sheets: namesOf.get(machine) ?? null,
  }));
  const sheets = [listSheet(report, listed, aboutSheets(machines, chosen))];
  for (const [index, machine] of chosen.entries()) {
    yield index / chosen.length;
    const own = names[index];
    if (own) sheets.push(...machineSheets(machine, report, own));
  }
  return sheets;
}

/** The page and the annex of one machine of `machinesOf(report)`. */
export function* handoverSheetInSteps(
  machine: Machine,
  report: Report,
): Steps<number, readonly SheetModel[]> {
  yield 0;
  const [names] = machineSheetNames([machine], sheetNames['hand-over']);
  return names ? machineSheets(machine, report, names) : [];
}

function machineSheets(machine: Machine, report: Report, names: MachineSheetNames): SheetModel[] {
  const annex = annexOf(machine, report, names.annex);
  return [controlRoomPage(machine, report, names, annex.rows), annex.sheet];
}

function needsAction({ attention }: Machine): boolean {
  return attention.length > 0;
}

function withSheets(machines: readonly Machine[]): readonly Machine[] {
  return machines.length <= mostMachines ? machines : machines.filter(needsAction).slice(0, mostMachines);
}

function aboutSheets(machines: readonly Machine[], chosen: readonly Machine[]): string {
  if (chosen.length === machines.length)
    return 'Every machine has a page for the control room and an annex behind this list.';
  const calling = machines.filter(needsAction).length;
  const only = `Of ${machines.length} machines, only those that need action have a page`;
  return calling > chosen.length
    ? `${only}, and of these ${calling} only the worst ${chosen.length}: audit fewer machines at a time for the others.`
    : `${only}: ${chosen.length} of them.`;
}
