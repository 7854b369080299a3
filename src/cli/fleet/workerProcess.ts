import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import process from 'node:process';
import { understoodText } from '../../audit/advise/questions/understoodText.ts';
import { isCritical } from '../../audit/advise/summary.ts';
import type { Understanding } from '../../audit/read/understand/understand.ts';
import { digestOf } from '../../sheets/fleet/machines.ts';
import { resultSheets } from '../../sheets/resultSheets.ts';
import { attempt } from '../audit/asking/attempt.ts';
import { readToAudit, type AuditedInput } from '../audit/auditInput.ts';
import { mapJson, proposalOf } from '../audit/outputs/proposal.ts';
import { copyWith } from '../audit/outputs/resultsCopy.ts';
import { reasonOf } from '../audit/reason.ts';
import { reportJson } from '../audit/reportJson.ts';
import type { Progress } from '../terminal.ts';
import { inPieces, writeAll, type Output } from '../writeAll.ts';
import { mostWorst, type Answer, type Job } from './job.ts';

/** First argument of a process that audits workbooks for another one. */
export const memberMark = '--member-of-fleet';

const silent: Progress = { show: () => undefined, clear: () => undefined };

/** Audits one workbook after another as the process that started this one asks, until that one lets go. */
export function serveFleet(): void {
  // Ctrl-C reaches every process of the terminal; the one that started this one ends it and clears up.
  process.on('SIGINT', () => undefined);
  process.on('message', (job: Job) => {
    void answerTo(job).then((answer) => process.send?.(answer));
  });
}

/** Audits a workbook and writes its outputs, all or none. */
async function answerTo(job: Job): Promise<Answer> {
  try {
    const { audited, open } = attempt(readToAudit([job.path], silent), job.options, silent);
    return audited ? await auditedTo(job, audited, open) : await refusedTo(job, open);
  } catch (error) {
    return { found: null, refused: named(job, reasonOf(error)), asks: null };
  }
}

async function auditedTo(
  job: Job,
  { report, source }: AuditedInput,
  open: Understanding | null,
): Promise<Answer> {
  // The copy last: once it stands, nothing can fail any more.
  const outputs: Output[] = [
    ...(job.report === undefined ? [] : [inPieces(job.report, reportJson(report))]),
    ...proposalTo(job, open),
  ];
  let notes: () => readonly string[] = () => [];
  if (job.copy !== undefined) {
    const copy = copyWith(job.copy, source, () => resultSheets(report), silent);
    outputs.push(copy);
    notes = copy.notes;
  }
  await writeAll(outputs, { token: job.token });
  return {
    found: digestOf(report),
    worst: report.attention.slice(0, mostWorst),
    critical: isCritical(report),
    notes: notes(),
    asks: asksOf(job, open),
    refused: null,
  };
}

/** What needs a person before anything can be judged: what was understood, and the proposal. */
async function refusedTo(job: Job, open: Understanding | null): Promise<Answer> {
  await writeAll(proposalTo(job, open), { token: job.token });
  const said = open ? Object.values(understoodText(open)).join(' ') : '';
  return { found: null, refused: said, asks: asksOf(job, open) };
}

function asksOf({ proposal }: Job, open: Understanding | null): Answer['asks'] {
  return open && { questions: open.questions.length, written: proposal !== undefined };
}

function proposalTo({ proposal }: Job, open: Understanding | null): readonly Output[] {
  if (proposal === undefined || !open) return [];
  mkdirSync(dirname(proposal), { recursive: true });
  return [inPieces(proposal, [mapJson(proposalOf(open))])];
}

/** A reason with the name of the file where a whole path stands, which is nobody else's concern. */
function named({ path, copy, report, proposal, file }: Job, reason: string): string {
  const paths = [path, copy, report, proposal].filter((given) => given !== undefined);
  return paths.reduce((text, given) => text.replaceAll(given, file), reason);
}
