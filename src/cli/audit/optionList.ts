import { usualMinutes } from '../fleet/limits.ts';

/** One option of the audit command: how it is given and what the help says of it. */
export interface Option {
  readonly type: 'string' | 'boolean';
  readonly short?: string;
  /** What stands behind it, as the help shows it. */
  readonly value?: string;
  readonly words: string;
}

/** The options of the audit command, in the order of its help. */
export const optionList = {
  out: {
    type: 'string',
    value: 'OUT.xlsx',
    words:
      'write a copy of the workbook with the result sheets behind its own; for a FOLDER, the folder for the copies and the summary of all',
  },
  handover: {
    type: 'string',
    value: 'OUT.xlsx',
    words: 'write a workbook to hand over: the machines worst first, a sheet to print and sign for each',
  },
  json: {
    type: 'string',
    value: 'FILE',
    words: 'write the report as JSON; - prints it, and nothing else, on standard output',
  },
  share: {
    type: 'string',
    value: 'OUT.xlsx',
    words:
      'write a copy for people without Tripdrift, its formulas in notes; given alone, nothing is audited',
  },
  'share-formulas': {
    type: 'string',
    value: 'KIND',
    words: 'in that copy, values (if left out) or, where it is sure to be the same, native formulas',
  },
  policy: {
    type: 'string',
    value: 'P.json',
    words: 'what the site accepts, where it differs from the defaults',
  },
  map: {
    type: 'string',
    value: 'M.json',
    words:
      'what the lists and columns mean, where the workbook does not tell: a proposal as you checked it; for a FOLDER also a folder of them',
  },
  propose: {
    type: 'string',
    value: 'M.json',
    words:
      'write what was understood and what is proposed, each with its evidence, to be checked and given back by --map; - prints it alone; for a FOLDER, a folder with one for each workbook that needs it',
  },
  since: {
    type: 'string',
    value: 'EARLIER.xlsx',
    words:
      'what changed since: an earlier workbook, audited by the same policy and map, or by its sheet of results; or the JSON of an earlier audit',
  },
  replay: {
    type: 'string',
    value: 'TREND.csv',
    words:
      'replay recorded readings (time and tags, or time, tag and reading): when did alert and danger act, and when should they have?',
  },
  'replay-zone': {
    type: 'string',
    value: 'ZONE',
    words:
      'zone of recorded times that name no offset: UTC, +01:00 (as in --replay-zone=-05:00) or a name such as Europe/Berlin',
  },
  'replay-dates': {
    type: 'string',
    value: 'ORDER',
    words: 'dmy or mdy, where dates such as 03/04/2026 do not tell',
  },
  'replace-results': {
    type: 'boolean',
    words: 'with --out: in place of the result sheets of earlier audits, under their names',
  },
  'remove-results': {
    type: 'string',
    value: 'OUT.xlsx',
    words: 'write a copy without the result sheets; nothing is audited',
  },
  'remove-edited': {
    type: 'boolean',
    words: 'with either: also result sheets that are not as their audit wrote them',
  },
  force: { type: 'boolean', words: 'replace files that exist' },
  details: {
    type: 'boolean',
    words: 'list all that needs action, and every channel, group and finding with the name of its rule',
  },
  strict: {
    type: 'boolean',
    words:
      'exit 1 when something critical needs action: a danger is late, uncertain, not known, in bypass or cannot act, a group cannot trip or is late, something that looks protective was not read',
  },
  verify: {
    type: 'boolean',
    words:
      'check, alone, whether inputs, policy or results of the audit in a workbook with result sheets were edited since',
  },
  timeout: {
    type: 'string',
    value: 'MINUTES',
    words: `for a FOLDER: give a workbook up after so long (${usualMinutes} if left out) and go on with the others`,
  },
  help: { type: 'boolean', short: 'h', words: 'this text' },
} as const satisfies Record<string, Option>;
