import { verdicts } from '../../audit/model/threshold.ts';
import { type VerdictCounts } from '../../audit/model/report.ts';
import { actionsOfAll, type ListedAction } from '../../sheets/fleet/actions.ts';
import { fleetHeadline, totalOf } from '../../sheets/fleet/total.ts';
import type { Fleet, FleetFile } from '../../sheets/fleet/types.ts';
import type { Answer } from './job.ts';
import { plain, wrapped } from '../terminal.ts';

const width = 110;
const shownAtMost = 20;
const longestName = 40;

/** A fleet for someone at a terminal: a line a workbook, why some were not audited, the worst of all, the caution. */
export function fleetText(fleet: Fleet): string {
  const lines = [
    `Tripdrift audit of the folder ${plain(fleet.folder)}, ${fleet.generated.slice(0, 10)}`,
    '',
    wrapped(fleetHeadline(fleet.files), width, ''),
    '',
    ...table(fleet.files),
    ...section('Not audited', refusals(fleet.files), Infinity),
    ...worst(fleet.files),
    ...section('Left out', fleet.leftOut, Infinity),
    '',
    wrapped(fleet.caution, width, ''),
  ];
  return `${lines.join('\n')}\n`;
}

/** What to know of the copies beside that they are written, one note a line, with the name of its workbook. */
export function copyNotes(names: readonly string[], answers: readonly Answer[]): readonly string[] {
  const notes = answers.flatMap((answer, index) =>
    answer.refused === null
      ? answer.notes.map((note) => `${plain(names[index] ?? '', longestName)}: ${note}`)
      : [],
  );
  return notes.length === 0 ? [] : [...section('To know of the copies', notes).slice(1), ''];
}

/** Lines below a heading, each wrapped, the first `most` of them; nothing where there is none. */
function section(title: string, lines: readonly string[], most: number = shownAtMost): readonly string[] {
  if (lines.length === 0) return [];
  const shown = lines.slice(0, most).map((line) => wrapped(`  ${line}`, width, '    '));
  return ['', title, ...shown, ...andMore(lines.length - shown.length)];
}

function andMore(count: number): readonly string[] {
  return count > 0 ? [`  and ${count} more.`] : [];
}

const headers = ['channels', ...verdicts, 'cannot trip'];

function table(files: readonly FleetFile[]): readonly string[] {
  const all = 'all workbooks';
  const names = files.map(({ file }) => plain(file, longestName));
  const first = Math.max(all.length, ...names.map((name) => name.length));
  const line = (name: string, cells: readonly string[]): string =>
    [name.padEnd(first), ...cells.map((cell, index) => cell.padStart(headers[index]?.length ?? 0))].join(
      '  ',
    );
  return [
    line('workbook', headers),
    ...files.map(({ found }, index) =>
      line(names[index] ?? '', found ? counts(found.summary) : ['not audited']),
    ),
    line(all, counts(totalOf(files))),
  ];
}

function counts(summary: VerdictCounts): readonly string[] {
  const shown = [summary.channels, ...verdicts.map((verdict) => summary[verdict])];
  return [...shown, summary.groupsThatCannotTrip].map(String);
}

function refusals(files: readonly FleetFile[]): readonly string[] {
  return files.flatMap(({ file, refused }) =>
    refused === null ? [] : [`${plain(file, longestName)}: ${plain(refused)}`],
  );
}

function worst(files: readonly FleetFile[]): readonly string[] {
  const { actions, total } = actionsOfAll(files);
  if (total === 0) return [];
  const shown = actions.slice(0, shownAtMost).map(actionLine);
  return ['', 'Worst first', ...shown, ...andMore(total - shown.length)];
}

function actionLine({ file, verdict, name, machine, threshold, sentence }: ListedAction): string {
  const where = [file, machine].filter((text) => text !== '').map((text) => plain(text, longestName));
  const head = `  ${verdict.padEnd(12)} ${plain(name, longestName)} ${threshold} (${where.join(', ')}): `;
  return wrapped(head + plain(sentence), width, ' '.repeat(15));
}
