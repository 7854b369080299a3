import { digestOf } from '../../src/sheets/fleet/machines.ts';
import { fleetSheet } from '../../src/sheets/fleet/fleetSheet.ts';
import type { SheetModel } from '../../src/sheets/model.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { sheetNames } from '../../src/sheets/titles.ts';
import type { Report } from '../../src/audit/model/report.ts';
import type { Surface } from './surface.ts';

/** All that sheets say, but for the guide to the other sheets and how verdicts are meant. */
function textOf(models: readonly SheetModel[]): string {
  return models
    .flatMap((model) => [...model.rows()])
    .map(({ cells }) => cells.map((cell) => cell?.value ?? '').join(' '))
    .join('\n');
}

function resultsNamed(...names: readonly string[]) {
  return (report: Report): string => textOf(resultSheets(report).filter(({ name }) => names.includes(name)));
}

function fleetText(report: Report): string {
  const { generated, version, policy, caution } = report;
  const files = [{ file: report.input, found: digestOf(report), refused: null }];
  return textOf([fleetSheet({ folder: 'Plant', generated, version, policy, caution, files, leftOut: [] })]);
}

const allOk = ['Nothing needs action', 'The one channel is OK', 'channels are OK'];

/** Every surface that a report is shown on: a name, what it says, and its words for “all is well”. */
export const surfaces: readonly Surface[] = [
  { name: 'summary sheet', text: resultsNamed(sheetNames.summary), allOk },
  {
    name: 'sheets of results, groups and problems',
    text: resultsNamed(sheetNames.results, sheetNames.groups, sheetNames.problems),
    allOk,
  },
  { name: 'fleet sheet', text: fleetText, allOk },
];
