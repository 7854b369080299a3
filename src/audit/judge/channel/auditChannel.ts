import type { Finding, PlacedFact } from '../../model/findings.ts';
import { sensitivityError } from '../../../method/vibration/sensitivityError.ts';
import { exposuresOf } from '../asLeft/exposure.ts';
import { judgeAsLeft } from '../asLeft/judgeAsLeft.ts';
import { hasAsLeft } from '../asLeft/readings.ts';
import { leftBetween, recordAsLeft } from '../asLeft/records.ts';
import { auditDrift, type AuditedDrift } from '../drift/auditDrift.ts';
import type { ReadChannel } from '../drift/channelReadings.ts';
import { fixed, inUnit } from '../evaluate/amounts.ts';
import { assemble } from '../evaluate/assemble.ts';
import type { Channel } from '../../model/channel.ts';
import { evaluateThresholds } from '../evaluate/thresholds.ts';
import { exposureRule } from '../findings/exposureRule.ts';
import type { Audited, Say } from '../findings/rule.ts';
import { applyRules } from '../findings/rules.ts';
import type { Chosen } from '../records/chooseRecord.ts';
import { auditRecords, lookAtRecords, recordsOf } from '../records/auditRecords.ts';
import { asLeft } from '../../read/records/series.ts';
import { averageOf } from '../records/evaluateRecord.ts';
import { inputsOf, sensitivityOf } from './inputs.ts';
import { channelVerdict } from '../../model/order.ts';
import type { RecordResult } from '../../model/report.ts';
import { amount } from '../../model/wording.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { cellOf, placed } from '../../read/rows/complaint.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import { isSameTable, type FoundTable, type Tables } from '../../read/tables/found.ts';
import type { AuditedChannel, Context, OpenResult } from './context.ts';
import { tagKey } from '../../read/tables/tagKey.ts';
import { memberOf, unaudited } from './groupMembers.ts';
import { incompleteChannel } from './incompleteChannel.ts';

/** Audits one channel with its settings. */
export function auditChannel(row: ChannelRow, settings: SettingsRow, context: Context): AuditedChannel {
  const { policy, today, tables } = context;
  const rows = { channels: row.row, settings: settings.row };
  const found = context.records.byTag.get(tagKey(row.tag));
  const chosen = recordsOf(found);
  const findings: (PlacedFact | Finding)[] = [];
  const completed = withRecord(row, chosen, context, findings);
  const { channel: assembled, complaints } = assemble(completed, settings, policy, context.assume);
  for (const complaint of complaints) {
    findings.push(placed(tables[complaint.table], rows[complaint.table], complaint));
  }
  hiddenRow(tables.channels, row.row, findings);
  if (!isSameTable(tables.channels, tables.settings)) hiddenRow(tables.settings, settings.row, findings);
  const say: Say = (statement) => {
    findings.push(placed(tables[statement.table], rows[statement.table], statement));
  };
  if (!assembled) {
    if (hasAsLeft(row, recordAsLeft(chosen, leftBetween(row.calibratedOn, chosen, today))))
      say(asLeftOfUnusable);
    const result = incompleteChannel(row, settings, tables, findings);
    return { result, member: unaudited(settings, row.tag, 'its row could not be used') };
  }
  const records = found && chosen ? lookAtRecords(found, chosen, assembled, policy) : undefined;
  const ofLeft = chosen?.used?.raw.series === asLeft;
  const reach = ofLeft ? null : (records?.evaluated?.reach ?? null);
  const channel = reach === null ? assembled : { ...assembled, recordReach: reach };
  const thresholds = evaluateThresholds(channel, policy);
  const audited: Audited = {
    channel,
    thresholds,
    policy,
    today,
    cell: (table, column) => cellOf(tables[table], rows[table], column),
  };
  applyRules(audited, say);
  const ofRecords = records && auditRecords(records, channel, thresholds, policy);
  if (ofRecords) findings.push(...ofRecords.findings);
  const left = judgeAsLeft(row, chosen, audited, say);
  exposureRule(audited, left, say);
  const ofDrift = driftOf(row, channel, ofRecords?.record ?? null, context);
  findings.push(...ofDrift.findings);
  const result: OpenResult = {
    tag: row.tag,
    machine: row.machine,
    location: row.location,
    kind: channel.kind,
    unit: channel.unit.text,
    detection: channel.detection,
    sensitivity: sensitivityOf(channel, sensitivityError(channel.configured, channel.measured)),
    inputs: inputsOf(channel, policy),
    thresholds,
    verdict: channelVerdict(thresholds),
    record: ofRecords?.record ?? null,
    dynamic: ofRecords?.dynamic ?? null,
    asLeft: left,
    exposure: exposuresOf(channel, thresholds, left, today),
    drift: ofDrift.drift,
    findings,
    source: {
      channels: { sheet: tables.channels.sheet.name, row: row.row },
      settings: { sheet: tables.settings.sheet.name, row: settings.row },
    },
  };
  const seated = channel.group !== '' || channel.voting !== '';
  const member = seated
    ? memberOf(result.tag, settings.row, thresholds, left?.thresholds ?? null, channel)
    : null;
  return { result, member };
}

const asLeftOfUnusable: Parameters<Say>[0] = {
  table: 'channels',
  column: 'asLeftSensitivity',
  rule: 'as-left-not-judged',
  severity: 'warning',
  message:
    'The as-left readings were not judged, because what was found can’t be audited. Complete the row first.',
};

/** How the channel's sensitivity drifts, by the readings that there are of it. */
function driftOf(
  row: ChannelRow,
  channel: Channel,
  record: RecordResult | null,
  { readings, tables, policy, today }: Context,
): AuditedDrift {
  const key = tagKey(row.tag);
  const before = readings.before.get(key) ?? [];
  const history = readings.history.byTag.get(key) ?? [];
  const known = history.length + before.length > 0;
  const of: ReadChannel = {
    channel,
    row,
    table: tables.channels,
    history,
    before: before.length === 1 ? before[0] : undefined,
    record,
    asLeft: known ? row.asLeftSensitivity : null,
  };
  return auditDrift(of, policy, today);
}

/** The row with the sensitivity of its calibration record, where the channel list names none; that is said. One as left is not what was found. */
function withRecord(
  row: ChannelRow,
  chosen: Chosen | undefined,
  { tables, policy }: Context,
  findings: (PlacedFact | Finding)[],
): ChannelRow {
  const complained = row.complaints.some(({ column }) => column === 'measured');
  if (row.measured || complained || !chosen?.used || chosen.used.raw.series === asLeft) return row;
  if (row.kind !== 'radial' && row.kind !== 'axial') return row;
  const zero = row.kind === 'axial' ? row.zeroMeasured : null;
  const measured = averageOf(chosen.used, inUnit(row.gapVoltage ?? zero, fixed.volt), policy);
  if (!measured) return row;
  const message = `The channel list has no measured sensitivity; the average of its calibration record in row ${chosen.used.raw.row} of sheet '${chosen.used.raw.sheet}', ${amount(measured.value, measured.unit.text)}, was used.`;
  const complaint = {
    rule: 'sensitivity-from-record',
    severity: 'note',
    message,
    column: 'measured',
  } as const;
  findings.push(placed(tables.channels, row.row, complaint));
  return { ...row, measured };
}

/** A channel that can't be joined with settings: incomplete, for the reason given. */
export function unjoined(row: ChannelRow, trouble: Finding | undefined, tables: Tables): AuditedChannel {
  const findings = trouble ? [trouble] : [];
  for (const complaint of row.complaints) findings.push(placed(tables.channels, row.row, complaint));
  hiddenRow(tables.channels, row.row, findings);
  return { result: incompleteChannel(row, null, tables, findings), member: null };
}

function hiddenRow(table: FoundTable, row: number, findings: (PlacedFact | Finding)[]): void {
  if (!table.sheet.hiddenRows.has(row)) return;
  const message = `Row ${row} of sheet '${table.sheet.name}' is hidden or filtered away; it was audited all the same.`;
  findings.push(placed(table, row, { rule: 'hidden-row', severity: 'note', message, column: 'tag' }));
}
