import type { AuditBasis } from '../audit/model/basis.ts';
import { auditInSteps } from '../audit/audit.ts';
import { policyFingerprint } from '../audit/evidence/fingerprint.ts';
import { defaultPolicy, policySchema, type Policy } from '../audit/model/policy.ts';
import { AuditRefused } from '../audit/model/refused.ts';
import type { Report } from '../audit/model/report.ts';
import { asPart, finish, type Steps } from '../audit/model/steps.ts';
import { version as ourVersion } from '../audit/model/version.ts';
import type { Sheet, Workbook } from '../cells/sheet.ts';
import { sheetFingerprint } from '../sheets/evidence/resultsFingerprint.ts';
import { handoverSheetsInSteps } from '../sheets/handover/handoverSheets.ts';
import { resultSheets } from '../sheets/resultSheets.ts';
import { isTitleOf } from '../sheets/titles.ts';
import { disguised, hiddenInputs } from './disguised.ts';
import { editedInputs } from './editedInputs.ts';
import type { FileFormulas } from './formulas.ts';
import { inputPlaces, type InputPlaces } from './inputPlaces.ts';
import { restored, withMovedRows } from './restored.ts';
import { compareFingerprints, compareSheets } from './resultsCheck.ts';
import { asRun, findRuns, titleOfSheet, type FoundRun } from './runs.ts';
import {
  json,
  storedBasis,
  storedFingerprints,
  type StoredEvidence,
  damagedEvidence,
} from './storedEvidence.ts';
import type { PartCheck, Verification } from './verification.ts';

/**
 * Whether inputs, policy or results of the newest audit in a workbook were edited since: audits the tables anew with the
 * policy, column map and time that the audit left, and compares the sheets it would write with those that stand there.
 */
export function verify(workbook: Workbook, formulas?: FileFormulas): Verification {
  return finish(verifyInSteps(workbook, formulas));
}

/** The same in steps: yields the part done, from 0 to 1. */
export function* verifyInSteps(workbook: Workbook, formulas?: FileFormulas): Steps<number, Verification> {
  const { runs, without } = findRuns(workbook);
  const [newest, ...older] = runs;
  const parts = newest ? yield* checkRun(workbook, newest, without, formulas) : nothing;
  return {
    checked: newest ? asRun(newest) : null,
    ...parts,
    older: older.map(asRun),
    without: without.map(({ name }) => name),
  };
}

type Parts = Pick<Verification, 'inputs' | 'policy' | 'results'>;

function* checkRun(
  workbook: Workbook,
  run: FoundRun,
  without: readonly Sheet[],
  formulas: FileFormulas | undefined,
): Steps<number, Parts> {
  const { evidence, sheets, handOver } = run;
  if (!evidence) {
    const said = `The summary sheet of audit ${run.id} is missing, or its title was edited. Without it nothing else can be checked, nor whether it is the newest.`;
    return { inputs: unknown, policy: unknown, results: edited(said) };
  }
  const damaged = [...damagedEvidence(run.id, evidence), ...disguised(run, without)];
  const basis = storedBasis(evidence);
  const policy = policyOf(evidence);
  const audited = yield* asPart(
    auditEitherWay(workbook, evidence, basis, policy ?? defaultPolicy),
    (part) => 0.5 * part,
  );
  const policyCheck = policyPart(evidence, policy);
  const { report } = audited;
  const same = report !== undefined && report.fingerprint.inputs === evidence.inputs;
  const found = same ? clean : yield* inputsPart(audited, evidence, run);
  const inputs = withSaid(found, report && basis ? hiddenInputs(workbook, report, basis) : []);
  const rest = (part: number): number => 0.5 + 0.5 * part;
  const alone = basis?.comparedWith === null && basis.replayedFrom === null;
  if (same && alone && policyCheck.state === 'as audited' && evidence.version === ourVersion) {
    const models = resultSheets(report);
    const handedOver =
      handOver.length === 0 ? [] : yield* asPart(handoverSheetsInSteps(report), () => rest(0.3));
    const anew = { models, sheets, formulas, handOver: { models: handedOver, sheets: handOver } };
    const { part: results, otherFormulas } = yield* asPart(compareSheets(anew), (part) =>
      rest(0.3 + 0.7 * part),
    );
    const unsaid =
      results.state === 'as audited'
        ? formulas?.calculatedOnOpening === true
          ? []
          : editedSummary(run, evidence)
        : otherFormulas > 0
          ? []
          : yield* movedTables(run, evidence, results);
    return { inputs, policy: policyCheck, results: withSaid(results, [...damaged, ...unsaid]) };
  }
  const results = yield* asPart(byFingerprint(run, evidence, basis), rest);
  return { inputs, policy: policyCheck, results: withSaid(results, damaged) };
}

interface AuditedAgain {
  readonly report?: Report;
  /** Where its inputs stand, worked out only where one was edited. */
  readonly places?: () => Steps<void, InputPlaces>;
  readonly why?: string;
}

/** Audits again with the rows hidden that were then; where inputs differ and those rows moved together, where they are now. */
function* auditEitherWay(
  workbook: Workbook,
  evidence: StoredEvidence,
  basis: AuditBasis | undefined,
  policy: Policy,
): Steps<number, AuditedAgain> {
  const audited = yield* auditAgain(workbook, evidence, basis, policy);
  if (audited.report?.fingerprint.inputs === evidence.inputs) return audited;
  const moved = basis && withMovedRows(workbook, basis);
  if (!moved) return audited;
  const again = yield* auditAgain(workbook, evidence, moved, policy);
  return again.report?.fingerprint.inputs === evidence.inputs ? again : audited;
}

function* auditAgain(
  workbook: Workbook,
  evidence: StoredEvidence,
  basis: AuditBasis | undefined,
  policy: Policy,
): Steps<number, AuditedAgain> {
  const now = new Date(evidence.time);
  if (!basis)
    return { why: 'The column map or the state of the workbook is no longer readable in the evidence.' };
  if (Number.isNaN(now.getTime()))
    return { why: 'The time of the audit is no longer readable in the evidence.' };
  try {
    const book = restored(workbook, evidence.input, basis);
    const report = yield* auditInSteps(book, { policy, map: basis.map, now });
    return { report, places: () => inputPlaces(book, basis, now) };
  } catch (error) {
    if (!(error instanceof AuditRefused)) throw error;
    return { why: `The tables can no longer be told: ${error.message}` };
  }
}

/** What the evidence says of itself is in no way made anew, but the summary's own fingerprint covers it. */
function editedSummary({ sheets }: FoundRun, evidence: StoredEvidence): string[] {
  const summary = sheets.find((sheet) => isTitleOf('summary', titleOfSheet(sheet)));
  const fingerprint = summary && storedFingerprints(evidence)?.[titleOfSheet(summary)];
  if (!summary || finish(sheetFingerprint(summary.rows)) === fingerprint) return [];
  return [
    `The part Evidence on sheet '${summary.name}' was edited: the fingerprint of the sheet is another.`,
  ];
}

/** Where no result sheet was edited, says that what differs comes from around the inputs. */
function* movedTables(
  { sheets }: FoundRun,
  evidence: StoredEvidence,
  { cells: [first] }: PartCheck,
): Steps<number, string[]> {
  const fingerprints = storedFingerprints(evidence);
  if (!fingerprints || !sheets.some(({ name }) => name === first?.sheet)) return [];
  const { state } = yield* asPart(compareFingerprints(fingerprints, sheets), () => 1);
  return state === 'as audited' ? [moved] : [];
}

function policyOf({ policyText }: StoredEvidence): Policy | undefined {
  return policySchema.safeParse(json(policyText)).data;
}

function policyPart(evidence: StoredEvidence, policy: Policy | undefined): PartCheck {
  if (!policy) return edited('The policy in the evidence is no longer readable.');
  return policyFingerprint(policy) === evidence.policy
    ? clean
    : edited('The policy in the evidence is not the one that was applied: its fingerprint is another.');
}

function* inputsPart(
  { report, places, why }: AuditedAgain,
  { version }: StoredEvidence,
  { sheets }: FoundRun,
): Steps<number, PartCheck> {
  if (!report || !places) return edited(why ?? '');
  const results = sheets.find((sheet) => isTitleOf('results', titleOfSheet(sheet)));
  if (version !== ourVersion || !results) return edited(otherFingerprint);
  const found = yield* asPart(places(), () => 0.5);
  const { differences, said } = yield* asPart(editedInputs(report, results, found), () => 0.5);
  const unnamed = differences.count === 0 && said.length === 0 ? [unnamedInput] : [];
  return {
    state: 'edited',
    said: [otherFingerprint, ...said, ...unnamed],
    cells: differences.cells,
    more: differences.more,
  };
}

/** Where results can't be made anew alike: whether the sheets are still those that the audit wrote. */
function* byFingerprint(
  { sheets, handOver }: FoundRun,
  evidence: StoredEvidence,
  basis: AuditBasis | undefined,
): Steps<number, PartCheck> {
  const fingerprints = storedFingerprints(evidence);
  if (!fingerprints) return edited('The fingerprints of the sheets are no longer readable in the evidence.');
  const found = yield* compareFingerprints(fingerprints, sheets);
  const other = [
    ...(evidence.version === ourVersion ? [] : [otherVersion(evidence.version)]),
    ...(basis?.comparedWith ? [otherSource(basis.comparedWith)] : []),
    ...(basis?.replayedFrom ? [otherReadings(basis.replayedFrom)] : []),
    ...(handOver.length === 0 ? [] : [handOverUnknown]),
  ];
  return withNote(found, other);
}

function withSaid(part: PartCheck, said: readonly string[]): PartCheck {
  return said.length === 0 ? part : { ...part, state: 'edited', said: [...said, ...part.said] };
}

function withNote(part: PartCheck, said: readonly string[]): PartCheck {
  return { ...part, said: [...said, ...part.said] };
}

function edited(said: string): PartCheck {
  return { state: 'edited', said: [said], cells: [], more: 0 };
}

function otherVersion(version: string): string {
  return `The audit was made by rules version ${version || '(none named)'}, and this is ${ourVersion}: results can’t be made anew alike, so the sheets were compared with the fingerprints that the audit left.`;
}

function otherSource(input: string): string {
  return `The audit was compared with ${input}, which is not at hand here: results can’t be made anew alike, so the sheets were compared with the fingerprints that the audit left.`;
}

function otherReadings(file: string): string {
  return `The audit replayed the readings of ${file}, which is not at hand here: results can’t be made anew alike, so the sheets were compared with the fingerprints that the audit left.`;
}

const moved =
  'Each result sheet has the fingerprint that the audit left, so none was edited. What differs comes from around the inputs: their tables stand elsewhere on their sheets, as rows or columns came or went beside them, or cells are formatted otherwise, such as a percentage as a plain number. Audit the workbook again.';
const handOverUnknown =
  'The sheets to hand over carry no fingerprint of their own and were not checked: make them anew.';
const clean: PartCheck = { state: 'as audited', said: [], cells: [], more: 0 };
const unknown: PartCheck = { state: 'not known', said: [], cells: [], more: 0 };
const nothing: Parts = { inputs: unknown, policy: unknown, results: unknown };
const otherFingerprint = 'Inputs changed since the audit.';
const unnamedInput =
  'No input on the results sheet differs: it is what was found before a correction, another column that was read, a header or unit, the order of rows, the name of a sheet, a calibration record or a history; or a formula that another program calculates differently in its last digits.';
