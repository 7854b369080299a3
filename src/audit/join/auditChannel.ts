import { sensitivityError } from '../../method/vibration/sensitivityError.ts';
import type { AssumedUnit } from '../evaluate/amounts.ts';
import { assemble } from '../evaluate/assemble.ts';
import type { TableComplaint } from '../evaluate/complaints.ts';
import type { Channel } from '../evaluate/channel.ts';
import { evaluateThresholds, incompleteThreshold } from '../evaluate/thresholds.ts';
import { statementsOn } from '../findings/rules.ts';
import type { Policy } from '../policy/policy.ts';
import { channelVerdict } from '../report/order.ts';
import { inputsOf, noInputs, sensitivityOf } from '../report/inputs.ts';
import type { ChannelResult, Finding, SensitivityResult, ThresholdResult } from '../report/types.ts';
import type { ChannelRow } from '../rows/channelRow.ts';
import { placed } from '../rows/complaint.ts';
import type { Amount } from '../rows/rowReader.ts';
import type { SettingsRow } from '../rows/settingsRow.ts';
import type { FoundTable } from '../tables/found.ts';
import type { TableKind } from '../tables/vocabulary.ts';

export interface Context {
  readonly tables: Readonly<Record<TableKind, FoundTable>>;
  readonly policy: Policy;
  /** Day of the audit, counted from 1970-01-01. */
  readonly today: number;
  assume(assumed: AssumedUnit): void;
}

/** A channel's result, still open for the findings of its group. */
export interface AuditedChannel {
  readonly result: Omit<ChannelResult, 'findings'> & { readonly findings: Finding[] };
  readonly channel: Channel | null;
  readonly settings: SettingsRow | null;
}

/** Audits one channel with its settings. */
export function auditChannel(row: ChannelRow, settings: SettingsRow, context: Context): AuditedChannel {
  const { policy, today, tables } = context;
  const { channel, complaints } = assemble(row, settings, policy, (assumed) => {
    context.assume(assumed);
  });
  const findings = complaints.map((complaint) => placeComplaint(complaint, row, settings, tables));
  hiddenRow(tables.channels, row.row, findings);
  hiddenRow(tables.settings, settings.row, findings);
  if (!channel) {
    return { result: unusable(row, settings, tables, findings), channel, settings };
  }
  const thresholds = evaluateThresholds(channel, policy);
  for (const { table, column, rule, severity, message } of statementsOn({
    channel,
    thresholds,
    policy,
    today,
  })) {
    const at = table === 'channels' ? row.row : settings.row;
    findings.push(placed(tables[table], at, { column, rule, severity, message }));
  }
  const result = {
    ...unusable(row, settings, tables, findings),
    unit: channel.unit.text,
    detection: channel.detection,
    sensitivity: sensitivityOf(channel, sensitivityError(channel.configured, channel.measured)),
    inputs: inputsOf(channel, policy),
    thresholds: thresholds.map(withoutNaN),
    verdict: channelVerdict(thresholds),
  };
  return { result, channel, settings };
}

/** A channel that can't be joined with settings: incomplete, for the reasons given. */
export function unjoined(row: ChannelRow, findings: Finding[], tables: Context['tables']): AuditedChannel {
  for (const complaint of row.complaints) findings.push(placed(tables.channels, row.row, complaint));
  hiddenRow(tables.channels, row.row, findings);
  return { result: unusable(row, null, tables, findings), channel: null, settings: null };
}

function unusable(
  row: ChannelRow,
  settings: SettingsRow | null,
  tables: Context['tables'],
  findings: Finding[],
): AuditedChannel['result'] {
  const unit = settings?.danger?.unit?.text ?? settings?.alert?.unit?.text ?? null;
  const asWritten = (given: Amount | null | undefined) =>
    given?.unit && given.unit.text === unit ? given.value : null;
  return {
    tag: row.tag,
    machine: row.machine,
    location: row.location,
    kind: row.kind,
    unit,
    detection: null,
    sensitivity: sensitivityAsWritten(row.measured, settings?.configured ?? null),
    inputs: {
      ...noInputs,
      group: settings?.group ?? null,
      voting: settings?.voting ?? null,
      bypass: settings?.bypass ?? false,
    },
    thresholds: [
      incompleteThreshold('alert', asWritten(settings?.alert)),
      incompleteThreshold('danger', asWritten(settings?.danger)),
    ],
    verdict: 'incomplete',
    findings,
    source: {
      channels: { sheet: tables.channels.sheet.name, row: row.row },
      settings: settings && { sheet: tables.settings.sheet.name, row: settings.row },
    },
  };
}

/** Sensitivities of a row that can't be used: shown only where both stand in one unit. */
function sensitivityAsWritten(measured: Amount | null, configured: Amount | null): SensitivityResult {
  const unit = configured?.unit ?? measured?.unit ?? null;
  const inUnit = (amount: Amount | null) =>
    amount?.unit && amount.unit.text === unit?.text ? amount.value : null;
  return {
    configured: inUnit(configured),
    measured: inUnit(measured),
    unit: unit?.text ?? null,
    error: null,
    uncertainty: null,
    coverage: null,
  };
}

function placeComplaint(
  complaint: TableComplaint,
  row: ChannelRow,
  settings: SettingsRow,
  tables: Context['tables'],
): Finding {
  return placed(tables[complaint.table], complaint.table === 'channels' ? row.row : settings.row, complaint);
}

function hiddenRow(table: FoundTable, row: number, findings: Finding[]): void {
  if (!table.sheet.hiddenRows.has(row)) return;
  const message = `Row ${row} of sheet '${table.sheet.name}' is hidden or filtered away; it was audited all the same.`;
  findings.push(placed(table, row, { rule: 'hidden-row', severity: 'note', message, column: 'tag' }));
}

function withoutNaN(threshold: ThresholdResult): ThresholdResult {
  const clean: Record<string, unknown> = { ...threshold };
  for (const [key, value] of Object.entries(threshold)) {
    if (typeof value === 'number' && !Number.isFinite(value)) clean[key] = null;
  }
  return clean as unknown as ThresholdResult;
}
