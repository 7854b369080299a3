import { sensitivityError } from '../../../method/vibration/sensitivity.ts';
import type { AsFoundResult } from '../../model/asFound.ts';
import { changeOf } from '../../model/since.ts';
import type { Channel } from '../../model/channel.ts';
import { factAt, factOf, type Place, type PlacedFact } from '../../model/findings.ts';
import { channelVerdict } from '../../model/order.ts';
import type { RecordResult } from '../../model/records.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { Obstacle, SensitivityResult, ThresholdName, ThresholdResult } from '../../model/threshold.ts';
import type { PairedRows } from '../../read/pairedRows.ts';
import { rowPlaceOf } from '../../read/rows/diagnostic.ts';
import { isSameTable } from '../../read/tables/found.ts';
import { tagKey } from '../../read/tables/tagKey.ts';
import { asLeftEvidence, type LeftEvidence } from '../asLeft/asLeftEvidence.ts';
import { exposuresOf } from '../asLeft/exposure.ts';
import { asLeftReadings, hasAsLeft, type AsLeftReadings } from '../asLeft/readings.ts';
import { leftBetween, recordAsLeft, addRecordsOfOtherDays } from '../asLeft/records.ts';
import { assemble } from '../evaluate/assemble.ts';
import { Diagnostics, type TableDiagnostic } from '../evaluate/diagnostics.ts';
import { kindOfChannel } from '../evaluate/kindOfChannel.ts';
import { asLeftRules, exposureRule } from '../findings/asLeftRules.ts';
import { columnOfThreshold, type Audited, type AddFinding } from '../findings/rule.ts';
import { applyRules, verdictFacts } from '../findings/rules.ts';
import type { Evidence } from '../lines/evidence.ts';
import { judgeThresholds } from '../lines/thresholds.ts';
import { linearReachOf } from '../lines/vibrationLine.ts';
import { curveFindings } from '../records/curveFindings.ts';
import { checkOf, recordAsFound, recordEvidence, recordsOf } from '../records/recordEvidence.ts';
import { recordFindings } from '../records/recordFindings.ts';
import { runoutOf } from '../runoutOf.ts';
import type { Context, JudgedChannel } from './context.ts';
import { memberOf, unauditedMember } from './groupMembers.ts';
import { incompleteChannel } from './incompleteChannel.ts';
import { driftOf } from './driftOfChannel.ts';
import { inputsOf, sensitivityOf } from './inputs.ts';
import { withRecord } from './sensitivityFromRecord.ts';
import { hiddenRow } from './unmatchedRows.ts';

/** Judges one channel with its settings, as it stands now: as left where it was measured again, else as found. */
export function judgeChannel(pair: PairedRows, context: Context): JudgedChannel {
  const { policy, today, tables } = context;
  // Places outlive this call, the rows themselves do not.
  const { place } = pair;
  const facts: PlacedFact[] = [];
  const addFinding: AddFinding = (one) => {
    facts.push(factAt(place(one.table, one.column), one));
  };
  const setpointPlace = (name: ThresholdName): Place => place('settings', columnOfThreshold(name));
  const records = recordsOf(context.records.byTag.get(tagKey(pair.row.tag)));
  const diagnostics = new Diagnostics(pair);
  const kind = kindOfChannel(pair, diagnostics);
  const known = kind === pair.row.kind ? pair.row : { ...pair.row, kind };
  const row = withRecord(known, recordAsFound(records), context, facts);
  const complete: PairedRows = row === pair.row ? pair : { ...pair, row };
  const assembled = assemble(complete, kind, diagnostics, policy, context.assume);
  const atCells = new Map(
    assembled.diagnostics.map((one) => [one, factAt(one.place ?? place(one.table, one.column), one)]),
  );
  facts.push(...atCells.values());
  const invalid = assembled.blocking.flatMap((one: TableDiagnostic) => atCells.get(one) ?? []);
  facts.push(...hiddenRow(tables.channels, row.row));
  if (!isSameTable(tables.channels, tables.settings))
    facts.push(...hiddenRow(tables.settings, pair.settings.row));
  const between = leftBetween(row.calibratedOn, records?.chosen, today);
  const left = { record: recordAsLeft(records?.chosen, between), check: checkOf(records, true) };
  const { channel: listed } = assembled;
  if (!listed) {
    if (hasAsLeft(row, left)) addFinding(leftOfUnusable);
    const result = incompleteChannel(complete, tables, assembled.obstacles);
    return {
      result,
      ofVerdicts: [],
      facts,
      invalid,
      member: unauditedMember(complete, 'its row can’t be used'),
      setpointPlace,
    };
  }

  const others = records ? othersOf(records.chosen) : [];
  const usable = recordAsFound(records);
  const check = checkOf(records, false);
  const ofRecords = recordEvidence(usable, check, listed, policy, without(others, usable));
  const unreadable = records !== undefined && !usable && !left.record && records.chosen.faults.length > 0;
  const ofRecord: readonly Obstacle[] =
    unreadable && isDisplacement(listed) ? ['the record can’t be used'] : ofRecords.obstacles;
  const found: Evidence = {
    channel: ofRecords.channel,
    curve: ofRecords.curve,
    vibration: ofRecords.vibration,
    obstacles: ofRecord.length === 0 ? assembled.obstacles : [...assembled.obstacles, ...ofRecord],
  };
  addRecordsOfOtherDays(records?.chosen, between, addFinding);
  const readings = hasAsLeft(row, left)
    ? asLeftReadings(row, left, found.channel, policy, addFinding)
    : undefined;
  const leftEvidence = readings
    ? asLeftEvidence(found, readings, left, without(others, left.record), policy)
    : undefined;
  // What was left can't be told: what was found counts, and is no better than incomplete.
  const unknownSince: readonly Obstacle[] = readings === null ? ['a value that can’t be used'] : [];
  const foundThresholds = judgeThresholds(
    unknownSince.length === 0 ? found : { ...found, obstacles: [...found.obstacles, ...unknownSince] },
    policy,
  );
  const nowEvidence = leftEvidence?.evidence ?? found;
  const thresholds = leftEvidence
    ? judgeThresholds(nowEvidence, policy).map((threshold, index) => ({
        ...threshold,
        change: changeOf(foundThresholds[index]?.verdict ?? 'incomplete', threshold.verdict),
      }))
    : foundThresholds;

  const audited = (channel: Channel, judged: readonly ThresholdResult[]): Audited => ({
    channel,
    thresholds: judged,
    policy,
    today,
    cell: (table, column) => {
      const at = place(table, column);
      return `${at.column}${at.row}`;
    },
  });
  const now = audited(nowEvidence.channel, thresholds);
  const asFound = audited(found.channel, foundThresholds);
  const recordNow = leftEvidence?.ofRecords.record ?? ofRecords.record;
  const checkedAgain = leftEvidence !== undefined && !leftEvidence.keepsCheck;
  const dynamicNow = checkedAgain ? leftEvidence.ofRecords.dynamic : ofRecords.dynamic;
  const ofVerdicts = verdictFacts(now).map((one) => factAt(place(one.table, one.column), one));
  applyRules(now, addFinding);
  if (records) {
    const ofLeft = leftEvidence?.ofRecords.record ? left.record : undefined;
    facts.push(
      ...recordFindings({
        records,
        usable: ofLeft ?? usable,
        check: checkedAgain ? left.check : check,
        record: recordNow,
        dynamic: dynamicNow,
        channel: nowEvidence.channel,
        policy,
      }),
    );
    const shown = ofLeft ?? usable;
    if (recordNow && shown)
      ofVerdicts.push(
        ...curveFindings(recordNow, nowEvidence.channel, thresholds, policy).map((fact) =>
          factAt(shown.raw, fact),
        ),
      );
  }
  if (readings && leftEvidence)
    asLeftRules(
      { found: asFound, readings, channel: leftEvidence.evidence.channel, thresholds },
      addFinding,
      (one) => {
        const fact = factAt(place(one.table, one.column), one);
        facts.push(fact);
        invalid.push(fact);
      },
    );
  exposureRule(asFound, leftEvidence ? thresholds : null, (one) => {
    ofVerdicts.push(factAt(place(one.table, one.column), one));
  });
  const ofDrift = driftOf(row, found.channel, ofRecords.record ?? recordNow, context);
  facts.push(...ofDrift.findings);

  const result: Omit<ChannelResult, 'findings'> = {
    tag: row.tag,
    machine: row.machine,
    location: row.location,
    kind: listed.kind,
    unit: listed.unit.text,
    detection: listed.detection,
    state: leftEvidence ? 'as left' : 'as found',
    inBypass: listed.bypass,
    sensitivity: sensitivityNow(nowEvidence.channel, readings, policy.coverage),
    inputs: inputsOf(nowEvidence.channel, thresholds, policy),
    thresholds,
    verdict: channelVerdict(thresholds),
    record: recordNow,
    dynamic: dynamicNow,
    runout: runoutOf(nowEvidence.channel, thresholds),
    asFound: leftEvidence
      ? asFoundOf(found.channel, foundThresholds, ofRecords.record, context, leftEvidence)
      : null,
    exposure: exposuresOf(found.channel, foundThresholds, leftEvidence ? thresholds : null, today),
    drift: ofDrift.drift,
    source: {
      channels: rowPlaceOf(tables.channels, row.row),
      settings: rowPlaceOf(tables.settings, pair.settings.row),
    },
  };
  const member =
    listed.group === '' && listed.voting === ''
      ? null
      : memberOf(complete, nowEvidence.channel, thresholds, leftEvidence ? foundThresholds : null);
  return { result, ofVerdicts, facts, invalid, member, setpointPlace };
}

const leftOfUnusable: Parameters<AddFinding>[0] = {
  ...factOf('as-left-not-judged', 'warning', { why: 'found unusable' }),
  table: 'channels',
  column: 'asLeftSensitivity',
};

function isDisplacement({ kind }: Channel): boolean {
  return kind === 'radial' || kind === 'axial';
}

type Chosen = NonNullable<ReturnType<typeof recordsOf>>['chosen'];

function othersOf({ used, others }: Chosen): Chosen['others'] {
  return used ? [used, ...others] : others;
}

function without(all: Chosen['others'], used: Chosen['used']): Chosen['others'] {
  return all.filter((one) => one !== used);
}

function sensitivityNow(
  channel: Channel,
  readings: AsLeftReadings | null | undefined,
  coverage: number,
): SensitivityResult {
  const error = sensitivityError(channel.configured, channel.measured);
  return sensitivityOf(channel, error, coverage, readings?.from ?? 'channel list');
}

function asFoundOf(
  channel: Channel,
  thresholds: readonly ThresholdResult[],
  record: RecordResult | null,
  { policy }: Context,
  left: LeftEvidence,
): AsFoundResult {
  const error = sensitivityError(channel.configured, channel.measured);
  return {
    sensitivity: sensitivityOf(channel, error, policy.coverage, 'channel list'),
    gapVoltage: channel.gapVoltage,
    zeroMeasured: channel.zeroMeasured,
    linearReach: linearReachOf(channel, policy),
    thresholds,
    verdict: channelVerdict(thresholds),
    record: left.ofRecords.record ? record : null,
  };
}
